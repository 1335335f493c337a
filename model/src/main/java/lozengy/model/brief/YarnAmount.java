package lozengy.model.brief;

import java.util.Optional;

/** An amount of yarn, by length or by weight. */
public sealed interface YarnAmount {

  /**
   * A length.
   *
   * @param millimetres whole millimetres, 0 or more
   */
  record Length(long millimetres) implements YarnAmount {
    /**
     * Checks the sign.
     *
     * @param millimetres whole millimetres, 0 or more
     * @throws IllegalArgumentException if negative
     */
    public Length {
      if (millimetres < 0) {
        throw new IllegalArgumentException("negative length: " + millimetres + " mm");
      }
    }
  }

  /**
   * A weight, which is a length only through a yarn's put-up.
   *
   * @param milligrams whole milligrams, 0 or more
   */
  record Weight(long milligrams) implements YarnAmount {
    /**
     * Checks the sign.
     *
     * @param milligrams whole milligrams, 0 or more
     * @throws IllegalArgumentException if negative
     */
    public Weight {
      if (milligrams < 0) {
        throw new IllegalArgumentException("negative weight: " + milligrams + " mg");
      }
    }
  }

  /**
   * Reads an amount of loose yarn, such as {@code 85 g}: a number and m, yd, g or oz.
   *
   * @param text a number and its unit
   * @return the amount; empty if the text is none, or out of the range that a brief allows
   */
  static Optional<YarnAmount> read(String text) {
    return YarnReader.amount(text);
  }

  /**
   * The length of this amount in a yarn put up as {@code ball}: metres = grams x metres per ball /
   * grams per ball, to the nearest millimetre.
   *
   * @param ball the put-up; may be null for a length
   * @return its length in mm
   * @throws IllegalArgumentException if this is a weight and there is no put-up
   */
  default long millimetres(Ball ball) {
    if (this instanceof Length length) {
      return length.millimetres();
    }
    if (ball == null) {
      throw new IllegalArgumentException("a weight is a length only through a ball's put-up");
    }
    double grams = ((Weight) this).milligrams() / 1000.0;
    return Math.round(grams * ball.millimetres() / ball.grams());
  }
}
