package lozengy.solver.bound;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the best set of a band's places for one yarn: the set A with the least weight of repeats
 * among its places less the gains of its places, exactly.
 *
 * <p>Sweeps the places in order. What is still to come depends on the past only through which
 * places of the {@link Frontier} are in A: the state. From the last place back, the least cost to
 * come from each state is the lesser of leaving the place out and taking it,
 *
 * <pre>V(i, s) = min( V(i+1, s), sum of weights to partners in s - gain(i) + V(i+1, s + i) ),</pre>
 *
 * <p>the latter only where no partner in s must be apart from i. States are listed once; a call is
 * O(places x states) and allocates nothing.
 */
final class BandSweep {

  private static final int NONE = -1;

  /** States before a place, and where leaving the place out or taking it leads from each. */
  private record Step(int[] states, int[] skip, int[] take, int[] statesAfter) {}

  private final Band band;
  private final Frontier frontier;
  private final Step[] steps;
  private final double[][] takeCost;
  private final double[][] cost;
  private final double[] sums;

  /** Lists the states of a band. */
  BandSweep(Band band) {
    this.band = band;
    frontier = new Frontier(band);
    int places = band.places();
    steps = new Step[places];
    takeCost = new double[places][];
    cost = new double[places + 1][];
    sums = new double[1 << frontier.width()];
    int[] states = {0};
    Map<List<Object>, Step> known = new HashMap<>();
    for (int place = 0; place < places; place++) {
      int now = place;
      int[] before = states;
      steps[place] =
          known.computeIfAbsent(
              List.of(frontier.likeness(place), IntBuffer.wrap(states)), key -> step(now, before));
      takeCost[place] = new double[states.length];
      cost[place] = new double[states.length];
      states = steps[place].statesAfter();
    }
    cost[places] = new double[states.length];
    weigh(band.weight());
  }

  private Step step(int place, int[] states) {
    int[] skip = new int[states.length];
    int[] take = new int[states.length];
    int[] index = new int[sums.length];
    int[] after = new int[sums.length];
    int count = 0;
    for (int state = 0; state < states.length; state++) {
      int left = frontier.moved(place, states[state]);
      int taken = left | frontier.ownSet(place);
      if (index[left] == 0) {
        after[count++] = left;
        index[left] = count;
      }
      skip[state] = index[left] - 1;
      take[state] = NONE;
      if ((states[state] & frontier.apart(place)) == 0) {
        if (index[taken] == 0) {
          after[count++] = taken;
          index[taken] = count;
        }
        take[state] = index[taken] - 1;
      }
    }
    return new Step(states, skip, take, Arrays.copyOf(after, count));
  }

  /** How many states there are over all places: what a call costs. */
  long work() {
    long work = 0;
    for (double[] each : cost) {
      work += each.length;
    }
    return work;
  }

  /** Sets the weights of the pairs. */
  void weigh(double[] weight) {
    for (int place = 0; place < band.places(); place++) {
      frontier.sumWeights(place, weight, sums);
      int[] states = steps[place].states();
      for (int state = 0; state < states.length; state++) {
        takeCost[place][state] = sums[states[state]];
      }
    }
  }

  /**
   * The least weight of repeats less gains, over all sets of places.
   *
   * @param gain gain of each place; negative infinity keeps a place out
   */
  double least(double[] gain) {
    int places = band.places();
    for (int place = places - 1; place >= 0; place--) {
      double[] after = cost[place + 1];
      double[] before = cost[place];
      int[] skip = steps[place].skip();
      int[] take = steps[place].take();
      double[] extra = takeCost[place];
      double won = gain[place];
      for (int state = 0; state < before.length; state++) {
        double least = after[skip[state]];
        if (take[state] != NONE) {
          least = Math.min(least, after[take[state]] + (extra[state] - won));
        }
        before[state] = least;
      }
    }
    return cost[0][0];
  }

  /** Marks the places of a set that attains the last least cost. */
  void mark(double[] gain, boolean[] chosen) {
    int state = 0;
    for (int place = 0; place < band.places(); place++) {
      int skip = steps[place].skip()[state];
      int take = steps[place].take()[state];
      double left = cost[place + 1][skip];
      chosen[place] =
          take != NONE && takeCost[place][state] - gain[place] + cost[place + 1][take] < left;
      state = chosen[place] ? take : skip;
    }
  }
}
