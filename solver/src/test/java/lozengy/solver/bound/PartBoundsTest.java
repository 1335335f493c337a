package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.reading.BriefJudge;
import lozengy.model.score.Score;
import lozengy.solver.RandomBriefs;
import org.junit.jupiter.api.Test;

/** What parts can be at most, against all arrangements of tiny blankets, tried one by one. */
class PartBoundsTest {

  private static final double MOST_WAYS = 1000;
  private static final double ROUNDING = 1e-6;
  private static final BoundLimits LIMITS = new BoundLimits(1);

  @Test
  void noArrangementThatKeepsTheOthersHasMoreOfAPart() {
    int held = 0;
    int telling = 0;
    for (long seed = 1; seed <= 300; seed++) {
      Brief brief = RandomBriefs.of(seed, 2, 5);
      if (!BriefJudge.mistakes(brief).isEmpty() || Exhaustive.ways(Blanket.of(brief)) > MOST_WAYS) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      Optional<Sequences> earlier = Optional.empty();
      List<Score> all = Exhaustive.scores(blanket, earlier);
      if (all.isEmpty()) {
        continue;
      }
      Score given = all.get((int) (seed % all.size()));
      Bound known = Bounds.of(blanket, LIMITS, () -> false);
      Map<Part, Double> kept =
          PartBounds.othersKept(blanket, given.parts(), Optional.of(known), LIMITS, () -> false);
      for (Part part : given.parts().keySet()) {
        for (Score other : all) {
          if (keeps(given, other, part, blanket)) {
            double figure = other.parts().get(part);
            assertTrue(
                figure <= kept.get(part) + ROUNDING,
                "seed " + seed + ", " + part + ": " + figure + " above " + kept);
            held++;
          }
        }
        telling += kept.get(part) < 100 - ROUNDING ? 1 : 0;
      }
    }
    assertTrue(held > 500 && telling > 20, held + " held, " + telling + " below 100");
  }

  /** Whether every other part that weighs is at least as good as in a given arrangement. */
  private static boolean keeps(Score given, Score other, Part part, Blanket blanket) {
    return given.parts().keySet().stream()
        .filter(each -> each != part && blanket.brief().prefer().weight(each) > 0)
        .allMatch(each -> other.parts().get(each) >= given.parts().get(each));
  }
}
