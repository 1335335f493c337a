package lozengy.solver.bound;

/**
 * A proved floor under the weight E of a layer's repeats, by how many places of each kind of piece
 * show each yarn:
 *
 * <pre>
 * E &gt;= least
 * E &gt;= base + sum over yarns c of max over j of ( height[c][j]
 *                                         - sum over k of toll[c][j][k] n(c, k) ).
 * </pre>
 *
 * <p>{@link ColourShares} says why the first holds, {@link RepeatPrices} the second. Each term is
 * convex in the n(c, k).
 *
 * @param total the weight of all pairs, which E never exceeds
 * @param least what E never falls below, however often each yarn shows
 * @param base the prices' sum
 * @param toll by yarn, line and kind of piece, slopes; an empty row for a yarn that the layer may
 *     not show
 * @param height by yarn, heights where n(c, k) = 0
 */
record RepeatFloor(double total, double least, double base, double[][][] toll, double[][] height) {

  /** The floor 0. */
  static RepeatFloor none(double total, int yarns) {
    return new RepeatFloor(total, 0, 0, new double[yarns][0][], new double[yarns][0]);
  }

  /** The same floor, but at least so high. */
  RepeatFloor atLeast(double proved) {
    return new RepeatFloor(total, Math.max(least, proved), base, toll, height);
  }
}
