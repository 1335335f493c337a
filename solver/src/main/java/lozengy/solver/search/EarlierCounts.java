package lozengy.solver.search;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Problem;

/**
 * How often an earlier plan has each yarn in each group of like slots, and what it costs to have
 * other counts: where a group shows a yarn less often than before, so many of its rounds must
 * change.
 */
final class EarlierCounts {

  private final int[] kept;
  private final int[][] before;
  private final long[] changeCost;

  private EarlierCounts(int[] kept, int[][] before, long[] changeCost) {
    this.kept = kept;
    this.before = before;
    this.changeCost = changeCost;
  }

  /**
   * Counts.
   *
   * @param groups groups of like slots
   * @param kept the yarn that each slot had and can keep, or OPEN; null where there is none
   * @param changeCost cost of a round's change
   */
  static EarlierCounts of(Problem problem, List<int[]> groups, int[] kept, long changeCost) {
    if (kept == null) {
      return new EarlierCounts(null, null, null);
    }
    int[][] before = new int[groups.size()][problem.yarns()];
    long[] costs = new long[groups.size()];
    for (int group = 0; group < before.length; group++) {
      for (int slot : groups.get(group)) {
        if (kept[slot] != Sequences.OPEN) {
          before[group][kept[slot]]++;
        }
      }
      int slot = groups.get(group)[0];
      costs[group] = changeCost * problem.slots().weight(problem.slots().orbit()[slot]);
    }
    return new EarlierCounts(kept, before, costs);
  }

  /** Whether there is an earlier plan. */
  boolean any() {
    return kept != null;
  }

  /** The yarn that each slot had and can keep, or OPEN. */
  int[] kept() {
    return kept;
  }

  /** What it costs to move one slot of a group from one yarn to another. */
  long shift(int group, int[] counts, int from, int to) {
    return any() ? shift(group, counts, from, to, 1) : 0;
  }

  /** What it costs to move so many slots of a group from one yarn to another; below 0 back. */
  long shift(int group, int[] counts, int from, int to, int times) {
    int[] was = before[group];
    int keptNow = Math.min(counts[from], was[from]) + Math.min(counts[to], was[to]);
    int keptThen =
        Math.min(counts[from] - times, was[from]) + Math.min(counts[to] + times, was[to]);
    return (keptNow - keptThen) * changeCost[group];
  }

  /**
   * Lets slots keep their yarn as long as the counts allow.
   *
   * @param slots the slots of a group, in the order in which they are served
   * @param counts how often each yarn is wanted; less those that are dealt, afterwards
   * @param assignment takes the yarns
   * @return the slots that are left
   */
  int[] deal(int[] slots, int[] counts, int[] assignment) {
    if (!any()) {
      return slots;
    }
    int[] left = new int[slots.length];
    int count = 0;
    for (int slot : slots) {
      if (kept[slot] != Sequences.OPEN && counts[kept[slot]] > 0) {
        assignment[slot] = kept[slot];
        counts[kept[slot]]--;
      } else {
        left[count++] = slot;
      }
    }
    return Arrays.copyOf(left, count);
  }
}
