package lozengy.solver.bound;

/**
 * A range of leeway that is bounded on its own, with the multipliers found for it so far.
 *
 * @param low least leeway, 0 to 1
 * @param high most leeway
 * @param multipliers of its program's rows; empty at first
 * @param bound what is proved of it
 * @param likely where the leeway of the best arrangements may lie; a hint
 * @param counts by layer and kind of piece, how often each yarn may show; a hint
 */
record LeewayRange(
    double low,
    double high,
    double[] multipliers,
    double bound,
    double likely,
    double[][][] counts) {

  /** Narrower ranges prove little more. */
  private static final double NARROW = 0.02;

  /** All up to a cap, before anything is proved. */
  static LeewayRange upTo(double cap) {
    return new LeewayRange(0, cap, new double[0], Double.POSITIVE_INFINITY, cap, new double[0][][]);
  }

  /**
   * Whether it is proved that no valid arrangement whose spread is above 0 has a leeway in it: no
   * total is below 0, but the program's spread goes on falling where the score's stops.
   */
  boolean empty() {
    return bound < 0;
  }

  /** Whether to split it where its leeway may lie. */
  boolean worthSplitting() {
    return likely - low > NARROW && high - likely > NARROW / 4;
  }

  /** What of the range is at most this. */
  LeewayRange below(double leeway) {
    return new LeewayRange(low, leeway, multipliers, bound, Math.min(likely, leeway), counts);
  }

  /** What of the range is at least this. */
  LeewayRange above(double leeway) {
    return new LeewayRange(leeway, high, multipliers, bound, Math.max(likely, leeway), counts);
  }
}
