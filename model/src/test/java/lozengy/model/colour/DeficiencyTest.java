package lozengy.model.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class DeficiencyTest {

  @ParameterizedTest
  @CsvFileSource(resources = "colour_vision_vectors.csv", useHeadersInDisplayName = true)
  void showsColoursAsCalculatedElsewhere(
      String colour, String protan, String deutan, String tritan) {
    assertEquals(protan, seen(Deficiency.RED, colour));
    assertEquals(deutan, seen(Deficiency.GREEN, colour));
    assertEquals(tritan, seen(Deficiency.BLUE, colour));
  }

  private static String seen(Deficiency deficiency, String colour) {
    double[] linear = deficiency.seenLinear(Srgb.parse(colour));
    int[] channels = new int[3];
    for (int i = 0; i < 3; i++) {
      channels[i] = (int) Math.floor(255 * encoded(linear[i]) + 0.5);
    }
    return new Srgb(channels[0], channels[1], channels[2]).hex();
  }

  /** The transfer curve of IEC 61966-2-1. */
  private static double encoded(double linear) {
    return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
  }

  @ParameterizedTest
  @CsvFileSource(resources = "colour_vision_pairs.csv", useHeadersInDisplayName = true)
  void differencesAgree(
      String first, String second, double normal, double protan, double deutan, double tritan) {
    Srgb one = Srgb.parse(first);
    Srgb other = Srgb.parse(second);
    SeenDifferences seen = new SeenDifferences(java.util.List.of(one, other));
    assertEquals(
        normal, ColourDifference.ciede2000(LabColours.of(one), LabColours.of(other)), 0.00006);
    assertEquals(protan, seen.between(Deficiency.RED, 0, 1), 0.00006);
    assertEquals(deutan, seen.between(Deficiency.GREEN, 1, 0), 0.00006);
    assertEquals(tritan, seen.between(Deficiency.BLUE, 0, 1), 0.00006);
    double least = Math.min(protan, Math.min(deutan, tritan));
    assertEquals(least, seen.least(0, 1), 0.00006);
    assertEquals(least, seen.between(seen.worst(1, 0), 0, 1), 0.00006);
  }

  @ParameterizedTest
  @EnumSource(Deficiency.class)
  void greysStayAsTheyAre(Deficiency deficiency) {
    for (int level = 0; level < 256; level++) {
      Srgb grey = new Srgb(level, level, level);
      assertEquals(grey.hex(), seen(deficiency, grey.hex()));
    }
  }

  @Test
  void wordsName() {
    assertEquals("red-type", Deficiency.RED.word());
  }
}
