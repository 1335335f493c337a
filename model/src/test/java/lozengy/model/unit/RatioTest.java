package lozengy.model.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RatioTest {

  @Test
  void thirdsAddUpToAWhole() {
    Ratio third = Ratio.of(BigDecimal.ONE).dividedBy(new BigDecimal(3));
    assertEquals(0, third.down());
    assertEquals(1, third.up());
    Ratio whole = third.plus(third).plus(third);
    assertEquals(1, whole.down());
    assertEquals(1, whole.up());
    assertEquals(100, third.times(new BigDecimal(300)).down());
  }

  /** Against plain integers: a/b + c/d times e is (ad + cb) e / (bd). */
  @Test
  void agreesWithIntegerArithmetic() {
    SplittableRandom random = new SplittableRandom(1);
    for (int trial = 0; trial < 1000; trial++) {
      long a = random.nextLong(1_000_000);
      long b = 1 + random.nextLong(1000);
      long c = random.nextLong(1_000_000);
      long d = 1 + random.nextLong(1000);
      long e = random.nextLong(100);
      Ratio ratio = ratio(a, b).plus(ratio(c, d)).times(BigDecimal.valueOf(e));
      BigInteger over = BigInteger.valueOf((a * d + c * b) * e);
      BigInteger[] whole = over.divideAndRemainder(BigInteger.valueOf(b * d));
      assertEquals(whole[0].longValueExact(), ratio.down());
      assertEquals(whole[0].longValueExact() + whole[1].signum(), ratio.up());
    }
  }

  private static Ratio ratio(long over, long under) {
    return new Ratio(BigDecimal.valueOf(over), BigDecimal.valueOf(under));
  }

  @Test
  void refusesWhatNoLongHoldsAtOnce() {
    Ratio huge = Ratio.of(new BigDecimal("1e999999999"));
    assertThrows(ArithmeticException.class, huge::up);
    Ratio beyond = Ratio.of(new BigDecimal("9223372036854775807.5"));
    assertThrows(ArithmeticException.class, beyond::up);
    assertEquals(Long.MAX_VALUE, beyond.down());
    assertThrows(IllegalArgumentException.class, () -> huge.dividedBy(BigDecimal.ZERO));
  }

  @Test
  void whatALongHoldsIsNotRefusedForTheSizeOfItsParts() {
    Ratio ninth = new Ratio(new BigDecimal("10000000000000000000"), new BigDecimal(9));
    assertEquals(1_111_111_111_111_111_111L, ninth.down());
    assertEquals(3, new Ratio(new BigDecimal("3e30"), new BigDecimal("1e30")).down());
    assertEquals(3, new Ratio(new BigDecimal("3e-30"), new BigDecimal("1e-30")).up());
  }
}
