package lozengy.solver.search;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.OrderCosts;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The cost of an assignment from scratch, without anything that the search keeps as it goes: the
 * second opinion on its deltas. O(slots + pairs).
 *
 * @param total cost units with all penalties
 * @param hard broken rules: clashes of rounds, surplus copies, pieces too many or too few for a
 *     count, overdrawn yarns; those between fixed slots alone are left out, they are facts
 */
record Cost(long total, long hard) {

  /**
   * Adds up.
   *
   * @param pressure how hard an overdrawn yarn weighs, 1 as usual
   */
  static Cost of(Problem problem, int[] yarn, double pressure) {
    Tally tally = new Tally(problem, yarn);
    tally.total = problem.costs().constant();
    tally.pressure = pressure;
    tally.pairs();
    tally.clashes();
    tally.inner();
    tally.balance();
    tally.stock();
    tally.sequences();
    tally.counts();
    tally.order();
    return new Cost(tally.total, tally.hard);
  }

  /** Adds the parts up. */
  private static final class Tally {

    private final Problem problem;
    private final Slots slots;
    private final int yarns;
    private final int[] yarn;
    private long total;
    private long hard;
    private double pressure;
    private final int[] laid;

    Tally(Problem problem, int[] yarn) {
      this.problem = problem;
      this.slots = problem.slots();
      this.yarns = problem.yarns();
      this.yarn = yarn;
      this.laid = problem.pile().laid(slots, problem.domains(), yarn);
    }

    private void pairs() {
      PairCosts pairs = problem.costs().pairs();
      for (int slot = 0; slot < yarn.length; slot++) {
        for (int i = pairs.lightStart()[slot]; i < pairs.lightStart()[slot + 1]; i++) {
          int other = pairs.lightSlot()[i];
          if (other > slot && yarn[other] == yarn[slot]) {
            total += pairs.lightCost()[i];
          }
        }
        for (int i = pairs.seamStart()[slot]; i < pairs.seamStart()[slot + 1]; i++) {
          int other = pairs.seamSlot()[i];
          if (other > slot) {
            total += pairs.seamCost()[yarn[slot] * yarns + yarn[other]];
          }
        }
        if (problem.costs().unary() != null) {
          total += problem.costs().unary()[slot * yarns + yarn[slot]];
        }
      }
    }

    /** Clashes; what a finished piece of the pile shows within itself is a fact. */
    private void clashes() {
      Clashes clashes = problem.clashes();
      for (int slot = 0; slot < yarn.length; slot++) {
        int orbit = slots.orbit()[slot];
        for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1]; i++) {
          int other = clashes.slot()[i];
          boolean fact = slots.orbit()[other] == orbit && laid[orbit] >= 0;
          if (other > slot && !fact && clashes.bars(i, yarn[slot], yarn[other])) {
            total += (long) clashes.times()[i] * problem.prices().hard();
            hard++;
          }
        }
      }
    }

    private void inner() {
      for (int orbit = 0; orbit < slots.orbits(); orbit++) {
        int border = slots.border(orbit);
        for (int slot = slots.orbitStart()[orbit]; slot < border; slot++) {
          total +=
              (long) slots.weight(orbit)
                  * problem.costs().inner()[yarn[slot] * yarns + yarn[slot + 1]];
        }
      }
    }

    private void balance() {
      int[] counts = new int[problem.balance().targets().length];
      for (int slot = 0; slot < yarn.length; slot++) {
        counts[slots.layer()[slot] * yarns + yarn[slot]] += slots.weight(slots.orbit()[slot]);
      }
      for (int i = 0; i < counts.length; i++) {
        total +=
            problem.balance().cost()[i / yarns]
                * Math.abs(counts[i] - problem.balance().targets()[i]);
      }
    }

    private void stock() {
      long[] used = problem.supply().fixedUse().clone();
      for (int slot = 0; slot < yarn.length; slot++) {
        used[yarn[slot]] += problem.supply().need(slot, yarn[slot]);
      }
      for (int y = 0; y < yarns; y++) {
        total += (long) (pressure * problem.supply().overdrawLoss(y, used[y]));
        hard += used[y] > problem.supply().usable()[y] ? 1 : 0;
        total += problem.supply().leewayLoss(y, used[y]);
      }
    }

    private void counts() {
      Sequences sequences = problem.sequences(yarn);
      for (ReadyCount count : ReadyCount.of(problem.blanket())) {
        int showing = 0;
        for (int orbit : count.pieces()) {
          showing += count.shown(sequences, orbit) ? 1 : 0;
        }
        int off = Math.max(0, showing - count.atMost()) + Math.max(0, count.atLeast() - showing);
        total += (long) off * problem.prices().hard();
        hard += off;
      }
    }

    /** Counts equal borders as the model does, place by place. */
    private void order() {
      OrderCosts order = problem.order();
      if (order == null) {
        return;
      }
      Sequences sequences = problem.sequences(yarn);
      long sum = 0;
      for (int offset = 0; offset < order.worth().length; offset++) {
        sum += order.worth()[offset][order.measure().equal(offset, sequences)];
      }
      total += order.lost(sum);
    }

    private void sequences() {
      Collection<int[]> counts = sequenceCounts(problem, yarn);
      total += problem.prices().copy() * (slots.orbits() - counts.size());
      for (int[] count : counts) {
        total += (long) problem.prices().hard() * Math.max(0, count[0] - problem.copies());
        hard += Math.max(0, count[0] - problem.copies());
      }
      long facts = surplusFacts(problem, yarn);
      hard -= facts;
      total -= facts * problem.prices().hard();
    }
  }

  /** Worked pieces beyond the allowed number of copies: facts that nothing can change. */
  static long surplusFacts(Problem problem, int[] yarn) {
    return sequenceCounts(problem, yarn).stream()
        .mapToLong(count -> Math.max(0, count[1] - problem.copies()))
        .sum();
  }

  /** For each sequence, the pieces that show it and how many of them are worked. */
  private static Collection<int[]> sequenceCounts(Problem problem, int[] yarn) {
    Slots slots = problem.slots();
    int[] laid = problem.pile().laid(slots, problem.domains(), yarn);
    Map<List<Integer>, int[]> counts = new HashMap<>();
    for (int orbit = 0; orbit < slots.orbits(); orbit++) {
      List<Integer> sequence =
          Arrays.stream(yarn, slots.orbitStart()[orbit], slots.orbitStart()[orbit + 1])
              .boxed()
              .toList();
      int[] count = counts.computeIfAbsent(sequence, s -> new int[2]);
      count[0]++;
      boolean worked =
          laid[orbit] >= 0 || problem.blanket().orbits().worked(slots.lead()[orbit]) >= 0;
      count[1] += worked ? 1 : 0;
    }
    return counts.values();
  }
}
