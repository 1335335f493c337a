package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Optional;
import lozengy.model.input.Nulls;
import lozengy.model.unit.Ratio;

/** An amount of yarn, by length or by weight. */
public sealed interface YarnAmount extends RoundYarn {

  /**
   * A length.
   *
   * @param millimetres millimetres, 0 or more; equal numbers are held alike
   */
  record Length(BigDecimal millimetres) implements YarnAmount {
    /**
     * Checks the sign.
     *
     * @param millimetres millimetres, 0 or more
     * @throws IllegalArgumentException if negative
     */
    public Length {
      Nulls.refuse("millimetres", millimetres);
      if (millimetres.signum() < 0) {
        throw new IllegalArgumentException("negative length: " + millimetres + " mm");
      }
      millimetres = millimetres.stripTrailingZeros();
    }

    /**
     * A length in whole millimetres.
     *
     * @param millimetres millimetres, 0 or more
     * @throws IllegalArgumentException if negative
     */
    public Length(long millimetres) {
      this(BigDecimal.valueOf(millimetres));
    }
  }

  /**
   * A weight, which is a length only through a yarn's put-up.
   *
   * @param milligrams milligrams, 0 or more; equal numbers are held alike
   */
  record Weight(BigDecimal milligrams) implements YarnAmount {
    /**
     * Checks the sign.
     *
     * @param milligrams milligrams, 0 or more
     * @throws IllegalArgumentException if negative
     */
    public Weight {
      Nulls.refuse("milligrams", milligrams);
      if (milligrams.signum() < 0) {
        throw new IllegalArgumentException("negative weight: " + milligrams + " mg");
      }
      milligrams = milligrams.stripTrailingZeros();
    }

    /**
     * A weight in whole milligrams.
     *
     * @param milligrams milligrams, 0 or more
     * @throws IllegalArgumentException if negative
     */
    public Weight(long milligrams) {
      this(BigDecimal.valueOf(milligrams));
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
   * grams per ball, exactly.
   *
   * @param ball the put-up; may be null for a length
   * @return its length in mm
   * @throws IllegalArgumentException if this is a weight and there is no put-up
   */
  default Ratio millimetresIn(Ball ball) {
    if (this instanceof Length length) {
      return Ratio.of(length.millimetres());
    }
    if (ball == null) {
      throw new IllegalArgumentException("a weight is a length only through a ball's put-up");
    }
    BigDecimal grams = ((Weight) this).milligrams().movePointLeft(3);
    return Ratio.of(grams.multiply(ball.millimetres())).dividedBy(ball.grams());
  }
}
