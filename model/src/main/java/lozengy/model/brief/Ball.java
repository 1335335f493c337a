package lozengy.model.brief;

import java.math.BigDecimal;
import java.math.MathContext;
import lozengy.model.input.Nulls;

/**
 * A yarn's put-up; equal numbers are held alike.
 *
 * @param grams weight of a ball in g, above 0
 * @param millimetres length of yarn on a ball in mm, above 0
 */
public record Ball(BigDecimal grams, BigDecimal millimetres) {

  /**
   * Checks the range.
   *
   * @param grams weight of a ball in g, above 0
   * @param millimetres length of yarn on a ball in mm, above 0
   * @throws IllegalArgumentException if a number is not above 0
   */
  public Ball {
    Nulls.refuse("grams millimetres", grams, millimetres);
    if (grams.signum() <= 0 || millimetres.signum() <= 0) {
      throw new IllegalArgumentException("a ball's grams and metres must be above 0");
    }
    grams = grams.stripTrailingZeros();
    millimetres = millimetres.stripTrailingZeros();
  }

  /**
   * A put-up in whole millimetres.
   *
   * @param grams weight of a ball in g, above 0
   * @param millimetres length of yarn on a ball in mm, above 0
   * @throws IllegalArgumentException if a number is not above 0
   * @throws NumberFormatException if the weight is not finite
   */
  public Ball(double grams, long millimetres) {
    this(BigDecimal.valueOf(grams), BigDecimal.valueOf(millimetres));
  }

  /**
   * {@return the weight in g of a length: grams per ball x length / length per ball, to 16 digits}
   *
   * @param length the length in mm
   */
  public BigDecimal gramsOf(long length) {
    return grams.multiply(BigDecimal.valueOf(length)).divide(millimetres, MathContext.DECIMAL64);
  }
}
