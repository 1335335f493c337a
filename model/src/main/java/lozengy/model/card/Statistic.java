package lozengy.model.card;

/**
 * A statistic beside what chance makes of it.
 *
 * @param observed its value
 * @param expected its expectation over all shuffles
 * @param variance its variance over all shuffles, 0 or more
 */
public record Statistic(double observed, double expected, double variance) {

  /** Below this part of the squared size of its terms, a variance is rounding. */
  private static final double ROUNDING = 1e-12;

  /**
   * Takes what is below 0 by rounding as 0.
   *
   * @param observed its value
   * @param expected its expectation over all shuffles
   * @param variance its variance over all shuffles, 0 or more
   */
  public Statistic {
    double size = observed * observed + expected * expected;
    variance = variance <= ROUNDING * size ? 0 : variance;
  }

  /** {@return whether shuffles differ in it; where none does, there is nothing to tell} */
  public boolean varies() {
    return variance > 0;
  }

  /**
   * {@return how many standard deviations it lies above its expectation; 0 where nothing can vary}
   */
  public double z() {
    return variance == 0 ? 0 : (observed - expected) / Math.sqrt(variance);
  }
}
