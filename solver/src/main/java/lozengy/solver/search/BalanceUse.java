package lozengy.solver.search;

import lozengy.solver.problem.Balance;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * How far each layer's counts of yarns are off their targets, with what that costs. To tell and to
 * make a change is O(1). Nothing allocates.
 */
final class BalanceUse {

  private final Balance balance;
  private final int yarns;
  private final int[] layer;
  private final int[] weight;
  private final boolean tied;
  private final long[] price;
  private final int[] surplus;

  BalanceUse(Problem problem) {
    Slots slots = problem.slots();
    this.balance = problem.balance();
    this.yarns = problem.yarns();
    this.layer = slots.layer();
    this.weight = new int[slots.count()];
    for (int slot = 0; slot < weight.length; slot++) {
      weight[slot] = slots.weight(slots.orbit()[slot]);
    }
    this.tied = slots.tied();
    this.price = balance.cost();
    this.surplus = new int[balance.targets().length];
  }

  /** Counts an assignment afresh. */
  void reset(int[] assignment) {
    for (int i = 0; i < surplus.length; i++) {
      surplus[i] = -balance.targets()[i];
    }
    for (int slot = 0; slot < assignment.length; slot++) {
      surplus[layer[slot] * yarns + assignment[slot]] += weight[slot];
    }
  }

  /** The cost of giving a slot another yarn. */
  long change(int slot, int from, int to) {
    int ofLayer = layer[slot];
    int row = ofLayer * yarns;
    if (tied) {
      int less = surplus[row + from];
      int more = surplus[row + to];
      int off = Math.abs(less - weight[slot]) - Math.abs(less);
      off += Math.abs(more + weight[slot]) - Math.abs(more);
      return off * price[ofLayer];
    }
    int steps = (surplus[row + from] > 0 ? -1 : 1) + (surplus[row + to] >= 0 ? 1 : -1);
    return steps * price[ofLayer];
  }

  /** Gives a slot another yarn. */
  void apply(int slot, int from, int to) {
    surplus[layer[slot] * yarns + from] -= weight[slot];
    surplus[layer[slot] * yarns + to] += weight[slot];
  }
}
