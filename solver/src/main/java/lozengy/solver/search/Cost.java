package lozengy.solver.search;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The cost of an assignment from scratch, without anything that the search keeps as it goes: the
 * second opinion on its deltas. O(slots + pairs).
 *
 * @param total cost units with all penalties
 * @param hard broken rules: repeats on seams and within pieces, surplus copies, overdrawn yarns;
 *     those between fixed slots alone are left out, they are facts
 */
record Cost(long total, long hard) {

  /**
   * Adds up.
   *
   * @param pressure how hard an overdrawn yarn weighs, 1 as usual
   */
  static Cost of(Problem problem, int[] yarn, double pressure) {
    Tally tally = new Tally(problem, yarn);
    tally.pressure = pressure;
    tally.pairs();
    tally.inner();
    tally.balance();
    tally.stock();
    tally.sequences();
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

    Tally(Problem problem, int[] yarn) {
      this.problem = problem;
      this.slots = problem.slots();
      this.yarns = problem.yarns();
      this.yarn = yarn;
    }

    private boolean fixed(int slot) {
      return slots.fixedYarn()[slot] != Sequences.OPEN;
    }

    private void pairs() {
      PairCosts pairs = problem.pairs();
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
            if (problem.blanket().bordersClash(yarn[slot], yarn[other])) {
              countRepeat(slot, other);
            }
          }
        }
        if (problem.unaryCost() != null) {
          total += problem.unaryCost()[slot * yarns + yarn[slot]];
        }
      }
    }

    /**
     * Counts a repeat as a broken rule; one between two fixed slots is a fact and costs nothing.
     */
    private void countRepeat(int slot, int other) {
      if (fixed(slot) && fixed(other)) {
        total -= problem.hardCost();
      } else {
        hard++;
      }
    }

    private void inner() {
      boolean adjacentDiffer = problem.adjacentDiffer();
      for (int piece = 0; piece < slots.pieces(); piece++) {
        int end = slots.pieceStart()[piece + 1];
        for (int slot = slots.pieceStart()[piece]; slot < end; slot++) {
          for (int other = slot + 1; other < end; other++) {
            boolean repeat = yarn[slot] == yarn[other];
            boolean adjacent = other == slot + 1;
            if (adjacent) {
              total += problem.innerCost()[yarn[slot] * yarns + yarn[other]];
            } else if (problem.allDiffer() && repeat) {
              total += problem.hardCost();
            }
            boolean differ = adjacent ? adjacentDiffer : problem.allDiffer();
            if (differ && repeat) {
              countRepeat(slot, other);
            }
          }
        }
      }
    }

    private void balance() {
      int[] counts = new int[problem.targets().length];
      for (int slot = 0; slot < yarn.length; slot++) {
        counts[slots.layer()[slot] * yarns + yarn[slot]]++;
      }
      for (int i = 0; i < counts.length; i++) {
        total += problem.balanceCost()[i / yarns] * Math.abs(counts[i] - problem.targets()[i]);
      }
    }

    private void stock() {
      long[] used = problem.fixedUse().clone();
      for (int slot = 0; slot < yarn.length; slot++) {
        used[yarn[slot]] += problem.need(slot, yarn[slot]);
      }
      long leeway = 0;
      for (int y = 0; y < yarns; y++) {
        total += (long) (pressure * problem.overdrawLoss(y, used[y]));
        hard += used[y] > problem.usable()[y] ? 1 : 0;
        leeway = Math.max(leeway, problem.leewayLoss(y, used[y]));
      }
      total += leeway;
    }

    private void sequences() {
      Collection<int[]> counts = sequenceCounts(problem, yarn);
      total += problem.copyCost() * (slots.pieces() - counts.size());
      for (int[] count : counts) {
        total += (long) problem.hardCost() * Math.max(0, count[0] - problem.copies());
        hard += Math.max(0, count[0] - problem.copies());
      }
      long facts = surplusFacts(problem, yarn);
      hard -= facts;
      total -= facts * problem.hardCost();
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
    Map<List<Integer>, int[]> counts = new HashMap<>();
    for (int piece = 0; piece < slots.pieces(); piece++) {
      List<Integer> sequence =
          Arrays.stream(yarn, slots.pieceStart()[piece], slots.pieceStart()[piece + 1])
              .boxed()
              .toList();
      int[] count = counts.computeIfAbsent(sequence, s -> new int[2]);
      count[0]++;
      count[1] += problem.blanket().state(piece) != PieceState.PLANNED ? 1 : 0;
    }
    return counts.values();
  }
}
