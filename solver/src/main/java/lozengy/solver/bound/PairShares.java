package lozengy.solver.bound;

import java.util.Arrays;
import java.util.List;

/**
 * Moves shares of the pairs' weights between the bands that hold them, so that a floor that is the
 * sum of the bands' floors rises. A pair's shares keep their sum: from each slope the mean over the
 * pair's holders is taken away.
 */
final class PairShares {

  private final List<Band> bands;
  private final double[] mean;
  private final int[] holders;

  /**
   * Notes who holds which pair.
   *
   * @param pairs how many pairs the region has
   */
  PairShares(List<Band> bands, int pairs) {
    this.bands = bands;
    mean = new double[pairs];
    holders = new int[pairs];
    for (Band band : bands) {
      for (int pair : band.pair()) {
        holders[pair]++;
      }
    }
  }

  /** Takes from each slope, by band and pair, the mean over its pair's holders. */
  void level(double[][] slopes) {
    Arrays.fill(mean, 0);
    for (int b = 0; b < slopes.length; b++) {
      int[] pairs = bands.get(b).pair();
      for (int i = 0; i < pairs.length; i++) {
        mean[pairs[i]] += slopes[b][i] / holders[pairs[i]];
      }
    }
    for (int b = 0; b < slopes.length; b++) {
      int[] pairs = bands.get(b).pair();
      for (int i = 0; i < pairs.length; i++) {
        slopes[b][i] -= mean[pairs[i]];
      }
    }
  }
}
