package lozengy.model.brief;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The units that files use. An inch is 2.54 cm, a yard 0.9144 m, an avoirdupois ounce 28.349523125
 * g, exactly (international yard and pound agreement, 1959).
 */
final class Units {

  private static final BigDecimal CM_PER_INCH = new BigDecimal("2.54");
  private static final BigDecimal MILLIMETRES_PER_YARD = new BigDecimal("914.4");
  private static final BigDecimal GRAMS_PER_OUNCE = new BigDecimal("28.349523125");
  private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

  private Units() {}

  /** A length of cloth in cm, from cm or in. */
  static double cm(BigDecimal number, String unit) {
    return switch (unit) {
      case "cm" -> number.doubleValue();
      case "in" -> number.multiply(CM_PER_INCH).doubleValue();
      default -> throw new IllegalArgumentException("no such unit: " + unit);
    };
  }

  /** A length of yarn in whole mm, from m or yd. */
  static long millimetres(BigDecimal number, String unit) {
    return switch (unit) {
      case "m", "metres" -> whole(number.multiply(THOUSAND));
      case "yd", "yards" -> whole(number.multiply(MILLIMETRES_PER_YARD));
      default -> throw new IllegalArgumentException("no such unit: " + unit);
    };
  }

  /** A weight in g, from g or oz. */
  static BigDecimal grams(BigDecimal number, String unit) {
    return switch (unit) {
      case "g", "grams" -> number;
      case "oz", "ounces" -> number.multiply(GRAMS_PER_OUNCE);
      default -> throw new IllegalArgumentException("no such unit: " + unit);
    };
  }

  /** An amount of yarn, from m, yd, g or oz or the full words. */
  static YarnAmount amount(BigDecimal number, String unit) {
    return switch (unit) {
      case "g", "grams", "oz", "ounces" ->
          new YarnAmount.Weight(whole(grams(number, unit).multiply(THOUSAND)));
      default -> new YarnAmount.Length(millimetres(number, unit));
    };
  }

  private static long whole(BigDecimal number) {
    return number.setScale(0, RoundingMode.HALF_UP).longValueExact();
  }
}
