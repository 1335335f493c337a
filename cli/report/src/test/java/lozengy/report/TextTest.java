package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lozengy.model.colour.Srgb;
import lozengy.report.chart.Ink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextTest {

  @ParameterizedTest
  @CsvSource({"1.005, 1, 1.0", "-0.04, 1, 0.0", "-0.06, 1, -0.1", "1234.56, 1, 1234.6"})
  void figuresHaveFixedDecimals(double value, int decimals, String expected) {
    assertEquals(expected, Figures.fixed(value, decimals));
  }

  @ParameterizedTest
  @CsvSource({"1.5, 1.5", "2.0, 2", "-0.0001, 0", "100, 100", "0.0005, 0.001", "1e7, 10000000"})
  void numbersInFilesAreShort(double value, String expected) {
    assertEquals(expected, Figures.shortest(value, 3));
  }

  @Test
  void controlCharactersAreTakenOut() {
    assertEquals("a b ?[1m c?d", PlainText.oneLine(" a\tb\n\u001b[1m\u00a0c\u202ed\r\n"));
    assertEquals("\u00c9t\u00e9 \u6f6e", PlainText.oneLine("\u00c9t\u00e9 \u6f6e"));
  }

  @Test
  void columnsCountWideAndCombiningCharacters() {
    assertEquals(4, PlainText.columns("Reed"));
    assertEquals(4, PlainText.columns("\u6f6e\u6c34"));
    assertEquals(4, PlainText.columns("Re\u0301ed"));
  }

  @Test
  void longTextsAreCutToTheirWidth() {
    assertEquals("Reed", TextWidth.fit("Reed", 4));
    String cut = TextWidth.fit("Reed at the water's edge", 6);
    assertTrue(cut.startsWith("Reed") && cut.endsWith("\u2026"), cut);
    assertTrue(TextWidth.ems(cut) <= 6);
  }

  @Test
  void inkReadsOnEveryColour() {
    for (int red = 0; red < 256; red += 15) {
      for (int green = 0; green < 256; green += 15) {
        for (int blue = 0; blue < 256; blue += 15) {
          Srgb colour = new Srgb(red, green, blue);
          double ratio = ratio(Srgb.parse(Ink.on(colour)), colour);
          // WCAG asks 3:1 of bold text in large type; the worst grey between both inks has 4.17.
          assertTrue(ratio >= 4.1, colour.hex() + " has " + ratio);
        }
      }
    }
  }

  private static double ratio(Srgb a, Srgb b) {
    double first = luminance(a);
    double second = luminance(b);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(Srgb colour) {
    double sum = 0;
    int[] channels = {colour.red(), colour.green(), colour.blue()};
    double[] weights = {0.2126, 0.7152, 0.0722};
    for (int i = 0; i < 3; i++) {
      double value = channels[i] / 255.0;
      sum +=
          weights[i] * (value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
