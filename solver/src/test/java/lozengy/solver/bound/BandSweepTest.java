package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The sweep for one yarn against all sets of places. */
class BandSweepTest {

  @Test
  void theSweepFindsTheLeastOfAllSets() {
    for (long seed = 1; seed <= 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Band band = RandomBands.of(random, 1 + random.nextInt(11));
      double[] gain = new double[band.places()];
      for (int place = 0; place < gain.length; place++) {
        gain[place] =
            random.nextInt(8) == 0 ? Double.NEGATIVE_INFINITY : 5 * random.nextDouble() - 0.5;
      }
      BandSweep sweep = new BandSweep(band);
      double[] weight = moved(band.weight(), random);
      double least = leastOfAll(band, weight, gain);
      sweep.weigh(weight);
      assertEquals(least, sweep.least(gain), 1e-9, "seed " + seed);
      boolean[] chosen = new boolean[band.places()];
      sweep.mark(gain, chosen);
      int set = 0;
      for (int place = 0; place < chosen.length; place++) {
        set |= chosen[place] ? 1 << place : 0;
      }
      assertEquals(least, cost(band, weight, gain, set), 1e-9, "marked, seed " + seed);
    }
  }

  /** Shares of pairs move between bands, and some may fall below 0. */
  private static double[] moved(double[] weight, SplittableRandom random) {
    double[] moved = weight.clone();
    for (int pair = 0; pair < moved.length; pair++) {
      moved[pair] -= random.nextInt(3) == 0 ? 3 * random.nextDouble() : 0;
    }
    return moved;
  }

  private static double leastOfAll(Band band, double[] weight, double[] gain) {
    double least = Double.POSITIVE_INFINITY;
    for (int set = 0; set < 1 << band.places(); set++) {
      least = Math.min(least, cost(band, weight, gain, set));
    }
    return least;
  }

  private static double cost(Band band, double[] weight, double[] gain, int set) {
    double cost = 0;
    for (int place = 0; place < band.places(); place++) {
      cost -= (set >> place & 1) == 1 ? gain[place] : 0;
    }
    for (int pair = 0; pair < band.first().length; pair++) {
      if ((set >> band.first()[pair] & set >> band.second()[pair] & 1) == 1) {
        cost += band.apart()[pair] ? Double.POSITIVE_INFINITY : weight[pair];
      }
    }
    return cost;
  }
}
