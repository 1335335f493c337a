package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Linear programs: what any multipliers prove, and that good ones are found. */
class DualBoundTest {

  @Test
  void whateverTheMultipliersNoPointExceedsTheirBound() {
    for (long seed = 1; seed <= 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int variables = 2 + random.nextInt(5);
      double[] point = new double[variables];
      double[] gain = new double[variables];
      LinearProgram program = new LinearProgram();
      double value = 3;
      program.addConstant(3);
      for (int variable = 0; variable < variables / 2; variable++) {
        double low = random.nextDouble() - 0.5;
        double high = low + 2 * random.nextDouble();
        point[variable] = low + (high - low) * random.nextDouble();
        gain[variable] = 2 * random.nextDouble() - 1;
        program.variable(low, high, gain[variable]);
        value += gain[variable] * point[variable];
      }
      for (int variable = variables / 2; variable < variables; variable++) {
        double high = 2 * random.nextDouble();
        double each = random.nextDouble();
        point[variable] = high * random.nextDouble();
        program.squared(high, each);
        value -= each * point[variable] * point[variable];
      }
      int rows = 1 + random.nextInt(4);
      for (int row = 0; row < rows; row++) {
        double[] times = random.doubles(variables, -2, 2).toArray();
        double at = 0;
        for (int variable = 0; variable < variables; variable++) {
          at += times[variable] * point[variable];
        }
        if (row == 0) {
          program.equalTo(at);
        } else {
          program.atMost(at + random.nextDouble());
        }
        for (int variable = 0; variable < variables; variable++) {
          program.put(variable, times[variable]);
        }
      }
      program.scale();
      DualBound bound = new DualBound(program);
      for (int i = 0; i < 20; i++) {
        double proved = bound.of(random.doubles(rows, -3, 3).toArray());
        assertTrue(proved >= value, "seed " + seed + ": " + proved + " below " + value);
      }
      PrimalDual search = new PrimalDual(program, new double[0]);
      search.improve(20, () -> false);
      assertTrue(search.best() >= value, "seed " + seed + ": " + search.best());
    }
  }

  /** Maximise 3x + 5y with x <= 4, 2y <= 12, 3x + 2y <= 18: 36 at (2, 6), a textbook's example. */
  @Test
  void theOptimumOfATextbookProgramIsProved() {
    LinearProgram program = new LinearProgram();
    int x = program.variable(0, 4, 3);
    int y = program.variable(0, 100, 5);
    program.atMost(12);
    program.put(y, 2);
    program.atMost(18);
    program.put(x, 3);
    program.put(y, 2);
    program.scale();
    PrimalDual search = new PrimalDual(program, new double[0]);
    search.improve(50, () -> false);
    assertEquals(36, search.best(), 1e-3);
    assertEquals(2, search.hint(x), 0.05);
    assertEquals(6, search.hint(y), 0.05);
  }

  /** Maximise 4x - s^2 with s >= x - 1 and x <= 10: 8 at (3, 2). */
  @Test
  void theOptimumWithASquareIsProved() {
    LinearProgram program = new LinearProgram();
    int x = program.variable(0, 10, 4);
    int s = program.squared(9, 1);
    program.atMost(1);
    program.put(x, 1);
    program.put(s, -1);
    program.scale();
    PrimalDual search = new PrimalDual(program, new double[0]);
    search.improve(50, () -> false);
    assertEquals(8, search.best(), 1e-3);
    assertEquals(2, search.hint(s), 0.05);
  }

  /** Three pieces, each with its own best path of two rounds: no rows are needed to bound them. */
  @Test
  void pathsAreBoundedByTheirBestPath() {
    LinearProgram program = new LinearProgram();
    int[][] nodes = new int[2][2];
    double[][] gains = {{0, 2}, {1, 0}};
    for (int round = 0; round < 2; round++) {
      for (int yarn = 0; yarn < 2; yarn++) {
        nodes[round][yarn] = program.variable(0, 3, gains[round][yarn]);
      }
    }
    int cheap = program.variable(0, 3, -2.5);
    int[][][] arcs = {{{cheap, program.variable(0, 3, 0)}, {cheap, -1}}};
    arcs[0][1][0] = program.variable(0, 3, -2.5);
    program.paths(new LinearProgram.Paths(nodes, arcs));
    program.scale();
    // the paths are worth 0 + 1 - 2.5, 0 + 0 and 2 + 1 - 2.5 for each of the three pieces
    assertEquals(1.5, new DualBound(program).of(new double[0]), 1e-5);
  }

