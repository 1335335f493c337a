package lozengy.solver.bound;

import java.util.Arrays;
import java.util.function.BooleanSupplier;

/**
 * Climbs a concave function by subgradient steps with a running direction, towards a level above
 * the best value that is lowered where the climb stalls (B. T. Polyak 1969; the level method of U.
 * Brännlund 1993). Deterministic; each step is one evaluation.
 */
final class Ascent {

  /** A concave function. */
  @FunctionalInterface
  interface Hill {

    /**
     * Evaluates the function.
     *
     * @param point where
     * @param slope takes a supergradient there
     * @return the value
     */
    double value(double[] point, double[] slope);
  }

  /** Share of a new direction in the running one. */
  private static final double FRESH = 0.25;

  /** Part of the way to the level that a step aims for. */
  private static final double STEP = 0.25;

  /** Longest step for a direction of length 1. */
  private static final double LONGEST = 0.2;

  /** Steps without gain after which the level is lowered. */
  private static final int PATIENCE = 40;

  /** What the level is lowered by. */
  private static final double LOWER = 0.7;

  private final Hill hill;
  private final double[] point;
  private final double[] slope;
  private final double[] direction;
  private final double[] bestPoint;
  private double best = Double.NEGATIVE_INFINITY;
  private double level;
  private int waiting;

  /**
   * Starts at a point.
   *
   * @param level how far above the first value to aim for, above 0
   */
  Ascent(Hill hill, double[] start, double level) {
    this.hill = hill;
    this.level = level;
    point = start.clone();
    bestPoint = start.clone();
    slope = new double[start.length];
    direction = new double[start.length];
  }

  /** Takes so many steps, fewer if stopped. */
  void climb(int steps, BooleanSupplier stop) {
    for (int step = 0; step < steps && !stop.getAsBoolean(); step++) {
      double value = hill.value(point, slope);
      judge(value);
      double length = 0;
      for (int i = 0; i < point.length; i++) {
        direction[i] += FRESH * (slope[i] - direction[i]);
        length += direction[i] * direction[i];
      }
      double size = STEP * (best + level - value) / Math.max(length, 1e-9);
      size = Math.min(size, LONGEST);
      for (int i = 0; i < point.length; i++) {
        point[i] += size * direction[i];
      }
    }
  }

  private void judge(double value) {
    waiting = value > best + 0.1 * level ? 0 : waiting + 1;
    if (value > best) {
      best = value;
      System.arraycopy(point, 0, bestPoint, 0, point.length);
    }
    if (waiting > PATIENCE) {
      level *= LOWER;
      waiting = 0;
      System.arraycopy(bestPoint, 0, point, 0, point.length);
      Arrays.fill(direction, 0);
    }
  }

  /** The highest value met, negative infinity before the first step. */
  double best() {
    return best;
  }

  /** Where it was met. */
  double[] bestPoint() {
    return bestPoint.clone();
  }
}
