package lozengy.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.LongFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.constraint.TinyPiles;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.miss.NearestMiss;
import lozengy.solver.explain.remedy.Remedy;
import org.junit.jupiter.api.Test;

/** Whole explanations against brute force, on tiny random blankets. */
class ExplanationTest {

  private static final int SEEDS = 120;

  @Test
  void isNeverWrongAndEveryRemedyWorks() {
    int[] told = isNeverWrong(TinyBlankets::of, SEEDS);
    assertTrue(told[0] > 50, told[0] + " remedies");
    assertTrue(told[1] > 10, told[1] + " nearest misses");
  }

  @Test
  void isNeverWrongWithAPileAndZones() {
    int[] told = isNeverWrong(TinyPiles::looked, 17);
    assertTrue(told[0] > 5, told[0] + " remedies");
  }

  /** Tells the numbers of remedies and of nearest misses that were held against brute force. */
  private static int[] isNeverWrong(LongFunction<Blanket> blankets, long seeds) {
    int remedies = 0;
    int misses = 0;
    for (long seed = 0; seed < seeds; seed++) {
      String place = "seed " + seed;
      Blanket blanket = blankets.apply(seed);
      boolean fits = BruteForce.count(blanket, 1, sequences -> {}) > 0;
      Explanation told = Explanation.of(blanket, ExplainOptions.of(seed, () -> false));
      if (fits) {
        assertTrue(told instanceof Explanation.Fits, place + ": " + told);
        assertEquals(List.of(), Check.faults(blanket, ((Explanation.Fits) told).witness()), place);
        continue;
      }
      assertTrue(told instanceof Explanation.Impossible, place + ": " + told);
      Explanation.Impossible impossible = (Explanation.Impossible) told;
      assertFalse(impossible.causes().isEmpty(), place);
      for (Remedy remedy : impossible.remedies()) {
        Blanket changed = Blanket.of(remedy.brief());
        String which = place + ": " + remedy.steps();
        assertEquals(List.of(), Check.faults(changed, remedy.witness()), which);
        assertTrue(BruteForce.count(changed, 1, sequences -> {}) > 0, which);
        remedies++;
      }
      if (impossible.nearest().isPresent()) {
        NearestMiss miss = impossible.nearest().get();
        assertFalse(miss.sequences().complete(), place);
        assertTrue(
            Check.faults(blanket, miss.sequences()).stream()
                .allMatch(fault -> fault.rule() == RuleId.COMPLETE),
            place);
        misses++;
      }
    }
    return new int[] {remedies, misses};
  }
}
