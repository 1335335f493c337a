package lozengy.model.brief;

import java.math.BigDecimal;
import lozengy.model.unit.Units;

/** Turns numbers in the units of files into amounts. */
final class Amounts {

  private Amounts() {}

  /** A length of cloth in cm, from cm or in. */
  static double cm(BigDecimal number, String unit) {
    return switch (unit) {
      case "cm" -> number.doubleValue();
      case "in" -> Units.cmOfInches(number).doubleValue();
      default -> throw new IllegalArgumentException("no such unit: " + unit);
    };
  }

  /** An amount of yarn, from m, yd, g or oz or their full words. */
  static YarnAmount of(BigDecimal number, String unit) {
    return switch (unit) {
      case "m", "metres" -> new YarnAmount.Length(Units.millimetresOfMetres(number));
      case "yd", "yards" -> new YarnAmount.Length(Units.millimetresOfYards(number));
      case "g", "grams" -> new YarnAmount.Weight(Units.milligramsOfGrams(number));
      case "oz", "ounces" -> new YarnAmount.Weight(Units.milligramsOfOunces(number));
      default -> throw new IllegalArgumentException("no such unit: " + unit);
    };
  }
}
