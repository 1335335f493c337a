package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Steps of an ascent reckoned by hand, and hills whose tops are known. */
class AscentTest {

  /** Where an ascent on one variable stands at each step, if values come as told and slopes 10. */
  private static List<Double> path(int steps, double level, IntToDoubleFunction values) {
    List<Double> points = new ArrayList<>();
    Ascent ascent =
        new Ascent(
            (point, slope) -> {
              slope[0] = 10;
              points.add(point[0]);
              return values.applyAsDouble(points.size() - 1);
            },
            new double[] {0},
            level);
    ascent.climb(steps, () -> false);
    return points;
  }

  /** A quarter of the slope joins the direction, and a quarter of the way to the level is aimed. */
  @Test
  void stepsAimForAQuarterOfTheWayToTheLevel() {
    List<Double> path = path(4, 1, step -> new double[] {0, 1, 0.5, 0}[step]);
    double second = 2.5 + 0.25 * 7.5;
    double third = second + 0.25 * (10 - second);
    assertEquals(0, path.get(0));
    assertEquals(0.25 / 2.5, path.get(1), 1e-12);
    assertEquals(path.get(1) + 0.25 / second, path.get(2), 1e-12);
    // the level is 1 above the best, which is 1, and the value 0.5
    assertEquals(path.get(2) + 0.25 * 1.5 / third, path.get(3), 1e-12);
  }

  @Test
  void noStepIsLongerThanAFifthOfTheDirection() {
    assertEquals(0.2 * 2.5, path(2, 100, step -> 0).get(1), 1e-12);
  }

  /** The 41st step without gain goes back to the best point, forgets the direction, aims lower. */
  @Test
  void withoutGainTheLevelIsLowered() {
    List<Double> path = path(85, 1, step -> 0);
    assertEquals(0.7 * 0.25 / 2.5, path.get(42), 1e-12);
    assertEquals(0.7 * 0.7 * 0.25 / 2.5, path.get(83), 1e-12);
    // a gain of a tenth of the level is none, but the best point is the later one
    List<Double> slight = path(43, 1, step -> step == 0 ? 0 : 0.1);
    assertEquals(slight.get(1) + 0.7 * 0.25 / 2.5, slight.get(42), 1e-12);
    List<Double> high = path(43, 2, step -> step == 0 ? 0 : 0.15);
    assertEquals(high.get(1) + 0.7 * 2 * 0.25 / 2.5, high.get(42), 1e-12);
    // one of more is, and the 41 steps begin anew
    List<Double> gained = path(45, 1, step -> step < 2 ? 0 : 0.11);
    assertEquals(gained.get(2) + 0.7 * 0.25 / 2.5, gained.get(44), 1e-12);
    // so are gains of more than a tenth at every step
    List<Double> rising = path(60, 1, step -> 0.11 * step);
    for (int step = 1; step < rising.size(); step++) {
      double direction = 10 * (1 - Math.pow(0.75, step));
      assertEquals(rising.get(step - 1) + 0.25 / direction, rising.get(step), 1e-12);
    }
  }

  /** A roof with its ridge at x = 1 and its top at y = -0.5. */
  @Test
  void theTopOfARoofIsFound() {
    Ascent ascent =
        new Ascent(
            (point, slope) -> {
              slope[0] = point[0] < 1 ? 1 : -1;
              slope[1] = point[1] < -0.5 ? 2 : -2;
              return 7 - Math.abs(point[0] - 1) - 2 * Math.abs(point[1] + 0.5);
            },
            new double[] {0, 0},
            1);
    assertEquals(Double.NEGATIVE_INFINITY, ascent.best());
    ascent.climb(500, () -> false);
    assertEquals(7, ascent.best(), 0.01);
    assertArrayEquals(new double[] {1, -0.5}, ascent.bestPoint(), 0.01);
    ascent.bestPoint()[0] = 9;
    assertEquals(1, ascent.bestPoint()[0], 0.01);
  }

  @Test
  void aStoppedAscentTakesNoFurtherStep() {
    int[] evaluated = new int[1];
    Ascent ascent = new Ascent((point, slope) -> evaluated[0]++, new double[] {0}, 1);
    ascent.climb(10, () -> evaluated[0] == 4);
    assertEquals(4, evaluated[0]);
    ascent.climb(3, () -> false);
    assertEquals(7, evaluated[0]);
  }
}
