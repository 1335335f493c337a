package lozengy.solver.search;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.problem.Problem;

/**
 * Holds a state against the truth from scratch, and says where they differ: the move, the pieces,
 * both values, seed and step.
 */
final class Audit {

  /** Points by which whole cost units may round the score. */
  private static final double SCORE_TOLERANCE = 0.01;

  private final Assertions level;
  private final State state;
  private final Problem problem;
  private final Optional<Sequences> earlier;
  private final long seed;
  private long step;

  Audit(Assertions level, State state, long seed) {
    this.level = level;
    this.state = state;
    this.problem = state.problem;
    this.earlier = problem.earlier();
    this.seed = seed;
  }

  /** Whether moves are to be tried out before they are decided on. */
  boolean full() {
    return level == Assertions.FULL;
  }

  /** Checks a state after a move was made, its cost added. */
  void made(String move, int... slots) {
    step++;
    compare("after " + move, slots);
    if (full()) {
      compareWithModel(move, slots);
    }
  }

  /** Checks that a move tried out costs what was delta, and that undoing it restores the state. */
  void tried(String move, long delta, Runnable make, Runnable undo, int... slots) {
    step++;
    long before = state.cost();
    make.run();
    state.addCost(delta);
    compare("after trying " + move, slots);
    undo.run();
    state.addCost(before - state.cost());
    compare("after undoing " + move, slots);
  }

  private void compare(String when, int[] slots) {
    Cost fresh = Cost.of(problem, state.yarn, state.stock.pressure());
    if (fresh.total() != state.cost()) {
      throw drift(when, slots, "cost kept " + state.cost() + ", from scratch " + fresh.total());
    }
    if (fresh.hard() != state.hard()) {
      throw drift(
          when, slots, "broken rules kept " + state.hard() + ", from scratch " + fresh.hard());
    }
    String table = state.firstWrongEntry();
    if (table != null) {
      throw drift(when, slots, table);
    }
  }

  private void compareWithModel(String move, int[] slots) {
    Sequences sequences = problem.sequences(state.yarn);
    List<Fault> faults = Check.faults(problem.blanket(), sequences);
    if (faults.isEmpty() != (state.hard() == 0)) {
      String found = faults.isEmpty() ? "no fault" : faults.get(0).toString();
      throw drift(
          "after " + move,
          slots,
          "broken rules kept " + state.hard() + ", the model's check finds: " + found);
    }
    if (!faults.isEmpty()) {
      return;
    }
    Score score = Scorer.score(problem.blanket(), sequences, earlier);
    double kept = 100 - state.cost() / problem.prices().unitsPerPoint();
    // Where repeats are more than a shuffle's, or a fade is the wrong way round, the model cuts the
    // part off at 0, the cost does not.
    boolean noFade = Double.valueOf(0).equals(score.parts().get(Part.FADE));
    boolean cutOff = (score.parts().get(Part.SPREAD) == 0 || noFade) && score.objective() >= kept;
    if (Math.abs(score.objective() - kept) > SCORE_TOLERANCE && !cutOff) {
      throw drift(
          "after " + move, slots, "score by cost " + kept + ", by the model " + score.objective());
    }
  }

  private DriftException drift(String when, int[] slots, String what) {
    StringBuilder pieces = new StringBuilder();
    for (int slot : slots) {
      int orbit = problem.slots().orbit()[slot];
      pieces
          .append(pieces.length() > 0 ? ", " : "")
          .append(problem.blanket().place(problem.slots().lead()[orbit]).name())
          .append(" round ")
          .append(slot - problem.slots().orbitStart()[orbit] + 1);
    }
    return new DriftException(
        "Drift " + when + " of " + pieces + ", seed " + seed + ", step " + step + ": " + what);
  }
}
