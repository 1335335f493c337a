package lozengy.model.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LabColoursTest {

  @ParameterizedTest
  @CsvFileSource(resources = "srgb.csv", useHeadersInDisplayName = true)
  void agreesWithPublishedValues(
      String id,
      double red,
      double green,
      double blue,
      String space,
      double first,
      double second,
      double third,
      double tolerance) {
    double[] found =
        switch (space) {
          case "Lab" -> array(lab(red, green, blue));
          case "XYZ" -> LabColours.xyz(red, green, blue);
          case "linear" ->
              new double[] {
                LabColours.linear(red), LabColours.linear(green), LabColours.linear(blue)
              };
          default -> throw new IllegalArgumentException(space);
        };
    assertArrayEquals(new double[] {first, second, third}, found, tolerance, id);
  }

  @Property(seed = "1")
  void greysHaveNoHueAndKeepTheirOrder(@ForAll @IntRange(min = 1, max = 255) int level) {
    Lab grey = LabColours.of(new Srgb(level, level, level));
    assertEquals(0, grey.a(), 1e-12);
    assertEquals(0, grey.b(), 1e-12);
    Lab darker = LabColours.of(new Srgb(level - 1, level - 1, level - 1));
    assertEquals(1, Math.signum(grey.lightness() - darker.lightness()));
  }

  /** Through eight bits a channel where the row has them, as briefs do. */
  private static Lab lab(double red, double green, double blue) {
    int r = (int) Math.round(red * 255);
    int g = (int) Math.round(green * 255);
    int b = (int) Math.round(blue * 255);
    boolean eightBits =
        Math.abs(r / 255.0 - red) + Math.abs(g / 255.0 - green) + Math.abs(b / 255.0 - blue) < 1e-9;
    return eightBits ? LabColours.of(new Srgb(r, g, b)) : LabColours.of(red, green, blue);
  }

  private static double[] array(Lab lab) {
    return new double[] {lab.lightness(), lab.a(), lab.b()};
  }
}
