package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.solver.RandomBriefs;
import org.junit.jupiter.api.Test;

/** The bound against the best of all arrangements of tiny blankets, tried one by one. */
class BoundsTest {

  private static final double MOST_WAYS = 20_000;

  @Test
  void noArrangementOfATinyBlanketExceedsTheBound() {
    int held = 0;
    int tight = 0;
    for (long seed = 1; seed <= 800; seed++) {
      Brief brief = RandomBriefs.of(seed, 2, 5);
      if (!BriefMistakes.of(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      if (Exhaustive.ways(blanket) > MOST_WAYS) {
        continue;
      }
      Optional<Sequences> earlier = seed % 3 == 0 ? Optional.of(blanket.locks()) : Optional.empty();
      OptionalDouble best = Exhaustive.best(blanket, earlier);
      if (best.isPresent()) {
        double bound = Bounds.of(blanket, earlier, new BoundLimits(2), () -> false).total();
        assertTrue(
            bound >= best.getAsDouble(),
            "seed " + seed + ": bound " + bound + " below " + best.getAsDouble());
        held++;
        tight += bound - best.getAsDouble() < 1 ? 1 : 0;
      }
    }
    assertTrue(held > 100, "only " + held + " blankets could be tried out");
    assertTrue(tight > held / 3, "only " + tight + " of " + held + " bounds within a point");
  }

  @Test
  void moreEffortNeverProvesLessAndTheSameEffortProvesTheSame() {
    for (long seed = 1; seed <= 40; seed++) {
      Brief brief = RandomBriefs.of(seed, 4, 8);
      if (BriefMistakes.of(brief).isEmpty()) {
        Blanket blanket = Blanket.of(brief);
        double before = 100;
        for (int stages = 0; stages <= 2; stages++) {
          BoundLimits limits = new BoundLimits(stages);
          double bound = Bounds.of(blanket, Optional.empty(), limits, () -> false).total();
          assertTrue(bound <= before, "seed " + seed + ", stages " + stages);
          before = bound;
        }
        BoundLimits limits = new BoundLimits(2);
        assertEquals(before, Bounds.of(blanket, Optional.empty(), limits, () -> false).total());
      }
    }
  }

  @Test
  void stoppedAtOnceTheBoundIsAll() {
    Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(1, 4, 8));
    assertEquals(
        100, Bounds.of(blanket, Optional.empty(), BoundLimits.THOROUGH, () -> true).total());
  }
}
