package lozengy.model.progress;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.arrangement.Diary.YarnEvent.Weighed;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;

/**
 * What a mark has come to.
 *
 * @param blanket the blanket with the new states and counts
 * @param sequences the pieces' yarns, as worked
 * @param states pieces that have come further, or were given up, if only in part
 * @param yarns pieces whose yarns have changed
 * @param counted yarns that came, or of which the count or the stock has changed
 * @param overlapping pieces that were named more than once and not for the same
 * @param weighed by code, what the counts tell of the hand
 * @param handChanged whether the hand takes something else of what is reckoned
 */
public record Marked(
    Blanket blanket,
    Sequences sequences,
    List<Integer> states,
    List<Integer> yarns,
    List<Integer> counted,
    List<Integer> overlapping,
    Map<String, Weighed> weighed,
    boolean handChanged) {

  /**
   * Copies the lists.
   *
   * @param blanket the blanket with the new states and counts
   * @param sequences the pieces' yarns, as worked
   * @param states pieces that have come further, or were given up, if only in part
   * @param yarns pieces whose yarns have changed
   * @param counted yarns that came, or of which the count or the stock has changed
   * @param overlapping pieces that were named more than once and not for the same
   * @param weighed by code, what the counts tell of the hand
   * @param handChanged whether the hand takes something else of what is reckoned
   */
  public Marked {
    states = List.copyOf(states);
    yarns = List.copyOf(yarns);
    counted = List.copyOf(counted);
    overlapping = List.copyOf(overlapping);
    weighed = Collections.unmodifiableMap(new LinkedHashMap<>(weighed));
  }

  /** The same in another hand. */
  Marked withHand(BigDecimal percent) {
    Brief brief = blanket.brief();
    return brief.stitching().handPercent().compareTo(percent) == 0
        ? this
        : new Marked(
            Blanket.ofUnjudged(brief.withStitching(brief.stitching().withHand(percent))),
            sequences,
            states,
            yarns,
            counted,
            overlapping,
            weighed,
            true);
  }

  /** {@return whether all was as marked before} */
  public boolean nothingNew() {
    return states.isEmpty() && yarns.isEmpty() && counted.isEmpty() && !handChanged;
  }
}
