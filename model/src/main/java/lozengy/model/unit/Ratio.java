package lozengy.model.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An exact quotient of two decimal numbers, such as grams x metres per ball / grams per ball.
 * Nothing is rounded until a whole number is asked for.
 *
 * @param over what is divided
 * @param under what it is divided by, above 0
 */
public record Ratio(BigDecimal over, BigDecimal under) {

  private static final int DIGITS_OF_LONG = 19;

  /**
   * Checks the sign.
   *
   * @param over what is divided
   * @param under what it is divided by, above 0
   * @throws IllegalArgumentException if that is not above 0
   */
  public Ratio {
    if (under.signum() <= 0) {
      throw new IllegalArgumentException("not above 0: " + under);
    }
  }

  /**
   * {@return a number as a ratio}
   *
   * @param number the number
   */
  public static Ratio of(BigDecimal number) {
    return new Ratio(number, BigDecimal.ONE);
  }

  /**
   * {@return the sum of this and another}
   *
   * @param other the other
   */
  public Ratio plus(Ratio other) {
    return new Ratio(
        over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
  }

  /**
   * {@return this so many times}
   *
   * @param factor the factor
   */
  public Ratio times(BigDecimal factor) {
    return new Ratio(over.multiply(factor), under);
  }

  /**
   * {@return this divided by a number}
   *
   * @param number the number, above 0
   * @throws IllegalArgumentException if it is not above 0
   */
  public Ratio dividedBy(BigDecimal number) {
    return new Ratio(over, under.multiply(number));
  }

  /**
   * {@return the largest whole number that is not above this}
   *
   * @throws ArithmeticException if a long does not hold it
   */
  public long down() {
    return whole(RoundingMode.FLOOR);
  }

  /**
   * {@return the smallest whole number that is not below this}
   *
   * @throws ArithmeticException if a long does not hold it
   */
  public long up() {
    return whole(RoundingMode.CEILING);
  }

  private long whole(RoundingMode rounding) {
    long digits = (long) over.precision() - over.scale() - under.precision() + under.scale();
    if (digits > DIGITS_OF_LONG) {
      // asked first, since writing out 1e999999999 in full would take all memory
      throw new ArithmeticException("more than a long holds: " + over + " / " + under);
    }
    return over.divide(under, 0, rounding).longValueExact();
  }
}
