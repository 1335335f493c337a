package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JoinCountsTest {

  private static final int SIDE = 32;

  /** A hopkins grid's offsets (down, right) to later neighbours. */
  private static int[][] offsets(String neighbours) {
    int[][] rook = {{0, 1}, {1, 0}};
    int[][] bishop = {{1, 1}, {1, -1}};
    return switch (neighbours) {
      case "rook" -> rook;
      case "bishop" -> bishop;
      default -> new int[][] {rook[0], rook[1], bishop[0], bishop[1]};
    };
  }

  /** {@code printed}: half of the last printed decimal, and a little for its rounding. */
  @ParameterizedTest
  @CsvSource({"rook, 5.001e-6", "bishop, 5.001e-6", "queen, 5.001e-5"})
  void agreesWithThePublishedTablesOfTheHopkinsGrid(String neighbours, double printed)
      throws IOException {
    int[] colours =
        lines("hopkins32.csv").stream()
            .flatMapToInt(line -> Arrays.stream(line.split(",")).mapToInt(Integer::parseInt))
            .toArray();
    List<int[]> joins = grid(SIDE, offsets(neighbours));
    JoinCounts chance = chance(SIDE * SIDE, joins);
    int[] counts = counts(colours, 5);
    int rows = 0;
    for (String line : lines("joincount_hopkins.csv")) {
      String[] row = line.split(",");
      if (!row[0].equals(neighbours)) {
        continue;
      }
      double observed = Double.parseDouble(row[3]);
      double expected = Double.parseDouble(row[4]);
      double variance = Double.parseDouble(row[5]);
      if (row[2].equals("Jtot")) {
        // joins between different colours: all joins less those within a colour
        assertEquals(observed, joins.size() - same(joins, colours), 0);
        assertEquals(expected, chance.total() - chance.expected(counts), printed);
        assertEquals(variance, chance.variance(counts), printed);
      } else {
        int colour = Integer.parseInt(row[2].substring(0, 1));
        assertEquals(observed, within(joins, colours, colour), 0, line);
        assertEquals(expected, chance.expected(counts[colour]), printed, line);
        assertEquals(variance, chance.variance(counts[colour]), printed, line);
      }
      rows++;
    }
    assertEquals(6, rows);
  }

  /** Published to these digits: R package spdep, joincount.test and joincount.multi, COL.OLD. */
  @Test
  void agreesWithThePublishedColumbusFigures() throws IOException {
    List<String> lines = lines("columbus_oldcol.csv");
    int[] high = new int[lines.size()];
    List<int[]> joins = new ArrayList<>();
    for (int area = 0; area < high.length; area++) {
      String[] row = lines.get(area).split(",");
      high[area] = Double.parseDouble(row[1]) > 35 ? 1 : 0;
      for (String neighbour : row[2].split(" ")) {
        int other = Integer.parseInt(neighbour) - 1;
        if (area < other) {
          joins.add(new int[] {area, other});
        }
      }
    }
    JoinCounts chance = chance(high.length, joins);
    int[] counts = counts(high, 2);
    assertEquals(116, chance.total());
    assertEquals(34, within(joins, high, 0));
    assertEquals(29.59184, chance.expected(counts[0]), 5.001e-6);
    assertEquals(18.89550, chance.variance(counts[0]), 5.001e-6);
    assertEquals(54, within(joins, high, 1));
    assertEquals(27.224, chance.expected(counts[1]), 5.001e-4);
    assertEquals(17.888, chance.variance(counts[1]), 5.001e-4);
    assertEquals(59.184, chance.total() - chance.expected(counts), 5.001e-4);
    assertEquals(26.233, chance.variance(counts), 5.001e-4);
  }

  /** Observed counts from the tests of PySAL esda; expectation and variance are exact fractions. */
  @Test
  void agreesOnTheFourByFourLattice() {
    List<int[]> joins = grid(4, offsets("rook"));
    int[] halves = new int[16];
    Arrays.fill(halves, 8, 16, 1);
    JoinCounts chance = chance(16, joins);
    assertEquals(24, chance.total());
    assertEquals(10, within(joins, halves, 1));
    assertEquals(10, within(joins, halves, 0));
    assertEquals(28 / 5.0, chance.expected(8), 1e-12);
    assertEquals(608 / 325.0, chance.variance(8), 1e-12);
    assertEquals(64 / 5.0, chance.total() - chance.expected(new int[] {8, 8}), 1e-12);
    assertEquals(5216 / 975.0, chance.variance(new int[] {8, 8}), 1e-12);
  }

  @Test
  void agreesWithEveryShuffleOfAWeightedGraph() {
    int[][] joins = {{0, 1, 4}, {1, 2, 2}, {2, 3, 1}, {3, 4, 4}, {4, 0, 1}, {0, 2, 2}, {5, 6, 4}};
    int[] colours = {0, 0, 0, 1, 1, 2, 2};
    JoinCounts chance = new JoinCounts(colours.length);
    for (int[] join : joins) {
      chance.join(join[0], join[1], join[2]);
    }
    Moments ofFirst = new Moments();
    Moments ofAll = new Moments();
    Shuffles.each(
        colours,
        shuffled -> {
          double first = 0;
          double all = 0;
          for (int[] join : joins) {
            if (shuffled[join[0]] == shuffled[join[1]]) {
              all += join[2];
              first += shuffled[join[0]] == 0 ? join[2] : 0;
            }
          }
          ofFirst.add(first);
          ofAll.add(all);
        });
    assertEquals(210, ofAll.count());
    assertEquals(ofFirst.mean(), chance.expected(3), 1e-12);
    assertEquals(ofFirst.variance(), chance.variance(3), 1e-12);
    assertEquals(ofAll.mean(), chance.expected(new int[] {3, 2, 2}), 1e-12);
    assertEquals(ofAll.variance(), chance.variance(new int[] {3, 2, 2}), 1e-12);
  }

  @Test
  void knowsNoJoinsWhereThereAreTooFewPlaces() {
    assertEquals(0, new JoinCounts(0).expected(new int[] {0}));
    assertEquals(0, new JoinCounts(1).variance(1));
    JoinCounts pair = new JoinCounts(2);
    pair.join(0, 1, 4);
    assertEquals(4, pair.expected(2));
    assertEquals(0, pair.variance(2));
  }

  @Test
  void refusesAPlaceJoinedToItself() {
    JoinCounts joins = new JoinCounts(2);
    assertThrows(IllegalArgumentException.class, () -> joins.join(1, 1, 4));
  }

  private static List<int[]> grid(int side, int[][] offsets) {
    List<int[]> joins = new ArrayList<>();
    IntBinaryOperator at =
        (row, column) -> row < side && column >= 0 && column < side ? row * side + column : -1;
    for (int place = 0; place < side * side; place++) {
      for (int[] offset : offsets) {
        int other = at.applyAsInt(place / side + offset[0], place % side + offset[1]);
        if (other >= 0) {
          joins.add(new int[] {place, other});
        }
      }
    }
    return joins;
  }

  private static JoinCounts chance(int places, List<int[]> joins) {
    JoinCounts chance = new JoinCounts(places);
    joins.forEach(join -> chance.join(join[0], join[1], 1));
    return chance;
  }

  private static int[] counts(int[] colours, int kinds) {
    int[] counts = new int[kinds];
    for (int colour : colours) {
      counts[colour]++;
    }
    return counts;
  }

  private static long same(List<int[]> joins, int[] colours) {
    return joins.stream().filter(join -> colours[join[0]] == colours[join[1]]).count();
  }

  private static long within(List<int[]> joins, int[] colours, int colour) {
    return joins.stream()
        .filter(join -> colours[join[0]] == colour && colours[join[1]] == colour)
        .count();
  }

  /** The rows of a table without its comments and column headings. */
  private static List<String> lines(String resource) throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                JoinCountsTest.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
      return reader
          .lines()
          .filter(line -> !line.startsWith("#") && !line.matches("(id|neighbours),.*"))
          .toList();
    }
  }
}
