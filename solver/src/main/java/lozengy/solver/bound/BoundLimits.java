package lozengy.solver.bound;

/**
 * How much effort to spend on a bound: the same effort proves the same bound on every machine.
 *
 * @param stages stages after the first, 0 or more; each takes about three times the one before
 */
public record BoundLimits(int stages) {

  /** A few milliseconds for a throw of 143 pieces. */
  public static final BoundLimits QUICK = new BoundLimits(0);

  /** Up to about a second. */
  public static final BoundLimits THOROUGH = new BoundLimits(3);

  /**
   * Checks the range.
   *
   * @param stages stages after the first, 0 or more; each takes about three times the one before
   * @throws IllegalArgumentException if negative
   */
  public BoundLimits {
    if (stages < 0) {
      throw new IllegalArgumentException("stages must be 0 or more: " + stages);
    }
  }
}
