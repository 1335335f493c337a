package lozengy.model.input;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, such as {@code 10 cm}, {@code 3 1/2 in} or {@code 5 %}.
 *
 * @param number the number
 * @param unit the unit as written; empty where there is none
 */
public record Quantity(BigDecimal number, String unit) {

  /** Long enough for any double; short enough that no number can blow up. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,20}(\\.\\d{0,20})?|\\.\\d{1,20})([eE][+-]?\\d{1,3})?");

  private static final Pattern FRACTION =
      Pattern.compile("(?:(\\d{1,9})[ -])?(\\d{1,9})/(\\d{1,9})");
  private static final Pattern COMMA = Pattern.compile("(.*\\d),(\\d.*)", Pattern.DOTALL);
  private static final Pattern QUANTITY =
      Pattern.compile("([-+.\\d](?:[-+./ \\d]*[\\d.])?(?:[eE][-+]?\\d+)?)\\s*([^\\d\\s][^\\d]*)?");

  /**
   * Reads a number with or without a unit; empty if the text is none.
   *
   * @param text a number, with or without a unit
   * @return the number and its unit; empty if the text is none
   */
  public static Optional<Quantity> parse(String text) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String unit = matcher.group(2) == null ? "" : matcher.group(2).strip();
    String written = matcher.group(1);
    Matcher fraction = FRACTION.matcher(written);
    Optional<BigDecimal> number = fraction.matches() ? value(fraction) : number(written);
    return number.map(value -> new Quantity(value, unit));
  }

  /**
   * Reads a number without a unit, such as {@code 2.5} or {@code 2 1/2}; empty if the text is none.
   *
   * @param text a number
   * @return the number; empty if the text is none
   */
  public static Optional<BigDecimal> bare(String text) {
    return parse(text).filter(quantity -> quantity.unit().isEmpty()).map(Quantity::number);
  }

  /**
   * What would be right for a number whose decimals are written with a comma.
   *
   * @param text what is no number
   * @return that it is to be written with a point; empty if a comma is not what is wrong with it
   */
  public static Optional<String> pointForComma(String text) {
    Matcher matcher = COMMA.matcher(text.strip());
    return Optional.of(matcher)
        .filter(Matcher::matches)
        .map(each -> each.group(1) + "." + each.group(2))
        .filter(pointed -> parse(pointed).isPresent())
        .map(pointed -> "Write decimals with a point: " + pointed);
  }

  /** Reads a plain number; empty if the text is none. */
  static Optional<BigDecimal> number(String text) {
    return NUMBER.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  private static Optional<BigDecimal> value(Matcher fraction) {
    BigDecimal whole =
        fraction.group(1) == null ? BigDecimal.ZERO : new BigDecimal(fraction.group(1));
    BigDecimal part = new BigDecimal(fraction.group(2));
    BigDecimal of = new BigDecimal(fraction.group(3));
    return of.signum() == 0
        ? Optional.empty()
        : Optional.of(whole.add(part.divide(of, MathContext.DECIMAL128)));
  }
}
