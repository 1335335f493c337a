package lozengy.model.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * One of several arrangements that are set side by side.
 *
 * @param label what it is called
 * @param arrangement the arrangement
 * @param score its score, computed from scratch
 * @param faults how many faults it has
 * @param leftMillimetres what is left of each yarn by its code, in mm; below 0 if it runs out
 */
public record Compared(
    String label,
    Arrangement arrangement,
    Score score,
    int faults,
    Map<String, Long> leftMillimetres) {

  /**
   * Judges an arrangement from scratch.
   *
   * @param label what it is called
   * @param arrangement the arrangement
   * @return the arrangement with its score and faults
   */
  public static Compared of(String label, Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    long[] used = blanket.usedMillimetres(arrangement.sequences());
    Map<String, Long> left = new LinkedHashMap<>();
    for (int yarn = 0; yarn < used.length; yarn++) {
      left.put(blanket.yarn(yarn).code(), blanket.yarn(yarn).stockMillimetres() - used[yarn]);
    }
    return new Compared(
        label,
        arrangement,
        Scorer.score(blanket, arrangement.sequences(), arrangement.earlier()),
        Check.faults(blanket, arrangement.sequences()).size(),
        left);
  }

  /** {@return what is left of the yarn that comes out shortest, in mm} */
  public long leastLeftMillimetres() {
    return leftMillimetres.values().stream().mapToLong(Long::longValue).min().orElse(0);
  }
}
