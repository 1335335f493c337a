package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.RuleId;
import lozengy.model.score.Scorer;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Layings;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Start;
import lozengy.solver.constraint.TinyPiles;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.conflict.Examining;
import lozengy.solver.explain.conflict.Feasibility;
import lozengy.solver.explain.conflict.Root;
import org.junit.jupiter.api.Test;

/** Briefs with a pile, settled by brute force with the model's check: the solver agrees. */
class PileDifferentialTest {

  private static final int SEEDS = 400;

  private static final Set<RuleId> PIECE_RULES =
      EnumSet.of(RuleId.PILE, RuleId.BANS, RuleId.TONES, RuleId.ZONES, RuleId.WITHIN_PIECE);

  private static final Limits AMPLE = Limits.of(10_000_000, 10_000_000);

  @Test
  void constraintModelAndArgumentsAgreeWithBruteForce() {
    modelAgrees(TinyPiles::of);
  }

  @Test
  void constraintModelAndArgumentsAgreeWithBruteForceInZones() {
    modelAgrees(TinyPiles::looked);
  }

  @Test
  void constraintModelAndArgumentsAgreeWithBruteForceWherePiecesAreJoinedInTheirBorders() {
    modelAgrees(seed -> JoinedInBorders.of(TinyPiles.of(seed), seed));
  }

  @Test
  void solverNeverSaysAWrongNoNorAnInvalidYes() {
    solverAgrees(TinyPiles::of);
  }

  @Test
  void solverNeverSaysAWrongNoNorAnInvalidYesInZones() {
    solverAgrees(TinyPiles::looked);
  }

  /** The check against a plain search for places at which the finished pieces could lie. */
  @Test
  void checkFindsWhereFinishedPiecesMayLie() {
    int valid = 0;
    int invalid = 0;
    int helped = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyPiles.looked(seed);
      SplittableRandom random = new SplittableRandom(seed);
      for (int trial = 0; trial < 20; trial++) {
        Sequences sequences = Layings.random(blanket, random);
        boolean fits = Layings.anyIsFine(blanket, sequences);
        boolean told =
            Check.faults(blanket, sequences).stream().anyMatch(f -> PIECE_RULES.contains(f.rule()));
        assertEquals(fits, !told, "seed " + seed + ", trial " + trial);
        valid += fits ? 1 : 0;
        invalid += fits ? 0 : 1;
        helped += fits && !Layings.allMayBeWorked(blanket, sequences) ? 1 : 0;
      }
    }
    assertTrue(valid > 500 && invalid > 500 && helped > 200, valid + " " + invalid + " " + helped);
  }

  private static void modelAgrees(LongFunction<Blanket> blankets) {
    int feasible = 0;
    int argued = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = blankets.apply(seed);
      boolean fits = BruteForce.count(blanket, 1, sequences -> {}) > 0;
      feasible += fits ? 1 : 0;
      List<Refutation> arguments = Root.arguments(blanket);
      argued += arguments.isEmpty() ? 0 : 1;
      assertTrue(!fits || arguments.isEmpty(), "seed " + seed + ": " + arguments);
      Start.Outcome outcome = Start.find(ConstraintModel.of(blanket), seed, AMPLE);
      if (fits) {
        assertTrue(outcome instanceof Start.Solution, "seed " + seed + ": " + outcome);
        assertEquals(
            List.of(),
            Check.faults(blanket, ((Start.Solution) outcome).sequences()),
            "seed " + seed);
      } else {
        assertEquals(new Start.None(), outcome, "seed " + seed);
        Feasibility.Answer answer = Examining.of(blanket, seed, AMPLE);
        assertTrue(answer instanceof Feasibility.Impossible, "seed " + seed);
      }
    }
    assertTrue(feasible > SEEDS / 5 && feasible < SEEDS * 4 / 5, "feasible: " + feasible);
    assertTrue(argued > SEEDS / 10, "argued: " + argued);
  }

  private static void solverAgrees(LongFunction<Blanket> blankets) {
    SolveOptions options = SolveOptions.defaults().withMoves(20_000).withThreads(1);
    for (long seed = 0; seed < SEEDS / 2; seed++) {
      Blanket blanket = blankets.apply(seed);
      double[] best = {-1};
      BruteForce.count(
          blanket,
          20_000,
          sequences ->
              best[0] =
                  Math.max(best[0], Scorer.score(blanket, sequences, Optional.empty()).total()));
      SolveResult result = Solver.solve(blanket, Optional.empty(), options);
      if (best[0] < 0) {
        assertTrue(result instanceof SolveResult.Impossible, "seed " + seed + ": " + result);
        continue;
      }
      assertTrue(result instanceof SolveResult.Found, "seed " + seed + ": " + result);
      SolveResult.Found found = (SolveResult.Found) result;
      assertEquals(
          List.of(), Check.faults(blanket, found.arrangement().sequences()), "seed " + seed);
      double bound = found.arrangement().bound().orElseThrow().total();
      assertTrue(bound >= best[0] - 1e-6, "seed " + seed + ": bound " + bound + ", " + best[0]);
    }
  }
}
