package lozengy.solver.search;

import lozengy.solver.problem.Problem;

/**
 * Brings counts within stock where it is tight: takes an overdrawn yarn, another yarn and up to
 * three groups of slots, and of all small exchanges between the two yarns over those groups makes
 * the one that leaves the least overdrawn. With three groups such exchanges shift use by almost any
 * length.
 */
final class CountRepair {

  private static final int GROUPS = 3;
  private static final int REACH = 5;

  private final Problem problem;
  private final Draws draws;
  private final int[] slotOfGroup;
  private final int[][] counts;
  private final long[] used;
  private final int[] chosen = new int[GROUPS];
  private final int[] best = new int[GROUPS];
  private final int[] trial = new int[GROUPS];
  private long bestOver;
  private int ties;

  /**
   * Sets up a repair.
   *
   * @param slotOfGroup a slot of each group
   * @param counts count by group and yarn, changed in place
   * @param used millimetres of each yarn used, changed in place
   */
  CountRepair(Problem problem, Draws draws, int[] slotOfGroup, int[][] counts, long[] used) {
    this.problem = problem;
    this.draws = draws;
    this.slotOfGroup = slotOfGroup;
    this.counts = counts;
    this.used = used;
  }

  /** Repairs for a number of tries; whether nothing is overdrawn any more. */
  boolean repair(int tries) {
    for (int i = 0; i < tries; i++) {
      int a = overdrawn();
      if (a < 0) {
        return true;
      }
      // Now and then any yarn, so that slack wanders to where it is needed.
      if (draws.below(4) == 0) {
        a = draws.below(used.length);
      }
      int b = draws.below(used.length);
      if (a != b && choose(a, b)) {
        exchange(a, b);
      }
    }
    return overdrawn() < 0;
  }

  private int overdrawn() {
    int found = -1;
    int seen = 0;
    for (int yarn = 0; yarn < used.length; yarn++) {
      if (used[yarn] > problem.usable()[yarn] && draws.below(++seen) == 0) {
        found = yarn;
      }
    }
    return found;
  }

  private boolean choose(int a, int b) {
    int found = 0;
    for (int tries = 0; tries < 12 && found < GROUPS; tries++) {
      int group = draws.below(slotOfGroup.length);
      boolean fits =
          problem.domains().allows(slotOfGroup[group], a)
              && problem.domains().allows(slotOfGroup[group], b)
              && counts[group][a] + counts[group][b] > 0;
      for (int i = 0; i < found; i++) {
        fits &= chosen[i] != group;
      }
      if (fits) {
        chosen[found++] = group;
      }
    }
    for (int i = found; i < GROUPS && found > 0; i++) {
      chosen[i] = -1;
    }
    return found > 0;
  }

  private void exchange(int a, int b) {
    bestOver = over(a, used[a]) + over(b, used[b]);
    ties = 0;
    best[0] = 0;
    best[1] = 0;
    best[2] = 0;
    enumerate(0, a, b, used[a], used[b]);
    for (int i = 0; i < GROUPS; i++) {
      if (chosen[i] >= 0 && best[i] != 0) {
        int slot = slotOfGroup[chosen[i]];
        counts[chosen[i]][a] -= best[i];
        counts[chosen[i]][b] += best[i];
        used[a] -= (long) best[i] * problem.need(slot, a);
        used[b] += (long) best[i] * problem.need(slot, b);
      }
    }
  }

  private void enumerate(int i, int a, int b, long usedA, long usedB) {
    if (i == GROUPS || chosen[i] < 0) {
      for (int rest = i; rest < GROUPS; rest++) {
        trial[rest] = 0;
      }
      long over = over(a, usedA) + over(b, usedB);
      if (over > bestOver) {
        return;
      }
      ties = over == bestOver ? ties + 1 : 1;
      bestOver = over;
      if (draws.below(ties) == 0) {
        System.arraycopy(trial, 0, best, 0, GROUPS);
      }
      return;
    }
    int group = chosen[i];
    int needA = problem.need(slotOfGroup[group], a);
    int needB = problem.need(slotOfGroup[group], b);
    int most = Math.min(REACH, counts[group][a]);
    for (int move = -Math.min(REACH, counts[group][b]); move <= most; move++) {
      trial[i] = move;
      enumerate(i + 1, a, b, usedA - (long) move * needA, usedB + (long) move * needB);
    }
  }

  private long over(int yarn, long use) {
    return Math.max(0, use - problem.usable()[yarn]);
  }
}
