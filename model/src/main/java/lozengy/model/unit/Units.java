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

  private static final BigDecimal THOUSAND = new BigDecimal(1000);
  private static final int DIGITS_OF_LONG = 19;

  private Units() {}

  /**
   * {@return whole millimetres of a length in m, halves up}
   *
   * @param metres the length in m
   * @throws ArithmeticException if there are more than a long holds
   */
  public static long millimetresOfMetres(BigDecimal metres) {
    return whole(metres.multiply(THOUSAND));
  }

  /**
   * {@return whole millimetres of a length in yd, halves up}
   *
   * @param yards the length in yd
   * @throws ArithmeticException if there are more than a long holds
   */
  public static long millimetresOfYards(BigDecimal yards) {
    return millimetresOfMetres(yards.multiply(METRES_PER_YARD));
  }

  /**
   * {@return whole milligrams of a weight in g, halves up}
   *
   * @param grams the weight in g
   * @throws ArithmeticException if there are more than a long holds
   */
  public static long milligramsOfGrams(BigDecimal grams) {
    return whole(grams.multiply(THOUSAND));
  }

  /**
   * {@return whole milligrams of a weight in oz, halves up}
   *
   * @param ounces the weight in oz
   * @throws ArithmeticException if there are more than a long holds
   */
  public static long milligramsOfOunces(BigDecimal ounces) {
    return milligramsOfGrams(ounces.multiply(GRAMS_PER_OUNCE));
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
   * {@return yards of a length in m}
   *
   * @param metres the length in m
   */
  public static double yardsOfMetres(double metres) {
    return metres / 0.9144;
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

  private static long whole(BigDecimal value) {
    long digitsBeforePoint = (long) value.precision() - value.scale();
    if (digitsBeforePoint < 0) {
      return 0;
    }
    if (digitsBeforePoint > DIGITS_OF_LONG) {
      // asked first, since writing out 1e999999999 in full would take all memory
      throw new ArithmeticException("more than a long holds: " + value);
    }
    return value.setScale(0, RoundingMode.HALF_UP).longValueExact();
  }
}
