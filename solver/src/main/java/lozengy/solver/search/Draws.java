package lozengy.solver.search;

import java.util.SplittableRandom;

/** Random draws of one walker, the same on every machine for one seed. */
final class Draws {

  private static final int LEVELS = 1 << 11;

  /** -ln(u) for u in (0, 1), by eleven random bits; StrictMath, so the same everywhere. */
  private static final double[] MINUS_LOG = new double[LEVELS];

  static {
    for (int i = 0; i < LEVELS; i++) {
      MINUS_LOG[i] = -StrictMath.log((i + 0.5) / LEVELS);
    }
  }

  /** No {@link #exponential} is larger. */
  static final double MOST = MINUS_LOG[0];

  private final SplittableRandom random;

  Draws(long seed) {
    this(new SplittableRandom(seed));
  }

  private Draws(SplittableRandom random) {
    this.random = random;
  }

  /** Those of one tile in one phase. */
  static Draws of(long seed, long phase, int tile) {
    return new Draws(new SplittableRandom((seed << 40) + (phase << 16) + tile).split());
  }

  /**
   * A whole number from 0 to {@code bound - 1}; the bias, below bound / 2^32, does not matter here.
   */
  int below(int bound) {
    return (int) ((random.nextLong() >>> 32) * bound >>> 32);
  }

  /** A number from 0 to below 1. */
  double unit() {
    return random.nextDouble();
  }

  /**
   * An exponentially distributed number with mean 1: Metropolis' threshold over the temperature.
   */
  double exponential() {
    return MINUS_LOG[(int) (random.nextLong() >>> 53)];
  }

  /** Whether a loss is taken: Metropolis' rule. */
  boolean accept(long loss, double temperature) {
    return loss <= 0 || loss <= temperature * exponential();
  }
}
