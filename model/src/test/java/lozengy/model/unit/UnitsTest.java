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
    assertAlike("914.4", Units.millimetresOfYards(BigDecimal.ONE));
    assertAlike("28349.523125", Units.milligramsOfOunces(BigDecimal.ONE));
    assertAlike("24380.5898875", Units.milligramsOfOunces(new BigDecimal("0.86")));
    assertAlike(
        "1.2345678901234567", Units.millimetresOfMetres(new BigDecimal(".0012345678901234567")));
    assertEquals(new BigDecimal("254.00"), Units.cmOfInches(new BigDecimal("100")));
    assertEquals(100, Units.inchesOfCm(254), 1e-12);
    assertEquals(1000, Units.yardsOfMillimetres(914_400), 1e-9);
    assertEquals(16, Units.ouncesOfGrams(453.59237), 1e-12, "a pound");
  }

  @Test
  void centimetresInWordsKeepAMillimetre() {
    assertEquals("14.1 cm", Units.cmInWords(14.142));
    assertEquals("10 cm", Units.cmInWords(10.04));
    assertEquals("100 cm", Units.cmInWords(99.96));
  }

  @Test
  void whatNoFileHoldsGoes() {
    assertAlike("0", Units.millimetresOfMetres(new BigDecimal("1e-999999999")));
    assertAlike(
        "333.33333333333333333",
        Units.milligramsOfGrams(new BigDecimal("0.333333333333333333333333")));
    assertAlike("1e-17", Units.millimetresOfMetres(new BigDecimal("9e-21")));
    assertAlike("0", Units.millimetresOfMetres(new BigDecimal("4e-21")));
  }

  private static void assertAlike(String expected, BigDecimal number) {
    assertEquals(0, new BigDecimal(expected).compareTo(number), number.toString());
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
    "1e9, 393700787 1/2 in",
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
