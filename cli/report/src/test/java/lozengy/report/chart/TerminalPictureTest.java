package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.colour.Srgb;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.report.Colours;
import lozengy.report.Palette;
import lozengy.report.Samples;
import lozengy.report.Screen;
import lozengy.report.Summary;
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
    assertTrue(lines.size() <= 50, lines.size() + " lines");
    assertTrue(lines.stream().allMatch(line -> line.endsWith(RESET)));
    Set<Integer> widths =
        lines.stream().map(line -> plain(line).length()).collect(Collectors.toSet());
    assertEquals(1, widths.size(), widths.toString());
    assertTrue(widths.iterator().next() <= WIDE.columns());
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

  /** Where a dot is as narrow as a round, every round of every square shows in its yarn. */
  @Test
  void everyRoundIsSampled() {
    Arrangement arrangement = Samples.saltmarshThrow();
    // 12 steps across of 5 rounds each
    List<List<String>> rows = backgrounds(arrangement, new Screen(Colours.ALL, 60));
    assertEquals(60, rows.get(0).size());
    for (Place place : arrangement.blanket().layout().places()) {
      if (place.kind() == PieceKind.SQUARE) {
        for (int round = 0; round < 5; round++) {
          int yarn = arrangement.sequences().yarn(place.index(), round);
          Srgb colour = arrangement.blanket().yarn(yarn).colour();
          String code = "2;" + colour.red() + ";" + colour.green() + ";" + colour.blue();
          // from the centre to both sides; a dot on a seam shows one of its two pieces
          int right = 5 * place.x() + round;
          int left = 5 * place.x() - 1 - round;
          List<String> below = rows.get(5 * place.y());
          List<String> above = rows.get(5 * place.y() - 1);
          List<String> shown =
              List.of(above.get(left), above.get(right), below.get(left), below.get(right));
          assertTrue(shown.contains(code), place.name() + " round " + (round + 1));
        }
      }
    }
  }

  /** The colour of every dot, row by row. */
  private static List<List<String>> backgrounds(Arrangement arrangement, Screen screen) {
    List<List<String>> rows = new ArrayList<>();
    for (String line : TerminalPicture.text(arrangement, screen).lines().toList()) {
      List<String> upper = new ArrayList<>();
      List<String> lower = new ArrayList<>();
      String front = "";
      String back = "";
      Matcher part = Pattern.compile(ESCAPE_CODE + "|.", Pattern.DOTALL).matcher(line);
      while (part.find()) {
        if (part.group().startsWith("\u001b")) {
          Matcher colour = Pattern.compile("([34])8;(2;\\d+;\\d+;\\d+)").matcher(part.group());
          while (colour.find()) {
            front = colour.group(1).equals("3") ? colour.group(2) : front;
            back = colour.group(1).equals("4") ? colour.group(2) : back;
          }
        } else {
          upper.add(front);
          lower.add(back);
        }
      }
      rows.add(upper);
      rows.add(lower);
    }
    return rows;
  }

  private static final String ESCAPE_CODE = "\u001b\\[[0-9;]*m";

  /** Where dots are wider than rounds, each is a mean: no yarn's own colour, and none lost. */
  @Test
  void dotsWiderThanRoundsShowTheMean() {
    Arrangement arrangement = Samples.saltmarshThrow();
    Set<String> yarns = new TreeSet<>();
    arrangement
        .blanket()
        .brief()
        .yarns()
        .forEach(
            yarn ->
                yarns.add(
                    "2;"
                        + yarn.colour().red()
                        + ";"
                        + yarn.colour().green()
                        + ";"
                        + yarn.colour().blue()));
    List<List<String>> rows = backgrounds(arrangement, new Screen(Colours.ALL, 24));
    assertTrue(rows.get(0).size() <= 24);
    long own = rows.stream().flatMap(List::stream).filter(yarns::contains).count();
    long all = rows.stream().mapToLong(List::size).sum();
    assertTrue(own < all / 4, own + " of " + all);
  }

  @ParameterizedTest
  @ValueSource(ints = {30, 44, 60, 72, 80, 100})
  void theSummaryIsNoWiderThanTheTerminalAndHasSwatches(int columns) {
    Arrangement arrangement = Samples.saltmarshThrow();
    String text = Summary.text(arrangement, new Screen(Colours.ALL, columns));
    List<String> lines = text.lines().toList();
    for (String line : lines) {
      // the command to copy stays whole
      assertTrue(plain(line).length() <= columns || line.contains("lozengy solve"), line);
    }
    long swatches = lines.stream().filter(line -> line.contains("\u2588\u2588")).count();
    assertEquals(arrangement.blanket().yarnCount(), swatches);
    String none = Summary.text(arrangement, new Screen(Colours.NONE, columns));
    assertTrue(!none.contains("\u001b"), "no colours where there are none");
  }
}
