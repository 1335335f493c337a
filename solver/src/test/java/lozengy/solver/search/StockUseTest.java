package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.brief.Part;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Yarn used, what is overdrawn and what that costs, against the sums of the whole. */
class StockUseTest {

  private static Problem problem(double leeway) {
    return ProblemCompiler.compile(
        BlanketBuilder.straight(3, 2)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
            .yarn(Tone.DARK, 4000)
            .yarn(Tone.DARK, 2000)
            .yarn(Tone.DARK, 1000)
            .prefer(Map.of(Part.LEEWAY, leeway))
            .build(),
        Optional.empty());
  }

  @Test
  void whatIsOverdrawnIsCountedAndWeighedByThePressure() {
    Problem problem = problem(1);
    StockUse stock = new StockUse(problem);
    stock.reset(new int[] {0, 0, 0, 0, 1, 1});
    assertArrayEquals(new long[] {4000, 2000, 0}, stock.used());
    assertEquals(0, stock.overdrawn());
    assertEquals(0, stock.overdrawLoss());
    long leeway = 0;
    for (int yarn = 0; yarn < 3; yarn++) {
      assertEquals(problem.supply().leewayLoss(yarn, stock.used()[yarn]), stock.mostToGain(yarn));
      leeway += stock.mostToGain(yarn);
    }
    assertEquals(leeway, stock.leewayLoss());
    assertTrue(leeway > 0);
    stock.reset(new int[] {0, 0, 0, 0, 0, 2});
    assertEquals(1, stock.overdrawn());
    long loss = problem.supply().overdrawLoss(0, 5000);
    assertEquals(loss, stock.overdrawLoss());
    assertEquals(1, stock.pressure());
    stock.setPressure(2.5);
    assertEquals(2.5, stock.pressure());
    assertEquals((long) (2.5 * loss), stock.overdrawLoss());
    assertTrue(stock.mostToGain(1) > 1L << 50, "much is to be won while a yarn is overdrawn");
    stock.apply(0, 2000, 2, 1000);
    assertArrayEquals(new long[] {3000, 0, 2000}, stock.used());
    assertEquals(1, stock.overdrawn());
    stock.apply(2, 1000, 1, 1000);
    assertEquals(0, stock.overdrawn());
  }

  @Test
  void whatChangesCostIsTheDifferenceOfTheSums() {
    for (double leeway : new double[] {0, 2}) {
      Problem problem = problem(leeway);
      SplittableRandom random = new SplittableRandom(1);
      StockUse stock = new StockUse(problem);
      stock.reset(new int[] {0, 0, 0, 0, 1, 1});
      int overdrawn = 0;
      for (int turn = 0; turn < 300; turn++) {
        int a = random.nextInt(3);
        int b = (a + 1 + random.nextInt(2)) % 3;
        long less = random.nextInt(-1500, 1500);
        long more = random.nextInt(-1500, 1500);
        boolean below = stock.used()[a] < less || stock.used()[b] < -more;
        if (below) {
          continue;
        }
        long before = stock.overdrawLoss() + stock.leewayLoss();
        long told = stock.change(a, less, b, more);
        stock.apply(a, less, b, more);
        long leewayLoss = 0;
        for (int yarn = 0; yarn < 3; yarn++) {
          leewayLoss += problem.supply().leewayLoss(yarn, stock.used()[yarn]);
        }
        assertEquals(leewayLoss, stock.leewayLoss());
        assertEquals(stock.overdrawLoss() + stock.leewayLoss() - before, told);
        overdrawn += stock.overdrawn();
      }
      assertTrue(overdrawn > 50, overdrawn + " overdrawn");
    }
  }

  @Test
  void whereBarredNoYarnIsOverdrawnOnceNoneIs() {
    StockUse stock = new StockUse(problem(0));
    stock.reset(new int[] {0, 0, 0, 0, 1, 1});
    long usual = stock.change(1, 1000, 0, 1000);
    stock.bar(true);
    assertTrue(stock.change(1, 1000, 0, 1000) > 1L << 50);
    assertTrue(stock.change(1, -1000, 2, 1000) > 1L << 50, "of the yarn that is to have less");
    assertEquals(0, stock.change(1, 1000, 2, 1000));
    stock.bar(false);
    assertEquals(usual, stock.change(1, 1000, 0, 1000));
    // where one is, all may be
    stock.bar(true);
    stock.reset(new int[] {0, 0, 0, 0, 0, 1});
    assertTrue(stock.change(1, 1000, 0, 1000) < 1L << 50);
  }
}
