package lozengy.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as files and results for programs hold them. */
public final class Decimals {

  private Decimals() {}

  /** Metres, exact: lengths are whole millimetres. */
  public static BigDecimal metres(long millimetres) {
    return BigDecimal.valueOf(millimetres, 3);
  }

  /** To six decimals, as scores are told. */
  public static BigDecimal toSix(double number) {
    return rounded(number, 6);
  }

  /** To three decimals. */
  public static BigDecimal toThree(double number) {
    return rounded(number, 3);
  }

  /** To so many decimals. */
  public static BigDecimal rounded(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
  }
}
