package lozengy.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyBlankets;
import org.junit.jupiter.api.Test;

/** Whole explanations against brute force, on tiny random blankets. */
class ExplanationTest {

  private static final int SEEDS = 120;

  @Test
  void isNeverWrongAndEveryRemedyWorks() {
    int remedies = 0;
    int misses = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      String place = "seed " + seed;
      Blanket blanket = TinyBlankets.of(seed);
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
    assertTrue(remedies > 50, remedies + " remedies");
    assertTrue(misses > 10, misses + " nearest misses");
  }
}
