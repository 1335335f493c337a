package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.colour.Srgb;
import lozengy.model.layout.LayoutSize;
import lozengy.report.Colours;
import lozengy.report.Samples;
import lozengy.report.Screen;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TerminalPictureTest {

  private static final Screen WIDE = new Screen(Colours.ALL, 80);
  private static final String RESET = "\u001b[0m";

  private static String plain(String line) {
    return line.replaceAll("\u001b\\[[0-9;]*m", "");
  }

  @Test
  void withoutColoursThereIsNone() {
    assertEquals("", TerminalPicture.text(Samples.saltmarshThrow(), Screen.PLAIN));
  }

  @ParameterizedTest
  @MethodSource("lozengy.report.chart.DrawingTest#sizes")
  void isSmallAndAllOfAWidth(LayoutSize size) {
    Arrangement arrangement =
        Samples.filled(Samples.brief("Small", size, Samples.yarns(), List.of()), 2);
    List<String> lines = TerminalPicture.text(arrangement, WIDE).lines().toList();
    assertTrue(lines.size() <= 36, lines.size() + " lines");
    assertTrue(lines.stream().allMatch(line -> line.endsWith(RESET)));
    Set<Integer> widths =
        lines.stream().map(line -> plain(line).length()).collect(Collectors.toSet());
    assertEquals(1, widths.size(), widths.toString());
    assertTrue(widths.iterator().next() <= 72);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 11, 40, 47})
  void isNoWiderThanTheTerminal(int columns) {
    Screen narrow = new Screen(Colours.ALL, columns);
    List<String> lines = TerminalPicture.text(Samples.saltmarshThrow(), narrow).lines().toList();
    assertTrue(!lines.isEmpty());
    lines.forEach(line -> assertTrue(plain(line).length() <= columns, plain(line)));
  }

  @Test
  void colourIsThatOfTheYarns() {
    Arrangement arrangement = Samples.saltmarshThrow();
    Set<String> yarns = new TreeSet<>();
    arrangement.blanket().brief().yarns().forEach(yarn -> yarns.add(yarn.colour().hex()));
    Set<String> shown = new TreeSet<>();
    Matcher colour =
        Pattern.compile("[34]8;2;([0-9]+);([0-9]+);([0-9]+)")
            .matcher(TerminalPicture.text(arrangement, WIDE));
    while (colour.find()) {
      shown.add(
          new Srgb(
                  Integer.parseInt(colour.group(1)),
                  Integer.parseInt(colour.group(2)),
                  Integer.parseInt(colour.group(3)))
              .hex());
    }
    assertEquals(yarns, shown);
    // The middle of the square in the middle of the first row of squares.
    int centre = arrangement.blanket().layout().find("r1c3").orElseThrow().index();
    String hex = arrangement.blanket().yarn(arrangement.sequences().yarn(centre, 0)).colour().hex();
    Srgb expected = Srgb.parse(hex);
    String code = "38;2;" + expected.red() + ";" + expected.green() + ";" + expected.blue() + ";48";
    String line = TerminalPicture.text(arrangement, WIDE).lines().toList().get(1);
    assertTrue(line.contains(code), line);
  }

  @ParameterizedTest
  @CsvSource({"#000000, 16", "#ffffff, 231", "#5f8700, 64", "#808080, 244", "#d7005f, 161"})
  void paletteHasTheNearestColour(String hex, int number) {
    assertEquals(number, Palette.nearest(Srgb.parse(hex)));
  }
}
