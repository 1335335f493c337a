package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;

/**
 * Settles counts: takes two yarns and up to three groups of slots, and of all small exchanges
 * between the two yarns over those groups makes the one that leaves the least overdrawn, and among
 * those the one that loses least by balance, leeway and repeats. With three groups such exchanges
 * shift use by almost any length.
 */
final class CountExchange {

  private static final int GROUPS = 3;

  /** Most slots of a group that one exchange changes: while a yarn is overdrawn, and after. */
  private static final int REACH_OVERDRAWN = 5;

  private static final int REACH_WITHIN = 2;

  /** One in so many of the exchanges after that reaches as far nevertheless. */
  private static final int FAR_EVERY = 3;

  private final Problem problem;
  private final Domains domains;
  private final Draws draws;
  private final int yarns;
  private final int[] slotOfGroup;
  private final int[][] counts;
  private final int[] surplus;
  private final long[] used;
  private final EarlierCounts earlier;
  private final ExpectedRepeats repeats;
  private final double[] step = new double[GROUPS];
  private final int[] chosen = new int[GROUPS];
  private final int[] best = new int[GROUPS];
  private final int[] trial = new int[GROUPS];
  private int chosenCount;
  private int reach;
  private long bestOver;
  private long bestCost;
  private int ties;
  private boolean blind;

  /**
   * Where the exchanges have come to.
   *
   * @param cost what the counts cost, but for those of an earlier plan
   */
  record Standing(int[][] counts, int[] surplus, long[] used, long cost) {}

  /**
   * Sets up the exchanges.
   *
   * @param domains what slots are to take
   * @param slotOfGroup a slot of each group
   * @param counts count by group and yarn, changed in place
   * @param surplus count beyond target by layer x yarns + yarn, changed in place
   * @param used millimetres of each yarn used, changed in place
   * @param earlier what it costs to have other counts than before
   * @param repeats what the counts cost by repeats
   */
  CountExchange(
      Problem problem,
      Domains domains,
      Draws draws,
      int[] slotOfGroup,
      int[][] counts,
      int[] surplus,
      long[] used,
      EarlierCounts earlier,
      ExpectedRepeats repeats) {
    this.problem = problem;
    this.domains = domains;
    this.draws = draws;
    this.yarns = problem.yarns();
    this.slotOfGroup = slotOfGroup;
    this.counts = counts;
    this.surplus = surplus;
    this.used = used;
    this.earlier = earlier;
    this.repeats = repeats;
  }

  /**
   * Makes exchanges until nothing is overdrawn.
   *
   * @param tries most exchanges
   * @return whether nothing is overdrawn
   */
  boolean settle(int tries) {
    reach = REACH_OVERDRAWN;
    for (int i = 0; i < tries; i++) {
      int a = overdrawn();
      if (a < 0) {
        return true;
      }
      // Now and then any yarn, so that slack wanders to where it is needed.
      exchange(draws.below(4) == 0 ? draws.below(yarns) : a, draws.below(yarns));
    }
    return overdrawn() < 0;
  }

  /** Millimetres overdrawn of all yarns. */
  long overdrawnLength() {
    long over = 0;
    for (int yarn = 0; yarn < yarns; yarn++) {
      over += over(yarn, used[yarn]);
    }
    return over;
  }

  /**
   * Makes a number of exchanges that better balance and leeway and overdraw no more than before.
   */
  void improve(int tries) {
    for (int i = 0; i < tries; i++) {
      reach = i % FAR_EVERY == 0 ? REACH_OVERDRAWN : REACH_WITHIN;
      exchange(draws.below(2) == 0 ? draws.below(yarns) : scarcest(), draws.below(yarns));
    }
  }

  /** Makes a number of exchanges, whatever they cost, that overdraw no more than before. */
  void shake(int tries) {
    reach = REACH_WITHIN;
    blind = true;
    for (int i = 0; i < tries; i++) {
      exchange(draws.below(yarns), draws.below(yarns));
    }
    blind = false;
  }

  /** What the counts cost, but for those of an earlier plan. */
  long cost() {
    long cost = Math.round(repeats.of(counts));
    for (int yarn = 0; yarn < yarns; yarn++) {
      cost += problem.supply().leewayLoss(yarn, used[yarn]);
    }
    for (int i = 0; i < surplus.length; i++) {
      cost += problem.balance().cost()[i / yarns] * Math.abs(surplus[i]);
    }
    return cost;
  }

  /** Where counts, surplus and use stand, to come back to. */
  Standing standing() {
    int[][] copy = Arrays.stream(counts).map(int[]::clone).toArray(int[][]::new);
    return new Standing(copy, surplus.clone(), used.clone(), cost());
  }

  /** Goes back to where the exchanges stood. */
  void restore(Standing standing) {
    for (int group = 0; group < counts.length; group++) {
      System.arraycopy(standing.counts()[group], 0, counts[group], 0, yarns);
    }
    System.arraycopy(standing.surplus(), 0, surplus, 0, surplus.length);
    System.arraycopy(standing.used(), 0, used, 0, used.length);
  }

