package lozengy.solver.search;

import java.util.Arrays;
import java.util.List;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;

/**
 * What repeats cost on average when counts are dealt at random to the slots of each group. Groups g
 * and h of N slots each, of which n show yarn y, with light pairs that cost W together:
 *
 * <pre>E = sum over g &lt; h, y of W(g, h) n(g, y) n(h, y) / (N(g) N(h))
 *   + sum over g, y of W(g, g) n(g, y) (n(g, y) - 1) / (N(g) (N(g) - 1))</pre>
 *
 * and likewise with slots whose yarn is known. A walk ends far below E, but from counts with less
 * of it lower than from others. That matters where stock is so tight that a walk hardly changes
 * counts; elsewhere it finds its own, and better ones from deals that differ more.
 */
final class ExpectedRepeats {

  /**
   * Rounds of average length that are to spare for each yarn, from which on a walk changes them.
   */
  private static final double AMPLE_ROUNDS = 0.25;

  /** Most groups for which repeats are minded. */
  private static final int MOST_GROUPS = 128;

  private final double[][] pairs;
  private final double[][] known;

  /**
   * Sums up the pairs.
   *
   * @param groups groups of like slots
   * @param yarn the yarn of each slot outside all groups
   */
  ExpectedRepeats(Problem problem, List<int[]> groups, int[] yarn) {
    // what a pile takes is no part of the stock, and where it lies is no part of the counts
    boolean minded = problem.pile().isEmpty() && groups.size() <= MOST_GROUPS && tight(problem);
    int size = minded ? groups.size() : 0;
    pairs = new double[size][size];
    known = new double[size][problem.yarns()];
    int[] groupOf = new int[problem.slots().count()];
    Arrays.fill(groupOf, -1);
    for (int group = 0; group < size; group++) {
      for (int slot : groups.get(group)) {
        groupOf[slot] = group;
      }
    }
    PairCosts costs = problem.costs().pairs();
    for (int group = 0; group < size; group++) {
      double slots = groups.get(group).length;
      for (int slot : groups.get(group)) {
        for (int i = costs.lightStart()[slot]; i < costs.lightStart()[slot + 1]; i++) {
          int near = costs.lightSlot()[i];
          double cost = costs.lightCost()[i] / slots;
          if (groupOf[near] < 0) {
            known[group][yarn[near]] += cost;
          } else {
            int others = groups.get(groupOf[near]).length - (groupOf[near] == group ? 1 : 0);
            pairs[group][groupOf[near]] += cost / others;
          }
        }
      }
    }
  }

  /** Whether the yarns have so little to spare that single changes of rounds hardly fit. */
  private static boolean tight(Problem problem) {
    double spare = 0;
    for (int yarn = 0; yarn < problem.yarns(); yarn++) {
      spare += problem.supply().usable()[yarn] - problem.supply().fixedUse()[yarn];
    }
    double all = 0;
    for (int slot = 0; slot < problem.slots().count(); slot++) {
      int[] may = problem.domains().yarns(slot);
      for (int yarn : may) {
        all += (double) problem.supply().need(slot, yarn) / may.length;
      }
    }
    return spare - all < AMPLE_ROUNDS * problem.yarns() * all / problem.slots().count();
  }

  /** Whether repeats are minded at all. */
  boolean any() {
    return pairs.length > 0;
  }

  /** What repeats cost on average. */
  double of(int[][] counts) {
    double sum = 0;
    for (int group = 0; group < pairs.length; group++) {
      for (int yarn = 0; yarn < counts[group].length; yarn++) {
        double each = known[group][yarn] - pairs[group][group] / 2;
        for (int other = 0; other < pairs.length; other++) {
          each += pairs[group][other] / 2 * counts[other][yarn];
        }
        sum += each * counts[group][yarn];
      }
    }
    return sum;
  }

  /** What it costs that a slot of a group shows another yarn, for the first of many such slots. */
  double step(int group, int[][] counts, int from, int to) {
    if (!any()) {
      return 0;
    }
    double step = known[group][to] - known[group][from];
    for (int other = 0; other < pairs.length; other++) {
      step += pairs[group][other] * (counts[other][to] - counts[other][from]);
    }
    return step;
  }

  /** What is added, for each two such slots of two groups, to the sum of their steps. */
  double bend(int group, int other) {
    return pairs[group][other];
  }
}
