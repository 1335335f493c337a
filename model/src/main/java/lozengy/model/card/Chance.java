package lozengy.model.card;

/**
 * What a figure would be on average for a random shuffle.
 *
 * @param mean the expectation, or the mean of the shuffles that were drawn
 * @param standardError standard error of that mean; 0 where it is exact
 * @param shuffles how many were drawn; 0 where the expectation is exact
 */
public record Chance(double mean, double standardError, int shuffles) {

  /** An expectation in closed form. */
  static Chance exact(double mean) {
    return new Chance(mean, 0, 0);
  }

  /** {@return whether the expectation is exact} */
  public boolean exact() {
    return shuffles == 0;
  }
}
