package lozengy.solver.search;

import java.util.stream.LongStream;
import lozengy.solver.problem.Problem;

/**
 * Millimetres used of each yarn, with the penalty of overdrawn yarns and what leeway loses for
 * each. All telling is O(1).
 */
final class StockUse {

  /** More than any gain; sums over the longest chain do not overflow. */
  private static final long FAR = Long.MAX_VALUE / 256;

  private final Problem problem;
  private final int yarns;
  private final long[] used;
  private final long[] usable;
  private final long[] leewayLosses;
  private final boolean leewayMatters;
  private int overdrawn;
  private double pressure = 1;
  private boolean barred;

  StockUse(Problem problem) {
    this.problem = problem;
    this.yarns = problem.yarns();
    this.used = new long[yarns];
    this.usable = problem.supply().usable();
    this.leewayLosses = new long[yarns];
    this.leewayMatters = problem.supply().leewayCost() > 0;
  }

  /** Counts an assignment afresh. */
  void reset(int[] assignment) {
    System.arraycopy(problem.supply().fixedUse(), 0, used, 0, yarns);
    for (int slot = 0; slot < assignment.length; slot++) {
      used[assignment[slot]] += problem.supply().need(slot, assignment[slot]);
    }
    overdrawn = 0;
    for (int yarn = 0; yarn < yarns; yarn++) {
      overdrawn += used[yarn] > usable[yarn] ? 1 : 0;
      leewayLosses[yarn] = problem.supply().leewayLoss(yarn, used[yarn]);
    }
  }

  /** Millimetres used of each yarn, as a copy. */
  long[] used() {
    return used.clone();
  }

  /** How many yarns are overdrawn. */
  int overdrawn() {
    return overdrawn;
  }

  /** The most that using less of a yarn could win back. */
  long mostToGain(int yarn) {
    return overdrawn > 0 ? FAR : leewayLosses[yarn];
  }

  /**
   * What it costs to use {@code less} mm less of one yarn and {@code more} mm more of another.
   * Where barred, to overdraw a yarn once none is overdrawn is out of reach: at very tight stock
   * there is no way back.
   */
  long change(int yarnLess, long less, int yarnMore, long more) {
    long usedLess = used[yarnLess] - less;
    long usedMore = used[yarnMore] + more;
    long cost = 0;
    boolean overdraws = usedMore > usable[yarnMore] || usedLess > usable[yarnLess];
    if (overdrawn == 0 && overdraws && barred) {
      return FAR;
    }
    if (overdrawn > 0 || overdraws) {
      cost =
          overdrawLoss(yarnLess, usedLess)
              - overdrawLoss(yarnLess, used[yarnLess])
              + overdrawLoss(yarnMore, usedMore)
              - overdrawLoss(yarnMore, used[yarnMore]);
    }
    if (leewayMatters) {
      cost +=
          problem.supply().leewayLoss(yarnLess, usedLess)
              - leewayLosses[yarnLess]
              + problem.supply().leewayLoss(yarnMore, usedMore)
              - leewayLosses[yarnMore];
    }
    return cost;
  }

  /** Makes the change. */
  void apply(int yarnLess, long less, int yarnMore, long more) {
    set(yarnLess, used[yarnLess] - less);
    set(yarnMore, used[yarnMore] + more);
  }

  private long overdrawLoss(int yarn, long use) {
    return (long) (pressure * problem.supply().overdrawLoss(yarn, use));
  }

  /** The penalty of all overdrawn yarns. */
  long overdrawLoss() {
    long loss = 0;
    for (int yarn = 0; yarn < yarns; yarn++) {
      loss += overdrawLoss(yarn, used[yarn]);
    }
    return loss;
  }

  /** What leeway loses for all yarns. */
  long leewayLoss() {
    return LongStream.of(leewayLosses).sum();
  }

  /** How hard an overdrawn yarn weighs against its usual penalty. */
  double pressure() {
    return pressure;
  }

  /** Sets how hard an overdrawn yarn weighs. */
  void setPressure(double times) {
    pressure = times;
  }

  /** Sets whether a yarn may be overdrawn at all once none is. */
  void bar(boolean bar) {
    barred = bar;
  }

  private void set(int yarn, long now) {
    overdrawn += (now > usable[yarn] ? 1 : 0) - (used[yarn] > usable[yarn] ? 1 : 0);
    used[yarn] = now;
    if (leewayMatters) {
      leewayLosses[yarn] = problem.supply().leewayLoss(yarn, now);
    }
  }
}
