package lozengy.model.progress;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * What a mark has come to.
 *
 * @param blanket the blanket with the new states and counts
 * @param sequences the pieces' yarns, as worked
 * @param states pieces that have come further, or were given up, if only in part
 * @param yarns pieces whose yarns have changed
 * @param counted yarns that came, or of which the count or the stock has changed
 * @param overlapping pieces that were named more than once and not for the same
 */
public record Marked(
    Blanket blanket,
    Sequences sequences,
    List<Integer> states,
    List<Integer> yarns,
    List<Integer> counted,
    List<Integer> overlapping) {

  /**
   * Copies the lists.
   *
   * @param blanket the blanket with the new states and counts
   * @param sequences the pieces' yarns, as worked
   * @param states pieces that have come further, or were given up, if only in part
   * @param yarns pieces whose yarns have changed
   * @param counted yarns that came, or of which the count or the stock has changed
   * @param overlapping pieces that were named more than once and not for the same
   */
  public Marked {
    states = List.copyOf(states);
    yarns = List.copyOf(yarns);
    counted = List.copyOf(counted);
    overlapping = List.copyOf(overlapping);
  }

  /** {@return whether all was as marked before} */
  public boolean nothingNew() {
    return states.isEmpty() && yarns.isEmpty() && counted.isEmpty();
  }
}
