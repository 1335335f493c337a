package lozengy.solver.bound;

import java.util.SplittableRandom;

/** Random small bands, for tests against trying all. */
final class RandomBands {

  private RandomBands() {}

  /** A band of so many places; pairs reach at most 4 places back. */
  static Band of(SplittableRandom random, int places) {
    int[] first = new int[4 * places];
    int[] second = new int[4 * places];
    int[] index = new int[4 * places];
    double[] weight = new double[4 * places];
    boolean[] apart = new boolean[4 * places];
    int pairs = 0;
    for (int place = 1; place < places; place++) {
      for (int back = 1; back <= Math.min(4, place); back++) {
        if (random.nextInt(4) > 0) {
          first[pairs] = place - back;
          second[pairs] = place;
          index[pairs] = pairs;
          weight[pairs] = random.nextInt(1, 5) / (double) random.nextInt(1, 4);
          apart[pairs] = random.nextInt(6) == 0;
          pairs++;
        }
      }
    }
    double[] share = new double[places];
    java.util.Arrays.fill(share, 1);
    return new Band(
        places,
        1,
        java.util.stream.IntStream.range(0, places).toArray(),
        new int[places],
        java.util.Arrays.copyOf(index, pairs),
        java.util.Arrays.copyOf(first, pairs),
        java.util.Arrays.copyOf(second, pairs),
        java.util.Arrays.copyOf(weight, pairs),
        java.util.Arrays.copyOf(apart, pairs),
        share);
  }

  /** Three places in a line: the first two repeat with a weight of 2, the last two of 0.5. */
  static Band threeInLine() {
    return new Band(
        3,
        1,
        new int[] {0, 1, 2},
        new int[3],
        new int[] {0, 1},
        new int[] {0, 1},
        new int[] {1, 2},
        new double[] {2, 0.5},
        new boolean[2],
        new double[] {1, 1, 1});
  }
}
