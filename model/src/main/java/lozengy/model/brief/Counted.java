package lozengy.model.brief;

import java.util.List;

/**
 * A count of a yarn's stock in the middle of the work. From then on it is the truth for that yarn:
 * what had been worked by then no longer counts against it.
 *
 * @param left yarn at hand when it was counted
 * @param made selectors of the pieces that were made then, not joined
 * @param joined selectors of the pieces that were joined then; a seam between two of them had been
 *     worked
 * @param edgedPercent part of the outline that had its edging then, 0 to 100
 */
public record Counted(
    YarnAmount left, List<String> made, List<String> joined, double edgedPercent) {

  /**
   * Copies the lists.
   *
   * @param left yarn at hand when it was counted
   * @param made selectors of the pieces that were made then, not joined
   * @param joined selectors of the pieces that were joined then; a seam between two of them had
   *     been worked
   * @param edgedPercent part of the outline that had its edging then, 0 to 100
   * @throws IllegalArgumentException if the part of the outline is out of its range
   */
  public Counted {
    made = List.copyOf(made);
    joined = List.copyOf(joined);
    if (!(edgedPercent >= 0 && edgedPercent <= 100)) {
      throw new IllegalArgumentException("the part that is edged must be 0 % to 100 %");
    }
  }
}
