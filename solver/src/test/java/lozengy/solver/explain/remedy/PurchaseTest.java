package lozengy.solver.explain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.explain.Explanation;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.remedy.Relaxation.BuyBalls;
import lozengy.solver.explain.remedy.Remedy.Instead;
import org.junit.jupiter.api.Test;

/** What an explanation says of buying: that it does, that no fewer do, and what else would. */
class PurchaseTest {

  private static final String ONE_BALL_EACH =
      """
      format: lozengy-brief/1
      title: One ball of each
      layout: { setting: on-point, across: 6, down: 8 }
      motifs:
        square:
          side: 10 cm
          rounds:
            - { tone: light, metres: 1.4 }
            - { tone: mid, metres: 2.7 }
            - { tone: [light, mid], metres: 3.9 }
            - { tone: mid, metres: 5.3 }
            - { tone: dark, metres: 6.8 }
        triangle:
          rounds:
            - { tone: light, metres: 1.6 }
            - { tone: mid, metres: 3.0 }
            - { tone: [light, mid], metres: 3.6 }
            - { tone: dark, metres: 4.2 }
        corner:
          rounds:
            - { tone: light, metres: 1.2 }
            - { tone: mid, metres: 2.0 }
            - { tone: dark, metres: 3.0 }
      yarns:
        - { code: NAV, colour: "#232c4b", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: BRO, colour: "#4a3226", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: FOR, colour: "#27452f", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: PLU, colour: "#4d2547", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: RUS, colour: "#b5623a", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: TEA, colour: "#3d8a8c", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: OLI, colour: "#8a8a45", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: ROS, colour: "#b9708a", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: CRE, colour: "#f0e8d2", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: SKY, colour: "#a9cbe3", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: STR, colour: "#e3cf86", balls: 1, ball: { grams: 50, metres: 120 } }
        - { code: BLU, colour: "#ecc4bd", balls: 1, ball: { grams: 50, metres: 120 } }
      joining: { yarn: NAV, metres-per-metre: 3.5 }
      edging: { yarn: NAV, metres-per-metre: 9 }
      rules: { min-contrast: 5, keep-back: 5 % }
      """;

  private static final int SEEDS = 140;

  @Test
  void ballsOfOneDarkAndOneMidShadeAreFoundWhereBothTonesAreShort() {
    Remedy bought = purchase(ONE_BALL_EACH);
    assertTrue(bought.proof().fewestBalls(), bought.toString());
    List<BuyBalls> balls = bought.steps().stream().map(step -> (BuyBalls) step.change()).toList();
    // 748.1 m of mid rounds against 4 x 114 m, 677.2 m of dark ones against 353.162 m
    assertEquals(List.of(new BuyBalls(0, 3), new BuyBalls(4, 4)), balls);
    List<Instead> instead = bought.proof().instead();
    assertTrue(instead.contains(new Instead(4, List.of(5, 6, 7), false)), instead.toString());
  }

  @Test
  void allShadesThatWouldDoAreNamedAndMixtures() {
    Remedy bought =
        purchase(
            ONE_BALL_EACH
                .replace("across: 6, down: 8", "across: 5, down: 7")
                .replaceFirst("\"#b5623a\", balls: 1", "\"#b5623a\", balls: 2"));
    List<Relaxation> changes = bought.steps().stream().map(Remedy.Step::change).toList();
    assertEquals(List.of(new BuyBalls(0, 2)), changes);
    assertEquals(List.of(new Instead(0, List.of(1, 2, 3), true)), bought.proof().instead());
  }

  private static Remedy purchase(String text) {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", text)));
    Explanation told = Explanation.of(blanket, ExplainOptions.of(1, () -> false));
    List<Remedy> remedies = ((Explanation.Impossible) told).remedies();
    Remedy bought =
        remedies.stream()
            .filter(
                each -> each.steps().stream().allMatch(step -> step.change() instanceof BuyBalls))
            .findFirst()
            .orElseThrow();
    assertEquals(List.of(), Check.faults(Blanket.of(bought.brief()), bought.witness()));
    return bought;
  }

  @Test
  void whatIsToldHoldsAgainstAllOtherPurchases() {
    int fewest = 0;
    int several = 0;
    int instead = 0;
    int mixed = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Blanket blanket = Blanket.of(inBalls(TinyBlankets.of(seed).brief(), seed));
      ConsistencyOracle oracle =
          new ConsistencyOracle(seed, ExplainOptions.of(seed, () -> false).each(blanket));
      Optional<Balls.Bought> found =
          fits(blanket) ? Optional.empty() : new Buyer(blanket, oracle).bought();
      if (found.isEmpty() || found.get().count() > 7) {
        continue;
      }
      Balls.Bought bought = found.get();
      String told = "seed " + seed + ": " + Arrays.toString(bought.balls());
      Blanket with = StockRelaxing.with(blanket, bought.balls());
      assertEquals(List.of(), Check.faults(with, bought.witness()), told);
      if (bought.fewest()) {
        Predicate<int[]> does = balls -> fits(StockRelaxing.with(blanket, balls));
        assertFalse(any(new int[bought.balls().length], 0, bought.count() - 1, does), told);
        fewest++;
      }
      several += Arrays.stream(bought.balls()).filter(balls -> balls > 0).count() > 1 ? 1 : 0;
      for (Instead each : OtherShades.of(blanket, oracle, bought)) {
        int count = bought.balls()[each.yarn()];
        for (int other : each.yarns()) {
          int[] balls = bought.balls().clone();
          balls[each.yarn()] = 0;
          balls[other] = count;
          assertTrue(fits(StockRelaxing.with(blanket, balls)), told + " " + each);
          instead++;
          for (int here = 1; each.mixed() && here < count; here++) {
            balls[each.yarn()] = here;
            balls[other] = count - here;
            assertTrue(fits(StockRelaxing.with(blanket, balls)), told + " " + each);
            mixed++;
          }
        }
      }
    }
    assertTrue(
        fewest > 10 && several > 3 && instead > 3 && mixed > 0,
        fewest + " " + several + " " + instead + " " + mixed);
  }

  /** Whether any way to buy so many balls passes a test; those before a yarn are dealt. */
  private static boolean any(int[] balls, int yarn, int left, Predicate<int[]> does) {
    if (left < 0) {
      return false;
    }
    if (yarn == balls.length - 1) {
      int[] dealt = balls.clone();
      dealt[yarn] = left;
      return does.test(dealt);
    }
    for (int here = 0; here <= left; here++) {
      int[] dealt = balls.clone();
      dealt[yarn] = here;
      if (any(dealt, yarn + 1, left - here, does)) {
        return true;
      }
    }
    return false;
  }

  private static boolean fits(Blanket blanket) {
    return BruteForce.count(blanket, 1, sequences -> {}) > 0;
  }

  /** The brief with part of its yarn, and balls of a metre or two. */
  static Brief inBalls(Brief brief, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      long left = Math.round(yarn.stockMillimetres() * random.nextDouble() * 0.7);
      yarns.add(
          yarn.withBalls(0)
              .withBall(Optional.of(new Ball(1, 1000 + random.nextInt(1500))))
              .withLeft(Optional.of(new YarnAmount.Length(left))));
    }
    return brief.withYarns(yarns);
  }
}
