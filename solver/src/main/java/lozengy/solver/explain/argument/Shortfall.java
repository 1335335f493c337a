package lozengy.solver.explain.argument;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import lozengy.model.unit.Ratio;
import lozengy.solver.explain.argument.Finding.Slot;

/**
 * By how much yarns fall short together, so that it can be worked out how many balls would do.
 *
 * @param missing what is missing, in a unit of its own, above 0
 * @param gains by yarn, at most how much of that one ball more makes good; other yarns nothing
 */
public record Shortfall(long missing, Map<Integer, Long> gains) {

  /** What is bought at once of a yarn whose put-up is not stated, in mm. */
  public static final long LENGTH_MILLIMETRES = 10_000;

  /**
   * {@return what a ball of a yarn holds, in whole mm, rounded down}
   *
   * @param yarn the yarn; where its put-up is not stated, {@link #LENGTH_MILLIMETRES} stand for one
   */
  public static long ballMillimetres(Yarn yarn) {
    return yarn.ball().map(ball -> Ratio.of(ball.millimetres()).down()).orElse(LENGTH_MILLIMETRES);
  }

  /**
   * {@return what a ball more gives to use, in mm, rounded up; 0 of a yarn that is gone}
   *
   * @param blanket the blanket
   * @param yarn index of the yarn
   */
  public static long ballMillimetres(Blanket blanket, int yarn) {
    if (blanket.yarn(yarn).gone()) {
      return 0;
    }
    double usable = 1 - blanket.brief().rules().keepBackPercent() / 100;
    return (long) Math.ceil(ballMillimetres(blanket.yarn(yarn)) * usable) + 1;
  }

  /**
   * How many of a finding's rounds must be open before nothing is missing, where all that is
   * counted in mm: the longest are taken first.
   *
   * @param blanket the blanket
   * @param finding what was found
   * @return how many at the least
   */
  public static int fewestOpen(Blanket blanket, Finding finding) {
    List<Long> lengths =
        finding.slots().stream()
            .map(slot -> longest(blanket, slot, finding.yarns()))
            .sorted(Comparator.reverseOrder())
            .toList();
    long missing = finding.shortfall().map(Shortfall::missing).orElse(0L);
    int open = 0;
    while (missing > 0 && open < lengths.size()) {
      missing -= lengths.get(open++);
    }
    return open;
  }

  private static long longest(Blanket blanket, Slot slot, BitSet yarns) {
    return yarns.stream()
        .mapToLong(yarn -> blanket.takenMillimetres(slot.piece(), slot.round(), yarn))
        .max()
        .orElse(0);
  }

  /** {@return how many balls are needed at the least} */
  public int fewestBalls() {
    long most = gains.values().stream().mapToLong(Long::longValue).max().orElse(0);
    return most <= 0 ? Integer.MAX_VALUE : (int) Math.min(1_000_000, (missing - 1) / most + 1);
  }
}
