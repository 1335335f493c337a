package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/** Tries every arrangement of a tiny blanket and judges each from scratch. */
public final class Exhaustive {

  private final Blanket blanket;
  private final Optional<Sequences> earlier;
  private final List<int[]> slots = new ArrayList<>();
  private final List<int[]> domains = new ArrayList<>();
  private final Consumer<Score> judge;

  private Exhaustive(Blanket blanket, Optional<Sequences> earlier, Consumer<Score> judge) {
    this.blanket = blanket;
    this.earlier = earlier;
    this.judge = judge;
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
      if (blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)
          && !blanket.banned(piece, yarn)) {
        yarns.add(yarn);
      }
    }
    return yarns.stream().mapToInt(yarn -> yarn).toArray();
  }

  /** How many ways there are to fill the open rounds. */
  public static double ways(Blanket blanket) {
    double ways = 1;
    for (int[] domain : new Exhaustive(blanket, Optional.empty(), score -> {}).domains) {
      ways *= domain.length;
    }
    return ways;
  }

  /** The best total of all valid arrangements; empty if none is valid. */
  public static OptionalDouble best(Blanket blanket) {
    return scores(blanket, Optional.empty()).stream().mapToDouble(Score::total).max();
  }

  /** The best that is maximised of all valid arrangements; empty if none is valid. */
  public static OptionalDouble bestObjective(Blanket blanket, Optional<Sequences> earlier) {
    return scores(blanket, earlier).stream().mapToDouble(Score::objective).max();
  }

  /** The scores of all valid arrangements. */
  static List<Score> scores(Blanket blanket, Optional<Sequences> earlier) {
    List<Score> scores = new ArrayList<>();
    new Exhaustive(blanket, earlier, scores::add).fill(0, blanket.locks());
    return scores;
  }

  private void fill(int slot, Sequences sequences) {
    if (slot == slots.size()) {
      if (Check.faults(blanket, sequences).isEmpty()) {
        judge.accept(Scorer.score(blanket, sequences, earlier));
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
