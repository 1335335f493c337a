package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Nulls;

/**
 * A count of a yarn's stock in the middle of the work. From then on it is the truth for that yarn:
 * what had been worked by then no longer counts against it.
 *
 * @param left yarn at hand when it was counted
 * @param made selectors of the pieces that were made then, not joined
 * @param joined selectors of the pieces that were joined then; a seam between two of them had been
 *     worked
 * @param partWorked the pieces of which some rounds were worked then
 * @param edgedPercent part of the outline that had its edging then, 0 to 100
 */
public record Counted(
    YarnAmount left,
    List<String> made,
    List<String> joined,
    List<PartWorked> partWorked,
    double edgedPercent) {

  /**
   * Copies the lists.
   *
   * @param left yarn at hand when it was counted
   * @param made selectors of the pieces that were made then, not joined
   * @param joined selectors of the pieces that were joined then; a seam between two of them had
   *     been worked
   * @param partWorked the pieces of which some rounds were worked then
   * @param edgedPercent part of the outline that had its edging then, 0 to 100
   * @throws IllegalArgumentException if the part of the outline is out of its range
   */
  public Counted {
    Nulls.refuse("left made joined partWorked", left, made, joined, partWorked);
    made = List.copyOf(made);
    joined = List.copyOf(joined);
    partWorked = List.copyOf(partWorked);
    if (!(edgedPercent >= 0 && edgedPercent <= 100)) {
      throw new IllegalArgumentException("the part that is edged must be 0 % to 100 %");
    }
  }

  /**
   * {@return the same with another amount}
   *
   * @param other yarn at hand when it was counted
   */
  public Counted withLeft(YarnAmount other) {
    return new Counted(other, made, joined, partWorked, edgedPercent);
  }

  /**
   * A count when no piece was worked in part.
   *
   * @param left yarn at hand when it was counted
   * @param made selectors of the pieces that were made then, not joined
   * @param joined selectors of the pieces that were joined then
   * @param edgedPercent part of the outline that had its edging then, 0 to 100
   */
  public Counted(YarnAmount left, List<String> made, List<String> joined, double edgedPercent) {
    this(left, made, joined, List.of(), edgedPercent);
  }
}
