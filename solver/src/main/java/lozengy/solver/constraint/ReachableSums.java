package lozengy.solver.constraint;

import java.math.BigInteger;

/** Sums that whole rounds can reach: the bounded subset sum problem, by sets of bits. */
final class ReachableSums {

  private ReachableSums() {}

  static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /**
   * The greatest sum not above a limit. O(lengths x log(counts) x limit / unit / 64) time, where
   * the unit is the greatest common divisor of the lengths.
   *
   * @param lengths lengths, 0 or more
   * @param counts how often each may be taken
   * @param limit at least 0
   * @param mostSums above so many units, the limit itself is returned, rounded down to the unit
   */
  static long most(long[] lengths, int[] counts, long limit, int mostSums) {
    long unit = 0;
    for (int i = 0; i < lengths.length; i++) {
      unit = counts[i] > 0 ? gcd(unit, lengths[i]) : unit;
    }
    if (unit == 0) {
      return 0;
    }
    long units = limit / unit;
    if (units >= mostSums) {
      return units * unit;
    }
    int width = (int) units + 1;
    BigInteger mask = BigInteger.ONE.shiftLeft(width).subtract(BigInteger.ONE);
    BigInteger sums = BigInteger.ONE;
    for (int i = 0; i < lengths.length; i++) {
      // takes 1, 2, 4 … and the rest at a time, which together make every count
      for (int left = counts[i], take = 1; left > 0 && lengths[i] > 0; take *= 2) {
        int now = Math.min(take, left);
        long shift = now * (lengths[i] / unit);
        left -= now;
        if (shift < width) {
          sums = sums.or(sums.shiftLeft((int) shift)).and(mask);
        }
      }
    }
    return (sums.bitLength() - 1) * unit;
  }
}
