package lozengy.model.yarn;

import java.util.OptionalLong;

/**
 * What must be bought so that a yarn, or one of several, lasts.
 *
 * @param missingMillimetres length in mm to be bought, above 0, kept-back part included
 * @param balls whole balls that hold it; empty where no put-up is stated
 */
public record Purchase(long missingMillimetres, OptionalLong balls) {

  /**
   * The purchase that makes up for too little.
   *
   * @param shortMillimetres length in mm that is wanted beyond what may be used, above 0
   * @param keepBackPercent part of every stock that stays untouched, 0 or more and below 100
   * @param ballMillimetres length of a ball in mm, where stated
   */
  static Purchase of(long shortMillimetres, double keepBackPercent, OptionalLong ballMillimetres) {
    long missing = (long) Math.ceil(shortMillimetres * 100.0 / (100 - keepBackPercent) - 1e-6);
    OptionalLong balls =
        ballMillimetres.isPresent()
            ? OptionalLong.of(balls(missing, ballMillimetres.getAsLong()))
            : OptionalLong.empty();
    return new Purchase(missing, balls);
  }

  /** Whole balls that hold a length. */
  static long balls(long millimetres, long ballMillimetres) {
    return Math.floorDiv(millimetres + ballMillimetres - 1, ballMillimetres);
  }
}
