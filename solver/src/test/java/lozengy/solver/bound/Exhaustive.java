package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;

/** Tries every arrangement of a tiny blanket and judges each from scratch. */
public final class Exhaustive {

  private final Blanket blanket;
  private final Optional<Sequences> earlier;
  private final List<int[]> slots = new ArrayList<>();
  private final List<int[]> domains = new ArrayList<>();
  private double best = Double.NEGATIVE_INFINITY;

  private Exhaustive(Blanket blanket, Optional<Sequences> earlier) {
    this.blanket = blanket;
    this.earlier = earlier;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.locked(piece, round) == Sequences.OPEN) {
          slots.add(new int[] {piece, round});
          domains.add(domain(piece, round));
        }
      }
    }
  }

  private int[] domain(int piece, int round) {
    List<Integer> yarns = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      if (blanket.toneAllows(blanket.kind(piece), round, yarn) && !blanket.banned(piece, yarn)) {
        yarns.add(yarn);
      }
    }
    return yarns.stream().mapToInt(yarn -> yarn).toArray();
  }

  /** How many ways there are to fill the open rounds. */
  public static double ways(Blanket blanket) {
    double ways = 1;
    for (int[] domain : new Exhaustive(blanket, Optional.empty()).domains) {
      ways *= domain.length;
    }
    return ways;
  }

  /** The best total of all valid arrangements; empty if none is valid. */
  public static OptionalDouble best(Blanket blanket, Optional<Sequences> earlier) {
    Exhaustive all = new Exhaustive(blanket, earlier);
    all.fill(0, blanket.locks());
    return all.best == Double.NEGATIVE_INFINITY
        ? OptionalDouble.empty()
        : OptionalDouble.of(all.best);
  }

  private void fill(int slot, Sequences sequences) {
    if (slot == slots.size()) {
      if (Check.faults(blanket, sequences).isEmpty()) {
        best = Math.max(best, Scorer.score(blanket, sequences, earlier).total());
      }
      return;
    }
    int[] where = slots.get(slot);
    for (int yarn : domains.get(slot)) {
      sequences.set(where[0], where[1], yarn);
      fill(slot + 1, sequences);
    }
    sequences.set(where[0], where[1], Sequences.OPEN);
  }
}
