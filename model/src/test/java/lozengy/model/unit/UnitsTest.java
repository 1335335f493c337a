package lozengy.model.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitsTest {

  @Test
  void yardsInchesAndOuncesAreExact() {
    assertEquals(914_400_000, Units.millimetresOfYards(new BigDecimal("1e6")));
    assertEquals(28_349_523_125L, Units.milligramsOfOunces(new BigDecimal("1e6")));
    assertEquals(new BigDecimal("254.00"), Units.cmOfInches(new BigDecimal("100")));
    assertEquals(100, Units.inchesOfCm(254), 1e-12);
    assertEquals(1000, Units.yardsOfMetres(914.4), 1e-12);
  }

  @Test
  void halvesRoundUp() {
    assertEquals(2, Units.millimetresOfMetres(new BigDecimal("0.0015")));
    assertEquals(1, Units.milligramsOfGrams(new BigDecimal("0.0014999")));
    assertEquals(1, Units.milligramsOfGrams(new BigDecimal("0.0005")));
    assertEquals(0, Units.milligramsOfGrams(new BigDecimal("0.00049999")));
  }

  @Test
  void hugeAndTinyNumbersCostNothing() {
    assertEquals(0, Units.millimetresOfMetres(new BigDecimal("1e-999999999")));
    BigDecimal huge = new BigDecimal("1e999999999");
    assertThrows(ArithmeticException.class, () -> Units.millimetresOfMetres(huge));
    BigDecimal beyondLong = new BigDecimal("9223372036854775.808");
    assertThrows(ArithmeticException.class, () -> Units.milligramsOfGrams(beyondLong));
  }

  /** The first two: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "9, 3 1/2 in",
    "12, 4 3/4 in",
    "2.54, 1 in",
    "0.6, 1/4 in",
    "0, 0 in",
    "25.3, 10 in",
  })
  void quarterInchesInWords(double cm, String words) {
    assertEquals(words, Units.quarterInches(cm));
  }

  @Test
  void refusesWhatIsNoLength() {
    assertThrows(IllegalArgumentException.class, () -> Units.quarterInches(-1));
    assertThrows(IllegalArgumentException.class, () -> Units.quarterInches(Double.NaN));
  }
}
