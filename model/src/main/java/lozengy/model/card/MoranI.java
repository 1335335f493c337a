package lozengy.model.card;

/**
 * Moran's I: whether places that are joined have alike values. Above its expectation, like lies
 * beside like; below, light lies beside dark.
 *
 * <p>With n places, weight 1 for each of J joins (so S0 = 2J, S1 = 4J, S2 = 4 sum d^2 with d the
 * joins at a place) and z the values less their mean, I = (n / J) sum over joins z z' / sum z^2.
 * Its expectation is -1/(n-1). Its variance if the values are shuffled over the places
 * (randomisation) is { n[(n^2-3n+3)S1 - n S2 + 3 S0^2] - b2[(n^2-n)S1 - 2n S2 + 6 S0^2] } / {
 * (n-1)(n-2)(n-3) S0^2 } - E^2, where b2 = n sum z^4 / (sum z^2)^2. (A. D. Cliff and J. K. Ord,
 * Spatial Processes: Models and Applications, Pion, London 1981, chapter 1.)
 */
public final class MoranI {

  private static final int FEWEST_PLACES = 4;

  private MoranI() {}

  /**
   * Works it out in O(places + joins).
   *
   * @param values value of each place
   * @param first places of the joins, each pair of places at most once
   * @param second the places that they are joined to
   * @return observed 0 and no variance where fewer than four places, no joins or equal values leave
   *     nothing to tell
   */
  public static Statistic of(double[] values, int[] first, int[] second) {
    int n = values.length;
    double mean = 0;
    for (double value : values) {
      mean += value / n;
    }
    double squares = 0;
    double fourths = 0;
    for (double value : values) {
      double square = (value - mean) * (value - mean);
      squares += square;
      fourths += square * square;
    }
    int joins = first.length;
    if (n < FEWEST_PLACES || joins == 0 || squares <= n * 1e-18) {
      return new Statistic(0, n < 2 ? 0 : -1.0 / (n - 1), 0);
    }
    double[] joinsAt = new double[n];
    double products = 0;
    for (int join = 0; join < joins; join++) {
      products += (values[first[join]] - mean) * (values[second[join]] - mean);
      joinsAt[first[join]]++;
      joinsAt[second[join]]++;
    }
    double s0 = 2.0 * joins;
    double s1 = 4.0 * joins;
    double s2 = 0;
    for (double at : joinsAt) {
      s2 += 4 * at * at;
    }
    double b2 = n * fourths / (squares * squares);
    double size = n;
    double varied =
        size * ((size * size - 3 * size + 3) * s1 - size * s2 + 3 * s0 * s0)
            - b2 * ((size * size - size) * s1 - 2 * size * s2 + 6 * s0 * s0);
    double expected = -1 / (size - 1);
    double variance =
        varied / ((size - 1) * (size - 2) * (size - 3) * s0 * s0) - expected * expected;
    return new Statistic(size / joins * products / squares, expected, variance);
  }
}
