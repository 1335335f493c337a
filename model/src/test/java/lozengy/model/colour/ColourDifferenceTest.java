package lozengy.model.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ColourDifferenceTest {

  /** Half of the last printed decimal, and a little for its rounding. */
  private static final double PRINTED = 0.00005001;

  @ParameterizedTest
  @CsvFileSource(resources = "ciede2000.csv", useHeadersInDisplayName = true)
  void agreesWithThePublishedPairs(
      int pair, double l1, double a1, double b1, double l2, double a2, double b2, double wanted) {
    Lab first = new Lab(l1, a1, b1);
    Lab second = new Lab(l2, a2, b2);
    assertEquals(wanted, ColourDifference.ciede2000(first, second), PRINTED, "pair " + pair);
    assertEquals(wanted, ColourDifference.ciede2000(second, first), PRINTED, "swapped " + pair);
  }

  @Test
  void hueTieDoesNotDependOnRounding() {
    // half a circle apart, and a hair to either side of it
    Lab first = new Lab(50, -1, 2);
    double tie = ColourDifference.ciede2000(first, new Lab(50, 1, -2));
    assertEquals(tie, ColourDifference.ciede2000(first, new Lab(50, 1 + 1e-13, -2)), 1e-9);
    assertEquals(tie, ColourDifference.ciede2000(first, new Lab(50, 1 - 1e-13, -2)), 1e-9);
  }

  @Property(seed = "1")
  void isSymmetricAndZeroOnlyForEqualColours(
      @ForAll @IntRange(max = 0xffffff) int rgb, @ForAll @IntRange(max = 0xffffff) int other) {
    Lab first = lab(rgb);
    Lab second = lab(other);
    double difference = ColourDifference.ciede2000(first, second);
    assertEquals(difference, ColourDifference.ciede2000(second, first), 1e-9);
    assertEquals(0, ColourDifference.ciede2000(first, first));
    assertEquals(rgb == other, difference == 0);
  }

  private static Lab lab(int rgb) {
    return LabColours.of(new Srgb(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
  }
}
