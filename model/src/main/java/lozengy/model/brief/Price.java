package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Nulls;
import lozengy.model.input.Quantity;
import lozengy.model.input.Range;
import lozengy.model.input.Words;

/**
 * A sum of money; equal sums are held alike.
 *
 * @param amount how much, 0 or more
 * @param currency its code of three capital letters, in the manner of ISO 4217
 */
public record Price(BigDecimal amount, String currency) {

  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");
  private static final Range AMOUNT = Range.of(0, 100_000, "");
  private static final int MOST_DECIMALS = 4;
  private static final String REMEDY =
      "Give what a ball costs and the currency's three letters, such as 6.50 EUR";

  /**
   * Checks the parts.
   *
   * @param amount how much, 0 or more
   * @param currency its code of three capital letters
   * @throws IllegalArgumentException if the amount is negative or the currency is no such code
   */
  public Price {
    Nulls.refuse("amount currency", amount, currency);
    if (amount.signum() < 0 || !CURRENCY.matcher(currency).matches()) {
      throw new IllegalArgumentException("not a price: " + amount + " " + currency);
    }
    amount = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
  }

  /**
   * {@return this so many times}
   *
   * @param times how often, 0 or more
   */
  public Price times(long times) {
    return new Price(amount.multiply(BigDecimal.valueOf(times)), currency);
  }

  /**
   * {@return this and another together}
   *
   * @param other a sum in the same currency
   * @throws IllegalArgumentException if it is in another
   */
  public Price plus(Price other) {
    if (!other.currency.equals(currency)) {
      throw new IllegalArgumentException(other.currency + " added to " + currency);
    }
    return new Price(amount.add(other.amount), currency);
  }

  static Optional<Price> read(Located located) {
    Optional<String> text = located.scalar(REMEDY);
    Optional<Quantity> quantity = text.flatMap(Quantity::parse);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (quantity.isEmpty()) {
      located.wrong(
          MistakeCode.NOT_A_QUANTITY.about(text.get()),
          located.shown() + " is not a number with a currency",
          Quantity.pointForComma(text.get()).orElse(REMEDY));
      return Optional.empty();
    }
    BigDecimal amount = quantity.get().number();
    String currency = quantity.get().unit();
    if (currency.isEmpty()) {
      located.wrong(
          MistakeCode.NO_UNIT.about(text.get()), located.shown() + " has no currency", REMEDY);
    } else if (!CURRENCY.matcher(currency).matches()) {
      located.wrong(
          MistakeCode.MALFORMED.about(currency),
          Words.quoted(currency) + " is not a currency's code",
          REMEDY);
    } else if (!AMOUNT.holds(amount) || amount.stripTrailingZeros().scale() > MOST_DECIMALS) {
      located.wrong(
          AMOUNT.missed(text.get()),
          located.shown() + " is out of range",
          "Give 0 to 100000 with at most four decimals, such as 6.50 EUR");
    } else {
      return Optional.of(new Price(amount, currency));
    }
    return Optional.empty();
  }
}