  /** The yarn that loses most leeway; of equals, any. */
  private int scarcest() {
    int found = 0;
    long most = -1;
    int seen = 0;
    for (int yarn = 0; yarn < yarns; yarn++) {
      long loss = problem.supply().leewayLoss(yarn, used[yarn]);
      seen = loss == most ? seen + 1 : 1;
      if (loss > most || loss == most && draws.below(seen) == 0) {
        found = yarn;
        most = loss;
      }
    }
    return found;
  }

  private int overdrawn() {
    int found = -1;
    int seen = 0;
    for (int yarn = 0; yarn < yarns; yarn++) {
      if (over(yarn, used[yarn]) > 0 && draws.below(++seen) == 0) {
        found = yarn;
      }
    }
    return found;
  }

  private boolean choose(int a, int b) {
    chosenCount = 0;
    for (int tries = 0; tries < 4 * GROUPS && chosenCount < GROUPS; tries++) {
      int group = draws.below(slotOfGroup.length);
      boolean fits =
          domains.allows(slotOfGroup[group], a)
              && domains.allows(slotOfGroup[group], b)
              && counts[group][a] + counts[group][b] > 0;
      for (int i = 0; i < chosenCount; i++) {
        fits &= chosen[i] != group;
      }
      if (fits) {
        chosen[chosenCount++] = group;
      }
    }
    return chosenCount > 0;
  }

  private void exchange(int a, int b) {
    if (a == b || !choose(a, b)) {
      return;
    }
    for (int i = 0; i < chosenCount; i++) {
      step[i] = repeats.step(chosen[i], counts, a, b);
    }
    bestOver = Long.MAX_VALUE;
    bestCost = Long.MAX_VALUE;
    enumerate(0, a, b, used[a], used[b]);
    for (int i = 0; i < chosenCount; i++) {
      int slot = slotOfGroup[chosen[i]];
      counts[chosen[i]][a] -= best[i];
      counts[chosen[i]][b] += best[i];
      used[a] -= best[i] * problem.supply().need(slot, a);
      used[b] += best[i] * problem.supply().need(slot, b);
      shift(i, a, b, best[i]);
    }
  }

  /**
   * Tries all exchanges over the groups from the i-th on; the surplus goes along with the trial.
   */
  private void enumerate(int i, int a, int b, long usedA, long usedB) {
    if (i == chosenCount) {
      keepIfBetter(a, b, usedA, usedB);
      return;
    }
    int group = chosen[i];
    long needA = problem.supply().need(slotOfGroup[group], a);
    long needB = problem.supply().need(slotOfGroup[group], b);
    int least = -Math.min(reach, counts[group][b]);
    int most = Math.min(reach, counts[group][a]);
    for (int move = least; move <= most; move++) {
      trial[i] = move;
      shift(i, a, b, move);
      enumerate(i + 1, a, b, usedA - move * needA, usedB + move * needB);
      shift(i, a, b, -move);
    }
  }

  private void keepIfBetter(int a, int b, long usedA, long usedB) {
    long over = over(a, usedA) + over(b, usedB);
    if (over > bestOver) {
      return;
    }
    long cost =
        blind
            ? 0
            : balance(a, b)
                + upset(a, b)
                + repeats()
                + problem.supply().leewayLoss(a, usedA)
                + problem.supply().leewayLoss(b, usedB);
    if (over == bestOver && cost > bestCost) {
      return;
    }
    ties = over == bestOver && cost == bestCost ? ties + 1 : 1;
    bestOver = over;
    bestCost = cost;
    if (draws.below(ties) == 0) {
      System.arraycopy(trial, 0, best, 0, chosenCount);
    }
  }

  private long upset(int a, int b) {
    long upset = 0;
    for (int i = 0; i < chosenCount && earlier.any(); i++) {
      upset += earlier.shift(chosen[i], counts[chosen[i]], a, b, trial[i]);
    }
    return upset;
  }

  private long repeats() {
    double cost = 0;
    for (int i = 0; i < chosenCount && repeats.any(); i++) {
      double each = step[i];
      for (int j = 0; j < chosenCount; j++) {
        each += trial[j] * repeats.bend(chosen[i], chosen[j]);
      }
      cost += trial[i] * each;
    }
    return Math.round(cost);
  }

  private long balance(int a, int b) {
    long balance = 0;
    for (int i = 0; i < chosenCount; i++) {
      int layer = layer(i);
      boolean seen = false;
      for (int before = 0; before < i; before++) {
        seen |= layer(before) == layer;
      }
      if (!seen) {
        int row = layer * yarns;
        balance +=
            problem.balance().cost()[layer]
                * (Math.abs(surplus[row + a]) + Math.abs(surplus[row + b]));
      }
    }
    return balance;
  }

  private void shift(int i, int a, int b, int move) {
    int row = layer(i) * yarns;
    int weight = problem.slots().weight(problem.slots().orbit()[slotOfGroup[chosen[i]]]);
    surplus[row + a] -= move * weight;
    surplus[row + b] += move * weight;
  }

  private int layer(int i) {
    return problem.slots().layer()[slotOfGroup[chosen[i]]];
  }

  private long over(int yarn, long use) {
    return Math.max(0, use - problem.supply().usable()[yarn]);
  }
}
