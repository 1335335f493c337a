package lozengy.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import lozengy.model.brief.Price;
import lozengy.model.unit.Units;

/** Writes amounts of yarn and money for a person. */
public final class Amount {

  private static final int CENTS = 2;

  private Amount() {}

  /** Metres to one decimal. */
  public static String metres(long millimetres) {
    return Figures.metres(millimetres) + " m";
  }

  /** Yards to one decimal. */
  public static String yards(long millimetres) {
    return String.format(Locale.ROOT, "%.1f yd", Units.yardsOfMillimetres(millimetres));
  }

  /** Grams to one decimal. */
  public static String grams(BigDecimal grams) {
    return grams.setScale(1, RoundingMode.HALF_UP).toPlainString() + " g";
  }

  /** Ounces to two decimals. */
  public static String ounces(BigDecimal grams) {
    return String.format(Locale.ROOT, "%.2f oz", Units.ouncesOfGrams(grams.doubleValue()));
  }

  /** A sum of money with its cents at least, and all of it. */
  public static String price(Price price) {
    BigDecimal amount = price.amount();
    int decimals = Math.max(CENTS, amount.stripTrailingZeros().scale());
    return amount.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString()
        + " "
        + price.currency();
  }

  /** What several cost together; empty where one has no price, or there is none. */
  public static Optional<Price> sum(Iterable<Optional<Price>> prices) {
    Optional<Price> sum = Optional.empty();
    for (Optional<Price> each : prices) {
      if (each.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.map(before -> before.plus(each.get())).or(() -> each);
    }
    return sum;
  }
}
