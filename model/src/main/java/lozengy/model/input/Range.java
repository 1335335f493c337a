package lozengy.model.input;

import java.math.BigDecimal;

/**
 * The numbers that a field may hold.
 *
 * @param least smallest number
 * @param leastAllowed whether the smallest is itself allowed
 * @param most largest number, allowed
 * @param whole whether only whole numbers are allowed
 * @param unit what is counted or measured, such as {@code metres}; may be empty
 */
public record Range(
    BigDecimal least, boolean leastAllowed, BigDecimal most, boolean whole, String unit) {

  /**
   * Numbers from {@code least} on.
   *
   * @param least smallest number, allowed
   * @param most largest number, allowed
   * @param unit what is counted or measured, such as {@code metres}; may be empty
   * @return the range
   */
  public static Range of(long least, long most, String unit) {
    return of(Long.toString(least), most, unit);
  }

  /**
   * The same from a decimal fraction on.
   *
   * @param least smallest number, allowed
   * @param most largest number, allowed
   * @param unit what is counted or measured, such as {@code metres}; may be empty
   * @return the range
   */
  public static Range of(String least, long most, String unit) {
    return new Range(new BigDecimal(least), true, BigDecimal.valueOf(most), false, unit);
  }

  /**
   * Whole numbers from {@code least} on.
   *
   * @param least smallest number, allowed
   * @param most largest number, allowed
   * @param unit what is counted or measured, such as {@code metres}; may be empty
   * @return the range
   */
  public static Range whole(long least, long most, String unit) {
    return new Range(BigDecimal.valueOf(least), true, BigDecimal.valueOf(most), true, unit);
  }

  /**
   * Whether a number is in the range.
   *
   * @param number the number
   * @return whether it is
   */
  public boolean holds(BigDecimal number) {
    int toLeast = number.compareTo(least);
    return (leastAllowed ? toLeast >= 0 : toLeast > 0)
        && number.compareTo(most) <= 0
        && (!whole || number.stripTrailingZeros().scale() <= 0);
  }

  /**
   * {@return that a number is out of the range}
   *
   * @param number the number as written
   */
  public Mistake.Sort missed(String number) {
    return leastAllowed
        ? MistakeCode.OUT_OF_RANGE.about(number, least.toPlainString(), most.toPlainString(), unit)
        : MistakeCode.OUT_OF_RANGE.about(
            number, "", most.toPlainString(), unit, least.toPlainString());
  }

  /** {@return the range in words, such as {@code a number of metres above 0, at most 1000}} */
  public String words() {
    return (whole ? "a whole number" : "a number")
        + (unit.isEmpty() ? "" : " of " + unit)
        + (leastAllowed ? " from " : " above ")
        + least.toPlainString()
        + (leastAllowed ? " to " : ", at most ")
        + most.toPlainString();
  }
}
