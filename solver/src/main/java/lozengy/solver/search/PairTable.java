package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * For each slot and yarn, what the pairs with other pieces would cost if the slot had that yarn:
 * kept as yarns change, so that a change's cost is two look-ups. To keep it is O(pairs of the
 * slot). No method allocates, {@link #rebuild} apart.
 */
final class PairTable {

  /** Lattice distance, in either coordinate, beyond which two pieces are no pair. */
  private static final int REACH = 4;

  private final Problem problem;
  private final int yarns;
  private final int[] piece;
  private final int[] lightStart;
  private final int[] lightSlot;
  private final int[] lightCost;
  private final int[] seamStart;
  private final int[] seamSlot;
  private final int[] seamCost;
  private final boolean[] clash;
  private final int[] x;
  private final int[] y;
  private final int[] cost;

  PairTable(Problem problem) {
    this.problem = problem;
    this.yarns = problem.yarns();
    Slots slots = problem.slots();
    this.piece = slots.piece();
    PairCosts pairs = problem.pairs();
    this.lightStart = pairs.lightStart();
    this.lightSlot = pairs.lightSlot();
    this.lightCost = pairs.lightCost();
    this.seamStart = pairs.seamStart();
    this.seamSlot = pairs.seamSlot();
    this.seamCost = pairs.seamCost();
    this.clash = new boolean[yarns * yarns];
    for (int a = 0; a < yarns; a++) {
      for (int b = 0; b < yarns; b++) {
        clash[a * yarns + b] = problem.blanket().bordersClash(a, b);
      }
    }
    // images of two pieces can be a pair wherever the pieces themselves lie
    this.x = new int[slots.pieces()];
    this.y = new int[slots.pieces()];
    for (int p = 0; p < x.length && !slots.tied(); p++) {
      x[p] = problem.blanket().place(p).x();
      y[p] = problem.blanket().place(p).y();
    }
    this.cost = new int[slots.count() * yarns];
  }

  /** Works the table out afresh, with what slots cost by themselves. */
  void rebuild(int[] yarn) {
    Arrays.fill(cost, 0);
    if (problem.unaryCost() != null) {
      System.arraycopy(problem.unaryCost(), 0, cost, 0, cost.length);
    }
    for (int slot = 0; slot < yarn.length; slot++) {
      int row = slot * yarns;
      for (int i = lightStart[slot]; i < lightStart[slot + 1]; i++) {
        cost[row + yarn[lightSlot[i]]] += lightCost[i];
      }
      for (int i = seamStart[slot]; i < seamStart[slot + 1]; i++) {
        int other = yarn[seamSlot[i]] * yarns;
        for (int b = 0; b < yarns; b++) {
          cost[row + b] += seamCost[other + b];
        }
      }
    }
  }

  /** What it costs to change a slot from one yarn to another, all else as it is. */
  long change(int slot, int from, int to) {
    int row = slot * yarns;
    return cost[row + to] - cost[row + from];
  }

  /** What it costs to exchange the yarns a and b of two slots of different pieces. */
  long exchange(int slotA, int slotB, int a, int b, boolean sameLayer) {
    long told = change(slotA, a, b) + change(slotB, b, a);
    return sameLayer ? told - countedTwice(slotA, slotB, a, b) : told;
  }

  /** What both slots' entries count of the pair that they make themselves, if they are one. */
  private long countedTwice(int slotA, int slotB, int a, int b) {
    int pieceA = piece[slotA];
    int pieceB = piece[slotB];
    if (Math.abs(x[pieceA] - x[pieceB]) > REACH || Math.abs(y[pieceA] - y[pieceB]) > REACH) {
      return 0;
    }
    long twice = 0;
    for (int i = lightStart[slotA]; i < lightStart[slotA + 1]; i++) {
      if (lightSlot[i] == slotB) {
        twice += 2L * lightCost[i];
      }
    }
    for (int i = seamStart[slotA]; i < seamStart[slotA + 1]; i++) {
      if (seamSlot[i] == slotB) {
        twice += seamCost[a * yarns + a] + seamCost[b * yarns + b] - 2L * seamCost[a * yarns + b];
      }
    }
    return twice;
  }

  /**
   * Keeps the table as a slot changes its yarn.
   *
   * @param yarn yarns of all slots
   * @return repeats on seams that come of it, less those that go
   */
  int apply(int slot, int from, int to, int[] yarn) {
    for (int i = lightStart[slot]; i < lightStart[slot + 1]; i++) {
      int row = lightSlot[i] * yarns;
      cost[row + from] -= lightCost[i];
      cost[row + to] += lightCost[i];
    }
    int fromRow = from * yarns;
    int toRow = to * yarns;
    int repeats = 0;
    for (int i = seamStart[slot]; i < seamStart[slot + 1]; i++) {
      int other = seamSlot[i];
      int row = other * yarns;
      for (int b = 0; b < yarns; b++) {
        cost[row + b] += seamCost[toRow + b] - seamCost[fromRow + b];
      }
      repeats += clash[toRow + yarn[other]] ? 1 : 0;
      repeats -= clash[fromRow + yarn[other]] ? 1 : 0;
    }
    return repeats;
  }

  /** Repeats on a slot's seams. */
  int repeats(int slot, int[] yarn) {
    int repeats = 0;
    for (int i = seamStart[slot]; i < seamStart[slot + 1]; i++) {
      repeats += clash[yarn[slot] * yarns + yarn[seamSlot[i]]] ? 1 : 0;
    }
    return repeats;
  }

  /** The first entry that is not what it is from scratch, in words; or null. */
  String firstWrongEntry(int[] yarn) {
    PairTable fresh = new PairTable(problem);
    fresh.rebuild(yarn);
    int at = Arrays.mismatch(cost, fresh.cost);
    return at < 0
        ? null
        : "pair cost of slot %d with yarn %d kept %d, from scratch %d"
            .formatted(at / yarns, at % yarns, cost[at], fresh.cost[at]);
  }

  /** Spoils an entry, for tests of the assertions. */
  void spoil(int slot, int by) {
    cost[slot * yarns] += by;
  }
}
