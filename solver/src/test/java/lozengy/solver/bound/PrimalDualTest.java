package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The search for multipliers on programs of two variables, whose corners are tried one by one. */
class PrimalDualTest {

  /** A program: x and y from 0 to tops, gains, rows a x + b y at most c. */
  private record Plane(double[] tops, double[] gains, double[][] rows) {

    static Plane of(long seed) {
      SplittableRandom random = new SplittableRandom(seed);
      double[] tops = random.doubles(2, 0.5, 4).toArray();
      double[] gains = random.doubles(2, -1, 3).toArray();
      double[][] rows = new double[1 + random.nextInt(3)][];
      for (int row = 0; row < rows.length; row++) {
        rows[row] =
            new double[] {
              3 * random.nextDouble() - 1, 3 * random.nextDouble() - 1, 2 * random.nextDouble()
            };
      }
      return new Plane(tops, gains, rows);
    }

    LinearProgram program() {
      LinearProgram program = new LinearProgram();
      program.addConstant(1);
      program.variable(0, tops[0], gains[0]);
      program.variable(0, tops[1], gains[1]);
      for (double[] row : rows) {
        program.atMost(row[2]);
        program.put(0, row[0]);
        program.put(1, row[1]);
      }
      program.scale();
      return program;
    }

    private boolean holds(double x, double y) {
      boolean holds = x >= -1e-9 && x <= tops[0] + 1e-9 && y >= -1e-9 && y <= tops[1] + 1e-9;
      for (double[] row : rows) {
        holds &= row[0] * x + row[1] * y <= row[2] + 1e-9;
      }
      return holds;
    }

    /** The best corner: where two of all the lines cross. */
    double most() {
      List<double[]> lines = new ArrayList<>(List.of(rows));
      lines.add(new double[] {1, 0, 0});
      lines.add(new double[] {0, 1, 0});
      lines.add(new double[] {1, 0, tops[0]});
      lines.add(new double[] {0, 1, tops[1]});
      double most = Double.NEGATIVE_INFINITY;
      for (double[] one : lines) {
        for (double[] other : lines) {
          double cross = one[0] * other[1] - one[1] * other[0];
          double x = (one[2] * other[1] - one[1] * other[2]) / cross;
          double y = (one[0] * other[2] - one[2] * other[0]) / cross;
          if (Math.abs(cross) > 1e-9 && holds(x, y)) {
            most = Math.max(most, 1 + gains[0] * x + gains[1] * y);
          }
        }
      }
      return most;
    }
  }

  /** Above them at first by no more than it was, in the end by none. */
  @Test
  void theBestCornerIsProvedWithinFewRounds() {
    double gaps = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Plane plane = Plane.of(seed);
      double most = plane.most();
      PrimalDual search = new PrimalDual(plane.program(), new double[0]);
      search.improve(6, () -> false);
      assertTrue(search.best() >= most, "seed " + seed + ": " + search.best() + " below " + most);
      gaps += search.best() - most;
      search.improve(150, () -> false);
      assertEquals(most, search.best(), 1e-4, "seed " + seed);
    }
    assertTrue(gaps <= 0.0948, "further from the corners than it was: " + gaps);
  }

  /** Where the corner is the only best one, the mean of the steps lies by it. */
  @Test
  void theHintIsTheBestCorner() {
    LinearProgram program = new LinearProgram();
    int x = program.variable(1, 5, 3);
    int y = program.variable(-2, 8, 5);
    program.equalTo(18);
    program.put(x, 3);
    program.put(y, 2);
    program.scale();
    PrimalDual search = new PrimalDual(program, new double[0]);
    search.improve(60, () -> false);
    // y for x is 9 - 1.5 x, and 5 y loses more than 3 x gains
    assertEquals(3 + 37.5, search.best(), 1e-4);
    assertEquals(1, search.hint(x), 1e-3);
    assertEquals(7.5, search.hint(y), 1e-3);
  }

  @Test
  void theBestMultipliersProveTheBestBound() {
    LinearProgram program = Plane.of(5).program();
    PrimalDual search = new PrimalDual(program, new double[0]);
    assertEquals(new DualBound(program).of(new double[program.rows()]), search.best());
    double before = search.best();
    for (int round = 0; round < 20; round++) {
      search.improve(1, () -> false);
      assertTrue(search.best() <= before);
      before = search.best();
      assertEquals(before, new DualBound(program).of(search.bestMultipliers()));
    }
    search.bestMultipliers()[0] += 1;
    assertEquals(before, new DualBound(program).of(search.bestMultipliers()));
  }

  @Test
  void aSearchGoesOnFromTheMultipliersThatItIsGiven() {
    LinearProgram program = Plane.of(5).program();
    PrimalDual search = new PrimalDual(program, new double[0]);
    search.improve(60, () -> false);
    double[] found = search.bestMultipliers();
    PrimalDual warm = new PrimalDual(program, found);
    assertEquals(search.best(), warm.best());
    warm.improve(5, () -> false);
    assertArrayEquals(search.bestMultipliers(), found, "its own are left as they are");
    // multipliers of another program's rows are of no use
    PrimalDual other = new PrimalDual(program, new double[program.rows() + 1]);
    assertEquals(new DualBound(program).of(new double[program.rows()]), other.best());
  }

  @Test
  void aStoppedSearchTakesNoFurtherRound() {
    int[] asked = new int[1];
    PrimalDual search = new PrimalDual(Plane.of(5).program(), new double[0]);
    double before = search.best();
    search.improve(10, () -> true);
    assertEquals(before, search.best());
    search.improve(10, () -> ++asked[0] > 3);
    assertEquals(4, asked[0]);
    asked[0] = 0;
    search.improve(10, () -> ++asked[0] < 0);
    assertEquals(10, asked[0]);
  }

  /** A program without gains or without rights steps as it may; what it proves still holds. */
  @Test
  void programsWithNothingToGainAreBoundedByNothing() {
    LinearProgram program = new LinearProgram();
    int x = program.variable(0, 2, 0);
    program.atMost(0);
    program.put(x, 1);
    program.scale();
    PrimalDual search = new PrimalDual(program, new double[0]);
    search.improve(3, () -> false);
    assertEquals(0, search.best(), 2e-6);
    LinearProgram free = new LinearProgram();
    free.variable(0, 2, 3);
    free.scale();
    PrimalDual none = new PrimalDual(free, new double[0]);
    none.improve(3, () -> false);
    assertEquals(6, none.best(), 2e-6);
    assertEquals(2, none.hint(0), 1e-9);
  }
}
