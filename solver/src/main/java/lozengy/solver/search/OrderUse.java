package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.OrderCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * How often borders come again at each offset, with what the order of the blanket costs: kept as
 * borders change. To tell and to make a change is O(places at the offsets from the piece). Nothing
 * allocates.
 */
final class OrderUse {

  private final OrderCosts costs;
  private final int[] orbit;
  private final int[] layer;
  private final long[][] worth;
  private final int[] start;
  private final int[] other;
  private final int[] offset;
  private final int[] equal;
  private long sum;

  private OrderUse(OrderCosts costs, int[] orbit, int[] layer) {
    this.costs = costs;
    this.orbit = orbit;
    this.layer = layer;
    this.worth = costs.worth();
    this.start = costs.start();
    this.other = costs.other();
    this.offset = costs.offset();
    this.equal = new int[worth.length];
  }

  /** The order of a problem, or null where none is asked for. */
  static OrderUse of(Problem problem) {
    Slots slots = problem.slots();
    return problem.order() == null
        ? null
        : new OrderUse(problem.order(), slots.orbit(), slots.layer());
  }

  /** Counts an assignment afresh. */
  void reset(int[] yarn) {
    System.arraycopy(costs.constant(), 0, equal, 0, equal.length);
    for (int slot = 0; slot < yarn.length; slot++) {
      for (int i = first(slot); i < end(slot); i++) {
        equal[offset[i]] += other[i] > slot && yarn[other[i]] == yarn[slot] ? 1 : 0;
      }
    }
    sum = 0;
    for (int number = 0; number < equal.length; number++) {
      sum += worth[number][equal[number]];
    }
  }

  private int first(int slot) {
    return start[orbit[slot]];
  }

  /** Only borders have entries. */
  private int end(int slot) {
    return layer[slot] == 0 ? start[orbit[slot] + 1] : first(slot);
  }

  /** The cost of giving a slot another yarn. */
  long change(int slot, int from, int to, int[] yarn) {
    long after = sum;
    int end = end(slot);
    for (int i = first(slot); i < end; ) {
      int number = offset[i];
      int more = 0;
      do {
        int shown = yarn[other[i++]];
        more += (shown == to ? 1 : 0) - (shown == from ? 1 : 0);
      } while (i < end && offset[i] == number);
      if (more != 0) {
        after += worth[number][equal[number] + more] - worth[number][equal[number]];
      }
    }
    return costs.lost(after) - costs.lost(sum);
  }

  /**
   * Gives a slot a yarn that it has not; what the slot itself shows in {@code yarn} makes no
   * difference.
   */
  void apply(int slot, int from, int to, int[] yarn) {
    int end = end(slot);
    for (int i = first(slot); i < end; i++) {
      int shown = yarn[other[i]];
      if (shown == to || shown == from) {
        int number = offset[i];
        int before = equal[number];
        equal[number] += shown == to ? 1 : -1;
        sum += worth[number][equal[number]] - worth[number][before];
      }
    }
  }

  /** The cost of exchanging the yarns of two slots; {@code yarn} is left as it was. */
  long exchange(int slotA, int slotB, int[] yarn) {
    int a = yarn[slotA];
    int b = yarn[slotB];
    if (a == b) {
      return 0;
    }
    long before = costs.lost(sum);
    apply(slotA, a, b, yarn);
    yarn[slotA] = b;
    long delta = costs.lost(sum) - before + change(slotB, b, a, yarn);
    yarn[slotA] = a;
    apply(slotA, b, a, yarn);
    return delta;
  }

  /** The first count that is not what it is from scratch, in words; or null. */
  String firstWrongEntry(int[] yarn) {
    OrderUse fresh = new OrderUse(costs, orbit, layer);
    fresh.reset(yarn);
    int at = Arrays.mismatch(equal, fresh.equal);
    return at < 0
        ? null
        : "equal borders at offset %d kept %d, from scratch %d"
            .formatted(at, equal[at], fresh.equal[at]);
  }
}
