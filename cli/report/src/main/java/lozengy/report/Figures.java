package lozengy.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import lozengy.model.input.Words;

/** Writes numbers for a person: the same on every machine, with a point for the decimals. */
public final class Figures {

  private Figures() {}

  /** With that many decimals; never as minus zero. */
  public static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
  }

  /** With at most that many decimals. */
  public static String shortest(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Metres to one decimal from whole millimetres. */
  public static String metres(long millimetres) {
    return fixed(millimetres / 1000.0, 1);
  }

  /** A count and its noun, {@code 1 square} or {@code 83 squares}. */
  public static String count(long count, String noun) {
    return count + " " + Words.plural(count, noun);
  }
}
