package lozengy.solver.bound;

import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * A floor under a layer's repeats for few yarns: the sum of the bands' exact minima over all ways
 * to show one yarn at every place. However a pair's weight is shared among the bands that hold it,
 *
 * <pre>E = sum over b of W(b) &gt;= sum over b of min W(b),</pre>
 *
 * and {@link Ascent} looks for good shares. A yarn is taken to be allowed everywhere, which only
 * lowers the minima.
 */
final class ColourShares {

  private static final double LEVEL = 0.02;

  private final ColourSweep[] sweeps;
  private final PairShares shares;
  private final double[][] weight;
  private final double[][] weightSlope;
  private final Ascent ascent;

  private ColourShares(List<Band> bands, ColourSweep[] sweeps, int pairs) {
    this.sweeps = sweeps;
    this.shares = new PairShares(bands, pairs);
    weight = bands.stream().map(band -> band.weight().clone()).toArray(double[][]::new);
    weightSlope =
        bands.stream().map(band -> new double[band.pair().length]).toArray(double[][]::new);
    double[] start = Arrays.stream(weight).flatMapToDouble(Arrays::stream).toArray();
    ascent = new Ascent(this::climbed, start, LEVEL * pairs + 1e-3);
  }

  /**
   * Prepares the bands.
   *
   * @param bands no two of which are given as one
   * @param pairs how many pairs the region has
   * @param mostStates most states of a band at a place
   * @return null if there are more, or if the rule for borders cannot be kept
   */
  static ColourShares of(List<Band> bands, int yarns, int pairs, int mostStates) {
    ColourSweep[] sweeps = new ColourSweep[bands.size()];
    for (int b = 0; b < sweeps.length; b++) {
      sweeps[b] = ColourSweep.of(bands.get(b), yarns, mostStates);
      if (sweeps[b] == null) {
        return null;
      }
    }
    return new ColourShares(bands, sweeps, pairs);
  }

  private double climbed(double[] point, double[] slope) {
    int at = 0;
    double value = 0;
    for (int b = 0; b < sweeps.length; b++) {
      System.arraycopy(point, at, weight[b], 0, weight[b].length);
      at += weight[b].length;
      value += sweeps[b].least(weight[b]);
      sweeps[b].mark(weightSlope[b]);
    }
    shares.level(weightSlope);
    at = 0;
    for (double[] slopes : weightSlope) {
      System.arraycopy(slopes, 0, slope, at, slopes.length);
      at += slopes.length;
    }
    return value;
  }

  /** Improves the shares by so many steps, fewer if stopped; the first step only evaluates. */
  void improve(int steps, BooleanSupplier stop) {
    ascent.climb(steps, stop);
  }

  /** The floor; negative infinity before the first step. */
  double best() {
    return ascent.best();
  }

  /** Choices that an evaluation goes through. */
  long work() {
    return Arrays.stream(sweeps).mapToLong(ColourSweep::work).sum();
  }
}
