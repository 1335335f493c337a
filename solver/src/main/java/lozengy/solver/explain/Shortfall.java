package lozengy.solver.explain;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.solver.explain.Finding.Slot;

/**
 * By how much yarns fall short together, so that it can be worked out how many balls would do.
 *
 * @param missing what is missing, in a unit of its own, above 0
 * @param gains by yarn, at most how much of that one ball more makes good; other yarns nothing
 */
record Shortfall(long missing, Map<Integer, Long> gains) {

  /** What a ball more gives to use, in mm, rounded up. */
  static long ballMillimetres(Blanket blanket, int yarn) {
    double usable = 1 - blanket.brief().rules().keepBackPercent() / 100;
    return (long) Math.ceil(StockRelaxing.ballMillimetres(blanket.yarn(yarn)) * usable) + 1;
  }

  /**
   * How many of a finding's rounds must be open before nothing is missing, where all that is
   * counted in mm: the longest are taken first.
   */
  static int fewestOpen(Blanket blanket, Finding finding) {
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
        .mapToLong(yarn -> blanket.needMillimetres(blanket.kind(slot.piece()), slot.round(), yarn))
        .max()
        .orElse(0);
  }

  /** At least so many balls are needed. */
  int fewestBalls() {
    long most = gains.values().stream().mapToLong(Long::longValue).max().orElse(0);
    return most <= 0 ? Integer.MAX_VALUE : (int) Math.min(1_000_000, (missing - 1) / most + 1);
  }
}
