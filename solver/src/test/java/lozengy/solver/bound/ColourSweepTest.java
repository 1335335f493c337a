package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The sweep for all yarns at once against all ways to show one at each place. */
class ColourSweepTest {

  @Test
  void theSweepFindsTheLeastOfAllWays() {
    int impossible = 0;
    for (long seed = 1; seed <= 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Band band = RandomBands.of(random, 1 + random.nextInt(8));
      int yarns = 1 + random.nextInt(4);
      double least = leastOfAll(band, yarns, new int[band.places()], 0);
      ColourSweep sweep = ColourSweep.of(band, yarns, 10_000);
      if (sweep == null) {
        assertEquals(Double.POSITIVE_INFINITY, least, "seed " + seed);
        impossible++;
        continue;
      }
      assertEquals(least, sweep.least(band.weight()), 1e-9, "seed " + seed);
      if (least < Double.POSITIVE_INFINITY) {
        double[] repeated = new double[band.pair().length];
        java.util.Arrays.fill(repeated, 7);
        sweep.mark(repeated);
        double marked = 0;
        for (int pair = 0; pair < repeated.length; pair++) {
          marked += repeated[pair] * band.weight()[pair];
        }
        assertEquals(least, marked, 1e-9, "marked, seed " + seed);
      }
    }
    assertTrue(impossible < 60, impossible + " of 200 were impossible");
  }

  @Test
  void tooManyStatesAreDeclined() {
    Band band = RandomBands.of(new SplittableRandom(3), 12);
    assertNull(ColourSweep.of(band, 4, 3));
  }

  private static double leastOfAll(Band band, int yarns, int[] shown, int place) {
    if (place == shown.length) {
      double cost = 0;
      for (int pair = 0; pair < band.first().length; pair++) {
        if (shown[band.first()[pair]] == shown[band.second()[pair]]) {
          cost += band.apart()[pair] ? Double.POSITIVE_INFINITY : band.weight()[pair];
        }
      }
      return cost;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int yarn = 0; yarn < yarns; yarn++) {
      shown[place] = yarn;
      least = Math.min(least, leastOfAll(band, yarns, shown, place + 1));
    }
    return least;
  }
}
