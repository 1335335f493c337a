package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.LongFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.solver.JoinedInBorders;
import org.junit.jupiter.api.Test;

/** The constraint model against brute force with the model's check, on tiny random blankets. */
class DifferentialTest {

  private static final int SEEDS = 200;
  private static final long AT_MOST = 2_000;
  private static final Limits AMPLE = Limits.of(10_000_000, 10_000_000);

  @Test
  void countsWhatBruteForceCounts() {
    counts(TinyBlankets::of);
  }

  @Test
  void countsWhatBruteForceCountsWherePiecesAreJoinedInTheirBorders() {
    counts(seed -> JoinedInBorders.of(TinyBlankets.of(seed), seed));
  }

  private static void counts(LongFunction<Blanket> blankets) {
    int feasible = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = blankets.apply(seed);
      long expected = BruteForce.count(blanket, AT_MOST, sequences -> {});
      feasible += expected > 0 ? 1 : 0;
      Proof.Count count = Proof.count(ConstraintModel.of(blanket), AT_MOST, AMPLE);
      assertEquals(new Proof.Count(expected, expected < AT_MOST), count, "seed " + seed);
    }
    // so that neither "yes" nor "no" goes untested
    assertTrue(feasible > SEEDS / 5 && feasible < SEEDS * 4 / 5, "feasible: " + feasible);
  }

  @Test
  void findsAStartOrProvesThatThereIsNone() {
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      boolean fits = Proof.count(ConstraintModel.of(blanket), 1, AMPLE).arrangements() > 0;
      Start.Outcome outcome = Start.find(ConstraintModel.of(blanket), seed, AMPLE);
      if (fits) {
        assertTrue(outcome instanceof Start.Solution, "seed " + seed + ": " + outcome);
        assertEquals(
            List.of(),
            Check.faults(blanket, ((Start.Solution) outcome).sequences()),
            "seed " + seed);
      } else {
        assertEquals(new Start.None(), outcome, "seed " + seed);
      }
    }
  }
}
