package lozengy.model.score;

/**
 * What leeway takes off for one yarn. The square makes the tightest yarn count most, and what each
 * loses is its own, so that a yarn that must run low hides no other.
 */
public final class LeewayMeasure {

  /** Stock by what is ample of it: {@link Scorer#AMPLE_LEEWAY} of what is used then. */
  private static final double STOCK_BY_AMPLE = 1 + 1 / Scorer.AMPLE_LEEWAY;

  private LeewayMeasure() {}

  /**
   * {@return what a yarn loses of its share of leeway, 0 to 1: the square of its tightness, which
   * is what it lacks of an ample left-over, by that} Ample is an eleventh of the stock, 10 % of
   * what is used then.
   *
   * @param stock millimetres at hand, 0 or more
   * @param used millimetres used, 0 or more
   */
  public static double loss(long stock, double used) {
    if (used <= 0) {
      return 0;
    }
    double tightness = stock <= used ? 1 : Math.max(0, 1 - STOCK_BY_AMPLE * (stock - used) / stock);
    return tightness * tightness;
  }

  /**
   * {@return by how much a yarn is tighter for each mm more that is used, where less than ample is
   * left}
   *
   * @param stock millimetres at hand, above 0
   */
  public static double tightens(long stock) {
    return STOCK_BY_AMPLE / stock;
  }

  /**
   * {@return how much can be used before a yarn has a tightness, in mm}
   *
   * @param stock millimetres at hand, 0 or more
   * @param tightness 0 to 1
   */
  public static double used(long stock, double tightness) {
    return stock - stock * (1 - tightness) / STOCK_BY_AMPLE;
  }
}
