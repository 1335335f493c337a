package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * For each slot and yarn, what the slot would cost if it had that yarn, beside other pieces and
 * within its own: kept as yarns change, so that a change's cost is two look-ups. To keep it is
 * O(pairs of the slot + yarns). No method allocates, {@link #rebuild} apart.
 */
final class CostTable {

  /** Lattice distance, in either coordinate, beyond which two pieces are no pair. */
  private static final int REACH = 4;

  private final Problem problem;
  private final int yarns;
  private final int[] orbit;
  private final int[] layer;
  private final int[] orbitStart;
  private final int[] lightStart;
  private final int[] lightSlot;
  private final int[] lightCost;
  private final int[] seamStart;
  private final int[] seamSlot;
  private final int[] seamCost;
  private final int[] inner;
  private final Clashes clashes;
  private final int[] clashStart;
  private final int[] clashSlot;
  private final int[] clashCost;
  private final int[] relation;
  private final boolean[][] bars;
  private final int[][][] against;
  private final int[] weight;
  private final boolean clashAcross;
  private final long[] mostTwice;
  private final int[] x;
  private final int[] y;
  private final int[] cost;

  CostTable(Problem problem) {
    this.problem = problem;
    this.yarns = problem.yarns();
    Slots slots = problem.slots();
    this.orbit = slots.orbit();
    this.layer = slots.layer();
    this.orbitStart = slots.orbitStart();
    PairCosts pairs = problem.costs().pairs();
    this.lightStart = pairs.lightStart();
    this.lightSlot = pairs.lightSlot();
    this.lightCost = pairs.lightCost();
    this.seamStart = pairs.seamStart();
    this.seamSlot = pairs.seamSlot();
    this.seamCost = pairs.seamCost();
    this.inner = problem.costs().inner();
    this.clashes = problem.clashes();
    this.clashStart = clashes.start();
    this.clashSlot = clashes.slot();
    this.clashCost = new int[clashSlot.length];
    for (int i = 0; i < clashCost.length; i++) {
      clashCost[i] = clashes.times()[i] * problem.prices().hard();
    }
    this.relation = clashes.relation();
    this.bars = clashes.bars();
    this.against = clashes.against();
    this.weight = new int[slots.orbits()];
    // images of two pieces can be a pair wherever the pieces themselves lie
    this.x = new int[slots.orbits()];
    this.y = new int[slots.orbits()];
    for (int p = 0; p < x.length; p++) {
      weight[p] = slots.weight(p);
      x[p] = slots.tied() ? 0 : problem.blanket().place(p).x();
      y[p] = slots.tied() ? 0 : problem.blanket().place(p).y();
    }
    this.clashAcross = clashesBeyond();
    this.mostTwice = new long[problem.balance().cost().length];
    for (int slot = 0; slot < slots.count(); slot++) {
      for (int i = lightStart[slot]; i < lightStart[slot + 1]; i++) {
        mostTwice[layer[slot]] = Math.max(mostTwice[layer[slot]], 2L * lightCost[i]);
      }
    }
    addClashesTwice();
    this.cost = new int[slots.count() * yarns];
  }

  /** Whether rounds of pieces clash that lie too far apart to be a pair, or in unlike layers. */
  private boolean clashesBeyond() {
    for (int slot = 0; slot < layer.length; slot++) {
      for (int i = clashStart[slot]; i < clashStart[slot + 1]; i++) {
        int other = clashSlot[i];
        boolean far = apart(orbit[slot], orbit[other]);
        if (orbit[other] != orbit[slot] && (far || layer[other] != layer[slot])) {
          return true;
        }
      }
    }
    return false;
  }

  private void addClashesTwice() {
    long[] most = new long[mostTwice.length];
    for (int slot = 0; slot < layer.length; slot++) {
      for (int i = clashStart[slot]; i < clashStart[slot + 1]; i++) {
        if (orbit[clashSlot[i]] != orbit[slot]) {
          most[layer[slot]] = Math.max(most[layer[slot]], 2L * clashCost[i]);
        }
      }
    }
    for (int each = 0; each < most.length; each++) {
      mostTwice[each] += most[each];
    }
  }

  private boolean apart(int orbitA, int orbitB) {
    return Math.abs(x[orbitA] - x[orbitB]) > REACH || Math.abs(y[orbitA] - y[orbitB]) > REACH;
  }

  /** Works the table out afresh, with what slots cost by themselves. */
  void rebuild(int[] yarn) {
    Arrays.fill(cost, 0);
    if (problem.costs().unary() != null) {
      System.arraycopy(problem.costs().unary(), 0, cost, 0, cost.length);
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
      int p = orbit[slot];
      for (int other = orbitStart[p]; other < orbitStart[p + 1]; other++) {
        if (Math.abs(other - slot) == 1) {
          for (int b = 0; b < yarns; b++) {
            cost[row + b] += weight[p] * inner[yarn[other] * yarns + b];
          }
        }
      }
      for (int i = clashStart[slot]; i < clashStart[slot + 1]; i++) {
        for (int b : against[relation[i]][yarn[clashSlot[i]]]) {
          cost[row + b] += clashCost[i];
        }
      }
    }
  }

  /** What it costs to change a slot from one yarn to another, all else as it is. */
  int change(int slot, int from, int to) {
    int row = slot * yarns;
    return cost[row + to] - cost[row + from];
  }

  /** The same of what lies beside the slot's piece alone. */
  int beside(int slot, int from, int to, int[] yarn) {
    int p = orbit[slot];
    int within = 0;
    if (slot > orbitStart[p]) {
      int row = yarn[slot - 1] * yarns;
      within += inner[row + to] - inner[row + from];
    }
    if (slot + 1 < orbitStart[p + 1]) {
      int row = yarn[slot + 1] * yarns;
      within += inner[row + to] - inner[row + from];
    }
    within *= weight[p];
    for (int i = clashStart[slot]; i < clashStart[slot + 1]; i++) {
      if (orbit[clashSlot[i]] == p) {
        int now = yarn[clashSlot[i]];
        within += bars[relation[i]][to * yarns + now] ? clashCost[i] : 0;
        within -= bars[relation[i]][from * yarns + now] ? clashCost[i] : 0;
      }
    }
    return change(slot, from, to) - within;
  }

  /** The most that {@link #countedTwice} is for two slots of a layer, seams apart. */
  long mostTwice(int ofLayer) {
    return mostTwice[ofLayer];
  }

  /** What both slots' entries count, as they exchange a and b, of the pair that they make. */
  long countedTwice(int slotA, int slotB, int a, int b) {
    int orbitA = orbit[slotA];
    int orbitB = orbit[slotB];
    if (orbitA == orbitB) {
      return withinPiece(slotA, slotB, a, b);
    }
    if (!clashAcross && (layer[slotA] != layer[slotB] || apart(orbitA, orbitB))) {
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
    return twice + clashesTwice(slotA, slotB, a, b);
  }

  private long clashesTwice(int slotA, int slotB, int a, int b) {
    long twice = 0;
    for (int i = clashStart[slotA]; i < clashStart[slotA + 1]; i++) {
      if (clashSlot[i] == slotB) {
        boolean[] barred = bars[relation[i]];
        int same = (barred[a * yarns + a] ? 1 : 0) + (barred[b * yarns + b] ? 1 : 0);
        twice += (long) clashCost[i] * (same - (barred[a * yarns + b] ? 2 : 0));
      }
    }
    return twice;
  }

  private long withinPiece(int slotA, int slotB, int a, int b) {
    long twice =
        Math.abs(slotA - slotB) == 1
            ? inner[a * yarns + a] + inner[b * yarns + b] - 2L * inner[a * yarns + b]
            : 0;
    return weight[orbit[slotA]] * twice + clashesTwice(slotA, slotB, a, b);
  }

  /**
   * Keeps the table as a slot changes its yarn.
   *
   * @param yarn yarns of all slots
   * @return clashes that come of it, less those that go
   */
  int apply(int slot, int from, int to, int[] yarn) {
    for (int i = lightStart[slot]; i < lightStart[slot + 1]; i++) {
      int row = lightSlot[i] * yarns;
      cost[row + from] -= lightCost[i];
      cost[row + to] += lightCost[i];
    }
    applyWithin(slot, from, to);
    for (int i = seamStart[slot]; i < seamStart[slot + 1]; i++) {
      applyRow(seamSlot[i], seamCost, from, to, 1);
    }
    return applyClashes(slot, from, to, yarn);
  }

  private int applyClashes(int slot, int from, int to, int[] yarn) {
    int more = 0;
    for (int i = clashStart[slot]; i < clashStart[slot + 1]; i++) {
      int other = clashSlot[i];
      int row = other * yarns;
      int of = relation[i];
      for (int b : against[of][from]) {
        cost[row + b] -= clashCost[i];
      }
      for (int b : against[of][to]) {
        cost[row + b] += clashCost[i];
      }
      more += bars[of][to * yarns + yarn[other]] ? 1 : 0;
      more -= bars[of][from * yarns + yarn[other]] ? 1 : 0;
    }
    return more;
  }

  private void applyWithin(int slot, int from, int to) {
    int p = orbit[slot];
    int start = orbitStart[p];
    int end = orbitStart[p + 1];
    if (slot > start) {
      applyRow(slot - 1, inner, from, to, weight[p]);
    }
    if (slot + 1 < end) {
      applyRow(slot + 1, inner, from, to, weight[p]);
    }
  }

  private void applyRow(int other, int[] matrix, int from, int to, int times) {
    int row = other * yarns;
    int fromRow = from * yarns;
    int toRow = to * yarns;
    for (int b = 0; b < yarns; b++) {
      cost[row + b] += times * (matrix[toRow + b] - matrix[fromRow + b]);
    }
  }

  /** Whether a slot clashes with another. */
  boolean clashes(int slot, int[] yarn) {
    for (int i = clashStart[slot]; i < clashStart[slot + 1]; i++) {
      if (bars[relation[i]][yarn[slot] * yarns + yarn[clashSlot[i]]]) {
        return true;
      }
    }
    return false;
  }

  /** The first entry that is not what it is from scratch, in words; or null. */
  String firstWrongEntry(int[] yarn) {
    CostTable fresh = new CostTable(problem);
    fresh.rebuild(yarn);
    int at = Arrays.mismatch(cost, fresh.cost);
    return at < 0
        ? null
        : "cost of slot %d with yarn %d kept %d, from scratch %d"
            .formatted(at / yarns, at % yarns, cost[at], fresh.cost[at]);
  }

  /** Spoils an entry, for tests of the assertions. */
  void spoil(int slot, int by) {
    cost[slot * yarns] += by;
  }
}
