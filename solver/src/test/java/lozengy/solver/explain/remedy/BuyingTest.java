package lozengy.solver.explain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefJudge;
import lozengy.model.reading.BriefReader;
import lozengy.solver.RandomBriefs;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.explain.conflict.ExplainOptions;
import org.junit.jupiter.api.Test;

/** What is told to be bought is bought, written into the brief, and the brief is solved. */
class BuyingTest {

  private static final int SEEDS = 40;

  private static final String ZONED =
      """
      format: lozengy-brief/1
      title: A zone of its own
      layout: { setting: straight, across: 6, down: 4 }
      motifs: { square: { side: 10 cm, rounds: [ { metres: 5 }, { metres: 10 } ] } }
      yarns:
        - { code: MUD, colour: "#202020", ball: { grams: 50, metres: 100 }, balls: 9 }
        - { code: REE, colour: "#888888", ball: { grams: 50, metres: 100 }, balls: 0.2 }
        - { code: FOA, colour: "#f0f0f0", ball: { grams: 50, metres: 100 }, balls: 0.2 }
      look: { zones: [ { at: row1..row2, only: [REE, FOA] } ] }
      rules: { within-piece: free, keep-back: 10 % }
      """;

  @Test
  void whatIsBoughtServesTheZoneThatLacksIt() {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", ZONED)));
    Buying.Amounts buys = (Buying.Amounts) Buying.of(blanket, ExplainOptions.of(1, () -> false));
    assertTrue(buys.fewest());
    assertTrue(buys.amounts().stream().noneMatch(each -> each.yarn() == 0));
    // 12 squares of 15 m in the zone, and every other border of 10 m below it: 240 m; 36 m are
    // there
    assertEquals(3, buys.amounts().stream().mapToInt(Buying.Amount::balls).sum());
    assertSolved(buys.brief(), "zoned");
  }

  @Test
  void anyBriefIsSolvedOnceItHasWhatItIsToldToBuy() {
    int nothing = 0;
    int bought = 0;
    int many = 0;
    int inVain = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Brief drawn = RandomBriefs.of(seed, 3, 6);
      Brief brief = poor(zoned(drawn, random), random);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Buying buying = Buying.of(Blanket.of(brief), ExplainOptions.of(seed, () -> false));
      String told = "seed " + seed + ": " + buying;
      if (buying instanceof Buying.Amounts buys) {
        assertFalse(buys.amounts().isEmpty(), told);
        String text = BriefWriter.text(buys.brief());
        assertEquals(buys.brief(), BriefReader.read(SourceText.of("b.json", text)), told);
        assertSolved(buys.brief(), told);
        bought++;
        many += buys.amounts().stream().anyMatch(each -> each.balls() > 20) ? 1 : 0;
      } else if (buying instanceof Buying.Nothing) {
        assertSolved(brief, told);
        nothing++;
      } else if (buying instanceof Buying.NoHelp) {
        SolveResult result = solve(stocked(brief, 1_000_000_000));
        assertFalse(result instanceof SolveResult.Found, told);
        inVain++;
      }
    }
    assertTrue(
        nothing > 2 && bought > 10 && many > 1 && inVain > 1,
        nothing + " " + bought + " " + many + " " + inVain);
  }

  private static void assertSolved(Brief brief, String told) {
    SolveResult result = solve(brief);
    assertTrue(result instanceof SolveResult.Found, told + ": " + result);
    assertEquals(
        List.of(),
        Check.faults(Blanket.of(brief), ((SolveResult.Found) result).arrangement().sequences()),
        told);
  }

  private static SolveResult solve(Brief brief) {
    SolveOptions options = SolveOptions.defaults().withMoves(20_000).withThreads(1);
    return Solver.solve(Blanket.of(brief), Optional.empty(), options);
  }

  private static Brief zoned(Brief brief, SplittableRandom random) {
    List<String> only = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      if (random.nextInt(3) > 0) {
        only.add(yarn.code());
      }
    }
    boolean zone = !only.isEmpty() && random.nextBoolean();
    Where row = new Where(List.of("row1"), List.of());
    return zone ? brief.withLook(Look.NONE.withZones(List.of(new Look.Zone(row, only)))) : brief;
  }

  /** Any part of what a random brief has, now and then next to nothing of very short balls. */
  private static Brief poor(Brief brief, SplittableRandom random) {
    boolean tiny = random.nextInt(4) == 0;
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      long left = Math.round(yarn.stockMillimetres() * random.nextDouble() * (tiny ? 0.05 : 1.2));
      Yarn less = with(yarn, left);
      yarns.add(tiny ? less.withBalls(0).withBall(Optional.of(new Ball(1, 1500))) : less);
    }
    return brief.withYarns(yarns);
  }

  private static Brief stocked(Brief brief, long millimetres) {
    return brief.withYarns(brief.yarns().stream().map(yarn -> with(yarn, millimetres)).toList());
  }

  private static Yarn with(Yarn yarn, long millimetres) {
    return yarn.withBalls(0).withLeft(Optional.of(new YarnAmount.Length(millimetres)));
  }
}
