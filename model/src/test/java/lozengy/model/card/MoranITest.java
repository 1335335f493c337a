package lozengy.model.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MoranITest {

  private record Joins(int[] first, int[] second) {}

  /**
   * I, E(I) and Var(I) as printed in the R package spdep's example of moran.test, binary weights.
   */
  @Test
  void agreesWithThePublishedColumbusFigures() throws IOException {
    List<String> lines = columbus();
    double[] crime = new double[lines.size()];
    List<int[]> pairs = new ArrayList<>();
    for (int area = 0; area < crime.length; area++) {
      String[] row = lines.get(area).split(",");
      crime[area] = Double.parseDouble(row[1]);
      for (String neighbour : row[2].split(" ")) {
        int other = Integer.parseInt(neighbour) - 1;
        if (area < other) {
          pairs.add(new int[] {area, other});
        }
      }
    }
    Joins joins = joins(pairs);
    Statistic moran = MoranI.of(crime, joins.first(), joins.second());
    assertEquals(0.52063815, moran.observed(), 5e-9);
    assertEquals(-0.02083333, moran.expected(), 5e-9);
    assertEquals(0.00759872, moran.variance(), 5e-9);
  }

  private static List<String> columbus() throws IOException {
    try (InputStream in =
        MoranITest.class.getResourceAsStream("/lozengy/model/score/columbus_oldcol.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> Character.isDigit(line.charAt(0)))
          .toList();
    }
  }

  /** Not published: reckoned by hand and by exact fractions. */
  @Test
  void tellsHalvesFromACheckerboard() {
    Joins joins = lattice(4);
    double[] halves = new double[16];
    Arrays.fill(halves, 8, 16, 1);
    Statistic clumped = MoranI.of(halves, joins.first(), joins.second());
    assertEquals(2.0 / 3, clumped.observed(), 1e-12);
    assertEquals(-1.0 / 15, clumped.expected(), 1e-12);
    assertEquals(0.0371509972, clumped.variance(), 1e-9);
    double[] checked = new double[64];
    for (int i = 0; i < 64; i++) {
      checked[i] = (i / 8 + i) % 2;
    }
    Joins large = lattice(8);
    Statistic spread = MoranI.of(checked, large.first(), large.second());
    assertEquals(-1, spread.observed(), 1e-12);
    assertEquals(0.0086749593, spread.variance(), 1e-9);
    assertTrue(spread.z() < -10);
  }

  @Test
  void agreesWithSeededShuffles() {
    Joins joins = lattice(5);
    SplittableRandom random = new SplittableRandom(8);
    double[] values = random.doubles(25, 0, 100).toArray();
    Statistic stated = MoranI.of(values, joins.first(), joins.second());
    int shuffles = 40_000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < shuffles; i++) {
      for (int last = 24; last > 0; last--) {
        int drawn = random.nextInt(last + 1);
        double value = values[last];
        values[last] = values[drawn];
        values[drawn] = value;
      }
      double observed = MoranI.of(values, joins.first(), joins.second()).observed();
      sum += observed;
      squares += observed * observed;
    }
    double mean = sum / shuffles;
    double variance = squares / shuffles - mean * mean;
    assertEquals(stated.expected(), mean, 4 * Math.sqrt(stated.variance() / shuffles));
    assertEquals(1, variance / stated.variance(), 0.04);
  }

  @Test
  void isStillWhereThereIsNothingToTell() {
    assertEquals(0, MoranI.of(new double[] {1, 2}, new int[] {0}, new int[] {1}).z());
    double[] same = {3, 3, 3, 3, 3};
    assertEquals(0, MoranI.of(same, new int[] {0}, new int[] {1}).z());
    assertEquals(0, MoranI.of(new double[0], new int[0], new int[0]).expected());
  }

  private static Joins lattice(int side) {
    List<int[]> pairs = new ArrayList<>();
    for (int at = 0; at < side * side; at++) {
      if (at % side + 1 < side) {
        pairs.add(new int[] {at, at + 1});
      }
      if (at + side < side * side) {
        pairs.add(new int[] {at, at + side});
      }
    }
    return joins(pairs);
  }

  private static Joins joins(List<int[]> pairs) {
    return new Joins(
        pairs.stream().mapToInt(pair -> pair[0]).toArray(),
        pairs.stream().mapToInt(pair -> pair[1]).toArray());
  }
}
