package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.reading.BriefJudge;
import lozengy.model.score.Score;
import lozengy.solver.RandomBriefs;
import lozengy.solver.constraint.TinyBlankets;
import org.junit.jupiter.api.Test;

/**
 * How close bounds of single parts come to the best of all arrangements of tiny blankets, tried one
 * by one: none lies below it, and all together lie no further above it than they did.
 */
class TightBoundsTest {

  private static final double MOST_WAYS = 80;

  /** Points above the best of all, over all blankets. */
  private static final Map<Part, Double> GAPS =
      Map.of(
          Part.BALANCE, 75.287,
          Part.SPREAD, 0.001,
          Part.CONTRAST, 21.403,
          Part.VARIETY, 45.001,
          Part.LEEWAY, 2.637,
          Part.CONTRAST_BETWEEN, 5.187,
          Part.CONTRAST_WITHIN, 18.81);

  @Test
  void partsAreBoundedAsCloselyAsTheyWere() {
    Map<Part, Double> gaps = new EnumMap<>(Part.class);
    double ofTotals = 0;
    int held = 0;
    for (long seed = 1; seed <= 120; seed++) {
      Brief brief = seed % 2 == 0 ? RandomBriefs.of(seed, 2, 5) : TinyBlankets.of(seed).brief();
      if (!BriefJudge.mistakes(brief).isEmpty() || Exhaustive.ways(Blanket.of(brief)) > MOST_WAYS) {
        continue;
      }
      Map<Part, Double> weights = new EnumMap<>(Part.class);
      for (Part part : Part.values()) {
        weights.put(part, GAPS.containsKey(part) ? 1.0 : 0.0);
      }
      Blanket blanket = Blanket.of(brief.withPrefer(new Preferences(weights)));
      List<Score> all = Exhaustive.scores(blanket, Optional.empty());
      if (all.size() < 2) {
        continue;
      }
      held++;
      Map<Part, Bound> bounds =
          PartBounds.of(blanket, GAPS.keySet(), new BoundLimits(1), () -> false);
      for (Part part : GAPS.keySet()) {
        double best =
            all.stream().mapToDouble(score -> score.parts().get(part)).max().orElseThrow();
        double gap = bounds.get(part).total() - best;
        assertTrue(gap >= 0, "seed " + seed + ", " + part + ": " + gap);
        gaps.merge(part, gap, Double::sum);
      }
      double best = all.stream().mapToDouble(Score::total).max().orElseThrow();
      double gap = Bounds.of(blanket, new BoundLimits(1), () -> false).total() - best;
      assertTrue(gap >= 0, "seed " + seed + ": " + gap);
      ofTotals += gap;
    }
    assertEquals(10, held);
    GAPS.forEach((part, most) -> assertTrue(gaps.get(part) <= most, part + ": " + gaps.get(part)));
    assertTrue(ofTotals <= 59.375, "totals: " + ofTotals);
  }
}