  /**
   * Maximise 3 + 4x - s^2 + 2y - z with x to 10, s to 9, y to 1, z to 5, where x - s is at most 1
   * and y + z is 0.5, by duals of the rows as put.
   */
  @Test
  void multipliersProveWhatIsReckonedByHand() {
    LinearProgram program = new LinearProgram();
    program.addConstant(3);
    int x = program.variable(0, 10, 4);
    int s = program.squared(9, 1);
    int y = program.variable(0, 1, 2);
    int z = program.variable(0, 5, -1);
    program.atMost(1);
    program.put(x, 1);
    program.put(s, -1);
    program.equalTo(0.5);
    program.put(y, 1);
    program.put(z, 1);
    DualBound bound = new DualBound(program);
    // all may take their best
    assertEquals(3 + 40 + 2, bound.of(new double[] {0, 0}), 1e-5);
    // x alone is worth 4 - 2, s at its best 1 takes 2 - 1; y is worth 2 - 3, z none
    assertEquals(3 + 2 + 20 + 1 + 1.5, bound.of(new double[] {2, 3}), 1e-5);
    // s at most 9 where its multiplier is 18 and more; an equal row may have a negative one
    assertEquals(3 + 20 + (180 - 81) + 3 + 0.5 * -1, bound.of(new double[] {20, -1}), 1e-5);
    // at most rows' negative multipliers count as none
    assertEquals(3 + 40 + 0.5 * 2, bound.of(new double[] {-5, 2}), 1e-5);
    // z gains by a negative multiplier of more than its loss
    assertEquals(3 + 40 + -2 * 0.5 + 4 + 5, bound.of(new double[] {0, -2}), 1e-5);
  }

  /** Of each number added up the last bit, times all that are added up, and the margin. */
  @Test
  void theMarginIsThatOfTheNumbersAddedUp() {
    LinearProgram program = new LinearProgram();
    // so much that the bound is 0, and adds up without rounding
    double constant = 0x1p33 - 0x1p35 + 0x1p31;
    program.addConstant(constant);
    program.variable(0, 1, 0x1p30);
    program.variable(0, 1, -0x1p31);
    program.atMost(-0x1p32);
    program.put(0, 0x1p33);
    program.put(1, -0x1p34);
    // 2 entries, 2 variables, a row and the constant
    double size = -constant + 0x1p30 + 0x1p31 + 2 * (0x1p32 + 0x1p33 + 0x1p34);
    double margin = 1e-6 + size * 6 * 0x1p-52;
    assertEquals(margin, new DualBound(program).of(new double[] {2}), 1e-12);
  }

  /** A path through three rounds; nodes and arcs that are not there lead nowhere. */
  @Test
  void pathsGoAlongNodesAndArcsThatAreThere() {
    LinearProgram program = new LinearProgram();
    int[][] nodes = new int[3][3];
    double[][] gains = {{1, 5, 9}, {0, -4, 0}, {2, 3, 7}};
    for (int round = 0; round < 3; round++) {
      for (int yarn = 0; yarn < 3; yarn++) {
        boolean there = round != 0 || yarn != 2;
        nodes[round][yarn] = there ? program.variable(0, 1, gains[round][yarn]) : -1;
      }
    }
    int[][][] arcs = new int[2][3][3];
    for (int round = 0; round < 2; round++) {
      for (int from = 0; from < 3; from++) {
        for (int to = 0; to < 3; to++) {
          // the last yarn is never reached in the border, nor left in the first
          boolean there = from != to && (round == 0 ? from != 2 : to != 2);
          arcs[round][from][to] = there ? program.variable(0, 1, 0.25 * (from + to)) : -1;
        }
      }
    }
    int alone = program.variable(0, 1, 0.125);
    program.paths(new LinearProgram.Paths(nodes, arcs));
    program.scale();
    // 5, by 0.75 to 0 of the third, by 0.75 to 3 of the second; beside it what is on no path
    assertEquals(5 + 0.75 + 0 + 0.75 + 3 + 0.125, new DualBound(program).of(new double[0]), 1e-5);
    assertEquals(0.125, program.gain(alone));
  }
}
