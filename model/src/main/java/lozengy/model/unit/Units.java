package lozengy.model.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Conversions between metric and other units. The factors are exact by definition (international
 * yard and pound agreement of 1959; from memory).
 */
public final class Units {

  /** Metres in a yard. */
  public static final BigDecimal METRES_PER_YARD = new BigDecimal("0.9144");

  /** Centimetres in an inch. */
  public static final BigDecimal CM_PER_INCH = new BigDecimal("2.54");

  /** Grams in an ounce. */
  public static final BigDecimal GRAMS_PER_OUNCE = new BigDecimal("28.349523125");

  /** So many decimals of a metre or a gram a file can hold. */
  private static final int DECIMALS = 20;

  private Units() {}

  /**
   * {@return a length in m as millimetres}
   *
   * @param metres the length in m
   */
  public static BigDecimal millimetresOfMetres(BigDecimal metres) {
    return thousand(metres);
  }

  /**
   * {@return a length in yd as millimetres}
   *
   * @param yards the length in yd
   */
  public static BigDecimal millimetresOfYards(BigDecimal yards) {
    return thousand(yards.multiply(METRES_PER_YARD));
  }

  /**
   * {@return yards of a length in mm}
   *
   * @param millimetres the length in mm
   */
  public static double yardsOfMillimetres(long millimetres) {
    return millimetres / METRES_PER_YARD.doubleValue() / 1000;
  }

  /**
   * {@return ounces of a weight in g}
   *
   * @param grams the weight in g
   */
  public static double ouncesOfGrams(double grams) {
    return grams / GRAMS_PER_OUNCE.doubleValue();
  }

  /**
   * {@return a weight in g as milligrams}
   *
   * @param grams the weight in g
   */
  public static BigDecimal milligramsOfGrams(BigDecimal grams) {
    return thousand(grams);
  }

  /**
   * {@return a weight in oz as milligrams}
   *
   * @param ounces the weight in oz
   */
  public static BigDecimal milligramsOfOunces(BigDecimal ounces) {
    return thousand(ounces.multiply(GRAMS_PER_OUNCE));
  }

  /**
   * {@return centimetres of a length in in}
   *
   * @param inches the length in in
   */
  public static BigDecimal cmOfInches(BigDecimal inches) {
    return inches.multiply(CM_PER_INCH);
  }

  /**
   * {@return inches of a length in cm}
   *
   * @param cm the length in cm
   */
  public static double inchesOfCm(double cm) {
    return cm / 2.54;
  }

  /**
   * {@return a length in words, to the nearest millimetre: {@code 14.1 cm}, {@code 10 cm}}
   *
   * @param cm the length in cm
   */
  public static String cmInWords(double cm) {
    return BigDecimal.valueOf(Math.round(cm * 10), 1).stripTrailingZeros().toPlainString() + " cm";
  }

  /**
   * {@return a length in words, to the nearest quarter inch, halves up: 9 cm is {@code 3 1/2 in}}
   *
   * @param cm length in cm, 0 to 1e9
   * @throws IllegalArgumentException if the length is out of its range
   */
  public static String quarterInches(double cm) {
    if (!(cm >= 0 && cm <= 1e9)) {
      throw new IllegalArgumentException("a length must be 0 to 1e9 cm: " + cm);
    }
    long quarters = Math.round(inchesOfCm(cm) * 4);
    long whole = quarters / 4;
    String part = new String[] {"", "1/4", "1/2", "3/4"}[(int) (quarters % 4)];
    if (part.isEmpty()) {
      return whole + " in";
    }
    return (whole == 0 ? "" : whole + " ") + part + " in";
  }

  /** A thousand times a number that files can hold; what lies beyond their decimals goes. */
  private static BigDecimal thousand(BigDecimal number) {
    if ((long) number.precision() - number.scale() < -DECIMALS) {
      // asked first, since writing out 1e-999999999 in full would take all memory
      return BigDecimal.ZERO;
    }
    return number
        .setScale(Math.min(number.scale(), DECIMALS), RoundingMode.HALF_EVEN)
        .movePointRight(3);
  }
}
