package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PileMatching;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.constraint.TinyPiles;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** What a problem costs and forbids is what the model scores and checks, whatever is drawn. */
class CostAgainstModelTest {

  /** Points by which whole units may round each of many small costs. */
  private static final double TOLERANCE = 0.01;

  private final Set<Part> lost = EnumSet.noneOf(Part.class);
  private int scored;
  private int broken;

  @Test
  void costsWhatTheScoreLosesAndForbidsWhatTheCheckFinds() {
    for (long seed = 1; seed <= 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Brief drawn = RandomBriefs.of(seed, seed % 5 == 0 ? 6 : 3, 6);
      Brief brief = RandomLooks.of(seed, seed % 4 == 0 ? drawn : RandomDraws.ample(drawn, random));
      if (BriefJudge.mistakes(brief).isEmpty()) {
        Blanket blanket = Blanket.of(brief);
        Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
        if (!problem.domains().anyEmpty()) {
          Sequences earlier = problem.sequences(RandomDraws.of(problem, random, true));
          Problem again = ProblemCompiler.compile(blanket, Optional.of(earlier));
          String where = "seed " + seed;
          costsAsScored(problem, RandomDraws.of(problem, random, true), where);
          costsAsScored(problem, RandomDraws.of(problem, random, true), where);
          costsAsScored(problem, RandomDraws.of(problem, random, false), where);
          costsAsScored(again, RandomDraws.of(again, random, true), where + ", again");
          costsAsScored(again, again.assignment(earlier), where + ", as before");
        }
      }
    }
    assertTrue(scored > 200, scored + " scored");
    assertTrue(broken > 200, broken + " broken");
    assertEquals(EnumSet.allOf(Part.class), lost);
  }

  /** Exhaustively, on blankets so small that most of a brief's rules bite at once. */
  @Test
  void forbidsWhatTheCheckFindsOfTinyBlankets() {
    for (long seed = 0; seed < 120; seed++) {
      Blanket blanket = seed % 3 == 0 ? TinyPiles.looked(seed) : TinyBlankets.of(seed);
      if (PileMatching.of(blanket).complete()) {
        Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
        SplittableRandom random = new SplittableRandom(seed);
        for (int turn = 0; turn < 20 && !problem.domains().anyEmpty(); turn++) {
          costsAsScored(
              problem, RandomDraws.of(problem, random, turn % 4 > 0), "tiny, seed " + seed);
        }
      }
    }
    assertTrue(scored > 200, scored + " scored");
    assertTrue(broken > 200, broken + " broken");
  }

  /** Only joined pieces may repeat a border on a seam, as images of each other or by themselves. */
  @Test
  void joinedPiecesMayRepeatABorder() {
    BlanketBuilder builder =
        BlanketBuilder.straight(8, 3)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(2000))
            .yarns(8, Tone.DARK, 500_000)
            .note("r2c4", PieceState.JOINED, "A", "B")
            .note("r2c5", PieceState.JOINED, "A", "B");
    for (Look look : List.of(Look.NONE, Look.NONE.withSymmetry(Symmetry.HALF_TURN))) {
      Blanket blanket = Blanket.of(builder.build().brief().withLook(look));
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      SplittableRandom random = new SplittableRandom(1);
      int before = scored;
      for (int turn = 0; turn < 10; turn++) {
        costsAsScored(problem, RandomDraws.of(problem, random, true), look.toString());
      }
      assertTrue(scored > before, look.toString());
    }
  }

  private void costsAsScored(Problem problem, int[] yarn, String where) {
    Sequences sequences = problem.sequences(yarn);
    assertArrayEquals(yarn, problem.assignment(sequences), where);
    Cost cost = Cost.of(problem, yarn, 1);
    List<Fault> faults = Check.faults(problem.blanket(), sequences);
    assertEquals(faults.isEmpty(), cost.hard() == 0, where + ": " + cost.hard() + ", " + faults);
    if (!faults.isEmpty()) {
      broken++;
      return;
    }
    Score score = Scorer.score(problem.blanket(), sequences, problem.earlier());
    double kept = 100 - cost.total() / problem.prices().unitsPerPoint();
    // where more repeats than in a shuffle, or all fades the wrong way, the score stops at 0
    boolean stops =
        score.parts().get(Part.SPREAD) == 0
            || Double.valueOf(0).equals(score.parts().get(Part.FADE));
    assertTrue(
        Math.abs(score.objective() - kept) <= TOLERANCE || stops && kept < score.objective(),
        where + ": " + kept + ", by the model " + score);
    if (!stops) {
      scored++;
      score.parts().forEach((part, points) -> addLost(problem, part, points));
    }
  }

  private void addLost(Problem problem, Part part, double points) {
    if (points < 100 && problem.blanket().brief().prefer().weight(part) > 0) {
      lost.add(part);
    }
  }
}
