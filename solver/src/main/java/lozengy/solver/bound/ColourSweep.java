package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the least weight of repeats in a band where every place shows one of so many yarns,
 * exactly.
 *
 * <p>Like {@link BandSweep}, but for all yarns at once: a state says which places of the {@link
 * Frontier} show the same yarn. Which yarn it is does not matter, so yarns are numbered in the
 * order in which the frontier shows them.
 */
final class ColourSweep {

  /** Bits for the number of a yarn in a state. */
  private static final int DIGIT = 3;

  /** Most yarns that such a number can tell apart. */
  static final int MOST_YARNS = 1 << DIGIT;

  /**
   * States before a place; for each, from {@code start} on, its choices: the set of bits that show
   * the chosen yarn, and the state that follows.
   */
  private record Step(int[] start, int[] same, int[] next, long[] statesAfter) {}

  private final Band band;
  private final Frontier frontier;
  private final int yarns;
  private final Step[] steps;
  private final double[][] cost;
  private final double[][] sums;

  private ColourSweep(Band band, Frontier frontier, int yarns, Step[] steps) {
    this.band = band;
    this.frontier = frontier;
    this.yarns = yarns;
    this.steps = steps;
    this.cost = new double[band.places() + 1][];
    this.sums = new double[band.places()][];
    for (int place = 0; place < band.places(); place++) {
      cost[place] = new double[steps[place].start().length - 1];
      sums[place] = new double[1 << frontier.pairAt(place).length];
    }
    cost[band.places()] = new double[steps[band.places() - 1].statesAfter().length];
  }

  /**
   * Lists the states of a band.
   *
   * @param yarns how many yarns, 1 to {@link #MOST_YARNS}
   * @param mostStates most states at a place
   * @return the sweep, or null if there are more states, or too many places side by side, or no way
   *     to keep places apart that must be
   */
  static ColourSweep of(Band band, int yarns, int mostStates) {
    Frontier frontier = new Frontier(band);
    if (band.places() == 0 || frontier.width() * DIGIT > Long.SIZE - DIGIT) {
      return null;
    }
    Step[] steps = new Step[band.places()];
    long[] states = {0};
    Map<List<Object>, Step> known = new HashMap<>();
    for (int place = 0; place < steps.length; place++) {
      List<Object> key =
          List.of(
              frontier.likeness(place),
              frontier.pairAt(place).length,
              java.nio.LongBuffer.wrap(states));
      Step step = known.get(key);
      if (step == null) {
        step = step(frontier, place, yarns, states);
        known.put(key, step);
      }
      steps[place] = step;
      states = step.statesAfter();
      if (states.length > mostStates || states.length == 0) {
        return null;
      }
    }
    return new ColourSweep(band, frontier, yarns, steps);
  }

  private static Step step(Frontier frontier, int place, int yarns, long[] states) {
    int bits = frontier.pairAt(place).length;
    int[] start = new int[states.length + 1];
    int[] same = new int[states.length * yarns];
    int[] next = new int[states.length * yarns];
    int count = 0;
    Map<Long, Integer> index = new HashMap<>();
    List<Long> after = new ArrayList<>();
    int[] sets = new int[yarns + 1];
    for (int state = 0; state < states.length; state++) {
      start[state] = count;
      Arrays.fill(sets, 0);
      int shown = 0;
      for (int bit = 0; bit < bits; bit++) {
        int yarn = digit(states[state], bit);
        sets[yarn] |= 1 << bit;
        shown = Math.max(shown, yarn + 1);
      }
      for (int yarn = 0; yarn < Math.min(yarns, shown + 1); yarn++) {
        if ((sets[yarn] & frontier.apart(place)) == 0) {
          long following = following(frontier, place, states[state], bits, yarn);
          Integer known = index.putIfAbsent(following, after.size());
          if (known == null) {
            known = after.size();
            after.add(following);
          }
          same[count] = sets[yarn];
          next[count++] = known;
        }
      }
    }
    start[states.length] = count;
    return new Step(
        start,
        Arrays.copyOf(same, count),
        Arrays.copyOf(next, count),
        after.stream().mapToLong(each -> each).toArray());
  }

  private static int digit(long state, int bit) {
    return (int) (state >>> DIGIT * bit) & (MOST_YARNS - 1);
  }

  private static long following(Frontier frontier, int place, long state, int bits, int yarn) {
    int[] number = new int[MOST_YARNS];
    Arrays.fill(number, Frontier.NONE);
    int numbered = 0;
    long after = 0;
    for (int bit = 0; bit <= bits; bit++) {
      int to = bit == bits ? frontier.own(place) : frontier.move(place)[bit];
      if (to != Frontier.NONE) {
        int shown = bit == bits ? yarn : digit(state, bit);
        if (number[shown] == Frontier.NONE) {
          number[shown] = numbered++;
        }
        after |= (long) number[shown] << DIGIT * to;
      }
    }
    return after;
  }

  /** How many choices there are over all places and states: what a call costs. */
  long work() {
    long work = 0;
    for (Step step : steps) {
      work += step.same().length;
    }
    return work;
  }

  /**
   * The least weight of repeats.
   *
   * @param weight weight of each pair
   */
  double least(double[] weight) {
    for (int place = band.places() - 1; place >= 0; place--) {
      frontier.sumWeights(place, weight, sums[place]);
      Step step = steps[place];
      double[] after = cost[place + 1];
      double[] sum = sums[place];
      for (int state = 0; state + 1 < step.start().length; state++) {
        double least = Double.POSITIVE_INFINITY;
        for (int choice = step.start()[state]; choice < step.start()[state + 1]; choice++) {
          least = Math.min(least, sum[step.same()[choice]] + after[step.next()[choice]]);
        }
        cost[place][state] = least;
      }
    }
    return cost[0][0];
  }

  /**
   * Marks the pairs that repeat where the last least weight is attained.
   *
   * @param repeated takes 1 for a pair that repeats, 0 for another
   */
  void mark(double[] repeated) {
    Arrays.fill(repeated, 0);
    int state = 0;
    for (int place = 0; place < band.places(); place++) {
      Step step = steps[place];
      int choice = step.start()[state];
      while (sums[place][step.same()[choice]] + cost[place + 1][step.next()[choice]]
          > cost[place][state]) {
        choice++;
      }
      for (int rest = step.same()[choice]; rest != 0; rest &= rest - 1) {
        int pair = frontier.pairAt(place)[Integer.numberOfTrailingZeros(rest)];
        if (pair != Frontier.NONE) {
          repeated[pair] = 1;
        }
      }
      state = step.next()[choice];
    }
  }
}
