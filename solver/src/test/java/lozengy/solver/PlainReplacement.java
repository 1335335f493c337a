package lozengy.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;

/**
 * What a person does with a plan that cannot stand: takes one round after the other that must have
 * another yarn, and gives it the one that suits best, until nothing gets better. Knows the model's
 * check and score alone.
 */
final class PlainReplacement {

  private static final int PASSES = 3;

  private final Blanket blanket;
  private final Sequences earlier;
  private final Sequences now;
  private final List<int[]> rounds = new ArrayList<>();

  private PlainReplacement(Blanket blanket, Sequences earlier) {
    this.blanket = blanket;
    this.earlier = earlier;
    this.now = earlier.copy();
    for (int piece : blanket.orbits().leads()) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int locked = blanket.locked(piece, round);
        int yarn = earlier.yarn(piece, round);
        if (locked != Sequences.OPEN) {
          set(piece, round, locked);
        } else if (yarn == Sequences.OPEN || !may(piece, round, yarn)) {
          set(piece, round, Sequences.OPEN);
          rounds.add(new int[] {piece, round});
        }
      }
    }
  }

  /** The plan with its rounds replaced, if that is valid. */
  static Optional<Sequences> of(Blanket blanket, Sequences earlier) {
    PlainReplacement replacement = new PlainReplacement(blanket, earlier);
    for (int pass = 0; pass < PASSES; pass++) {
      replacement.rounds.forEach(round -> replacement.replace(round[0], round[1]));
    }
    boolean valid = Check.faults(blanket, replacement.now).isEmpty();
    return valid ? Optional.of(replacement.now) : Optional.empty();
  }

  /** How many rounds of the plan it replaces. */
  static int count(Blanket blanket, Sequences earlier) {
    PlainReplacement replacement = new PlainReplacement(blanket, earlier);
    return (int)
        replacement.rounds.stream()
            .filter(round -> earlier.yarn(round[0], round[1]) != Sequences.OPEN)
            .mapToLong(round -> blanket.orbits().members(round[0]).length)
            .sum();
  }

  private void replace(int piece, int round) {
    int best = now.yarn(piece, round);
    int fewest = Check.faults(blanket, now).size();
    double most = value();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      if (may(piece, round, yarn)) {
        set(piece, round, yarn);
        int faults = Check.faults(blanket, now).size();
        double value = value();
        if (best == Sequences.OPEN || faults < fewest || faults == fewest && value > most) {
          best = yarn;
          fewest = faults;
          most = value;
        }
      }
    }
    set(piece, round, best);
  }

  private double value() {
    return now.complete() ? Scorer.score(blanket, now, Optional.of(earlier)).objective() : 0;
  }

  private boolean may(int piece, int round, int yarn) {
    for (int member : blanket.orbits().members(piece)) {
      if (!blanket.domains().mayTake(member, round, yarn)) {
        return false;
      }
    }
    return true;
  }

  private void set(int piece, int round, int yarn) {
    for (int member : blanket.orbits().members(piece)) {
      now.set(member, round, yarn);
    }
  }
}
