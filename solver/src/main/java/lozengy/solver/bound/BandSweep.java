package lozengy.solver.bound;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Finds the best set of a band's places for one yarn: the set A with the least weight of repeats
 * among its places less the gains of its places, exactly.
 *
 * <p>Sweeps the places in order. What is still to come depends on the past only through which
 * places of the {@link Frontier} are in A: the state s. From the last place back, the least cost to
 * come from each state is the lesser of leaving the place out and taking it,
 *
 * <pre>V(i, s) = min( V(i+1, s), sum of weights to partners in s - gain(i) + V(i+1, s + i) ),</pre>
 *
 * <p>the latter only where no partner in s must be apart from i.
 *
 * <p>Nearly all states matter to no best set. Whatever is taken later costs as much after s + i as
 * after s, and the weights to i besides, so V(i+1, s + i) &gt;= V(i+1, s) - neg(i), with neg(i) the
 * sum of i's weights to later partners as far as they are below 0. Hence a place whose weights to
 * partners in s are more than gain(i) + neg(i) is better left out. A first pass lists the states
 * that are reached from the empty one without such places, a second, back, works out their costs: a
 * call is O(states reached), one in thirty of all for a usual blanket.
 */
final class BandSweep {

  private static final int NONE = -1;

  /** Far above what rounding does to a cost, so that it leaves out nothing that counts. */
  private static final double ROUNDING = 1e-6;

  private final Band band;
  private final Frontier frontier;
  private final int[][] left;
  private final double[][] weight;
  private final double[] below;

  /** By set of bits, 1 + the state of the next place that has just been listed for it, or 0. */
  private final int[] listed;

  /** The states, place after place from {@code start} on; then the end. */
  private final int[] start;

  private int[] set = new int[1024];
  private int[] skip = new int[1024];
  private int[] take = new int[1024];
  private double[] extra = new double[1024];
  private double[] cost = new double[1024];
  private long work;

  /** Prepares to sweep a band. */
  BandSweep(Band band) {
    this.band = band;
    frontier = new Frontier(band);
    int places = band.places();
    left = new int[places][];
    weight = new double[places][];
    below = new double[places];
    start = new int[places + 2];
    listed = new int[1 << frontier.width()];
    Map<IntBuffer, int[]> known = new HashMap<>();
    for (int place = 0; place < places; place++) {
      int now = place;
      weight[place] = new double[frontier.pairAt(place).length];
      left[place] =
          known.computeIfAbsent(IntBuffer.wrap(frontier.move(place)), key -> frontier.moved(now));
    }
    weigh(band.weight());
  }

  /** How many states all calls have gone through. */
  long work() {
    return work;
  }

  /** Sets the weights of the pairs. */
  void weigh(double[] weights) {
    for (int place = 0; place < weight.length; place++) {
      int[] pairs = frontier.pairAt(place);
      for (int bit = 0; bit < pairs.length; bit++) {
        weight[place][bit] = pairs[bit] == NONE ? 0 : weights[pairs[bit]];
      }
    }
    Arrays.fill(below, 0);
    for (int pair = 0; pair < weights.length; pair++) {
      below[band.first()[pair]] += Math.max(0, -weights[pair]);
    }
  }

  /**
   * The least weight of repeats less gains, over all sets of places.
   *
   * @param gain gain of each place; negative infinity keeps a place out
   */
  double least(double[] gain) {
    int places = left.length;
    set[0] = 0;
    start[1] = 1;
    for (int place = 0; place < places; place++) {
      list(place, gain[place]);
    }
    Arrays.fill(cost, start[places], start[places + 1], 0);
    for (int place = places - 1; place >= 0; place--) {
      double won = gain[place];
      for (int state = start[place]; state < start[place + 1]; state++) {
        double least = cost[skip[state]];
        if (take[state] != NONE) {
          least = Math.min(least, cost[take[state]] + (extra[state] - won));
        }
        cost[state] = least;
      }
    }
    work += start[places + 1];
    return cost[0];
  }

  /** Lists the states after a place that matter. */
  private void list(int place, double gain) {
    int from = start[place];
    int end = start[place + 1];
    int size = end;
    grow(end + 2 * (end - from));
    int[] after = left[place];
    double[] weights = weight[place];
    int own = frontier.ownSet(place);
    int apart = frontier.apart(place);
    double most = gain + below[place] + ROUNDING;
    for (int state = from; state < end; state++) {
      int now = set[state];
      int without = after[now];
      if (listed[without] == 0) {
        set[size++] = without;
        listed[without] = size;
      }
      skip[state] = listed[without] - 1;
      take[state] = NONE;
      double sum = 0;
      for (int rest = now; rest != 0; rest &= rest - 1) {
        sum += weights[Integer.numberOfTrailingZeros(rest)];
      }
      extra[state] = sum;
      if (sum < most && (now & apart) == 0) {
        int with = without | own;
        if (listed[with] == 0) {
          set[size++] = with;
          listed[with] = size;
        }
        take[state] = listed[with] - 1;
      }
    }
    for (int state = end; state < size; state++) {
      listed[set[state]] = 0;
    }
    start[place + 2] = size;
  }

  private void grow(int size) {
    if (size > set.length) {
      int room = 2 * size;
      set = Arrays.copyOf(set, room);
      skip = Arrays.copyOf(skip, room);
      take = Arrays.copyOf(take, room);
      extra = Arrays.copyOf(extra, room);
      cost = Arrays.copyOf(cost, room);
    }
  }

  /** Marks the places of a set that attains the last least cost. */
  void mark(double[] gain, boolean[] chosen) {
    int state = 0;
    for (int place = 0; place < chosen.length; place++) {
      int taken = take[state];
      chosen[place] = taken != NONE && extra[state] - gain[place] + cost[taken] < cost[skip[state]];
      state = chosen[place] ? taken : skip[state];
    }
  }
}
