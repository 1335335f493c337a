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
}
