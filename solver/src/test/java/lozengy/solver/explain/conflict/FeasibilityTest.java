package lozengy.solver.explain.conflict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Check;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Proof;
import lozengy.solver.constraint.TinyBlankets;
import org.junit.jupiter.api.Test;

/** Answers and explanations against brute force, on tiny random blankets. */
class FeasibilityTest {

  private static final int SEEDS = 200;
  private static final Limits AMPLE = Limits.of(1_000_000, 1_000_000);

  @Test
  void neverSaysNoOrYesWrongly() {
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      boolean fits = BruteForce.count(blanket, 1, sequences -> {}) > 0;
      Feasibility.Answer answer = Examining.of(blanket, seed, AMPLE);
      if (fits) {
        assertTrue(answer instanceof Feasibility.Fits, "seed " + seed + ": " + answer);
        Sequences start = ((Feasibility.Fits) answer).start();
        assertEquals(List.of(), Check.faults(blanket, start), "seed " + seed);
      } else {
        assertTrue(answer instanceof Feasibility.Impossible, "seed " + seed + ": " + answer);
        Feasibility.Impossible impossible = (Feasibility.Impossible) answer;
        assertTrue(
            impossible.refutations().isEmpty() == impossible.conflict().isPresent(),
            "seed " + seed + ": " + impossible);
      }
    }
  }

  @Test
  void conflictsConflictAndAreMinimalWhereSaid() {
    int conflicts = 0;
    int byArgument = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      if (BruteForce.count(blanket, 1, sequences -> {}) > 0) {
        assertTrue(Examining.conflict(blanket, seed, AMPLE).isEmpty(), "seed " + seed);
        continue;
      }
      byArgument += Root.arguments(blanket).isEmpty() ? 0 : 1;
      Conflict conflict = Examining.conflict(blanket, seed, AMPLE).orElseThrow();
      conflicts++;
      assertTrue(conflict.minimal(), "seed " + seed + ": limits were ample");
      assertFalse(holds(blanket, conflict.lines()), "seed " + seed);
      for (BriefLine line : conflict.lines()) {
        List<BriefLine> others = new ArrayList<>(conflict.lines());
        others.remove(line);
        assertTrue(holds(blanket, others), "seed " + seed + " without " + line.path());
      }
    }
    assertTrue(conflicts > 20, "conflicts: " + conflicts);
    // both ways of saying no are met
    assertTrue(byArgument > 10 && byArgument < conflicts, "by argument: " + byArgument);
  }

  private static boolean holds(Blanket blanket, List<BriefLine> lines) {
    Proof.Count count = Proof.count(ConstraintModel.of(blanket, lines), 1, AMPLE);
    return count.arrangements() > 0;
  }

  @Test
  void withoutRoomToSearchNothingIsSaid() {
    int unknown = 0;
    for (long seed = 0; seed < 50; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Feasibility.Answer stopped = Examining.of(blanket, seed, new Limits(1, 1, () -> true));
      boolean fits = BruteForce.count(blanket, 1, sequences -> {}) > 0;
      // a stop may come too late for what takes no search, but must not turn an answer around
      assertFalse(fits && stopped instanceof Feasibility.Impossible, "seed " + seed);
      assertFalse(!fits && stopped instanceof Feasibility.Fits, "seed " + seed);
      unknown += stopped instanceof Feasibility.Unknown ? 1 : 0;
    }
    assertTrue(unknown > 0);
  }
}
