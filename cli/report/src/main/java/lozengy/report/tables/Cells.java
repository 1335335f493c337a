package lozengy.report.tables;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Turns figures into cells. */
final class Cells {

  private static final int MILLIMETRE_DECIMALS = 3;

  private Cells() {}

  static Long whole(long number) {
    return number;
  }

  /** Exact: lengths are whole millimetres. */
  static BigDecimal metres(long millimetres) {
    return BigDecimal.valueOf(millimetres, MILLIMETRE_DECIMALS);
  }

  static BigDecimal number(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
  }
}
