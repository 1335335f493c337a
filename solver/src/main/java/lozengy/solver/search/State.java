package lozengy.solver.search;

import java.util.Arrays;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Place;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * An assignment of yarns to slots with everything that a move's cost needs at hand: for each slot
 * and yarn what the pairs with other pieces would cost, counts by layer, yarn used, and shared
 * sequences. To tell a change's cost is O(1), to make it O(pairs of the slot). No method allocates.
 */
final class State {

  /** Lattice distance, in either coordinate, beyond which two pieces are no pair. */
  private static final int REACH = 4;

  final Problem problem;
  final int[] yarn;
  private final int yarns;
  private final Slots slots;
  private final int[] piece;
  private final int[] layer;
  private final int[] pieceStart;
  private final int[] lightStart;
  private final int[] lightSlot;
  private final int[] lightCost;
  private final int[] seamStart;
  private final int[] seamSlot;
  private final int[] seamCost;
  private final int[] inner;
  private final boolean[] seamHard;
  private final boolean adjacentDiffer;
  private final boolean allDiffer;
  private final int[] x;
  private final int[] y;
  private final int[] pairCost;
  private final int[] surplus;
  private final long[] balanceCost;
  private final boolean sequencesMatter;
  private final long copyCost;
  private final long hardCost;
  final StockUse stock;
  final SequenceCounts sequences;
  private long surplusFacts;
  private long pairFaults;
  private long cost;

  State(Problem problem) {
    this.problem = problem;
    this.yarns = problem.yarns();
    this.slots = problem.slots();
    this.piece = slots.piece();
    this.layer = slots.layer();
    this.pieceStart = slots.pieceStart();
    PairCosts pairs = problem.pairs();
    this.lightStart = pairs.lightStart();
    this.lightSlot = pairs.lightSlot();
    this.lightCost = pairs.lightCost();
    this.seamStart = pairs.seamStart();
    this.seamSlot = pairs.seamSlot();
    this.seamCost = pairs.seamCost();
    this.inner = problem.innerCost();
    this.seamHard = new boolean[yarns * yarns];
    for (int a = 0; a < yarns; a++) {
      for (int b = 0; b < yarns; b++) {
        seamHard[a * yarns + b] = problem.blanket().sameBorder(a, b);
      }
    }
    this.adjacentDiffer = problem.adjacentDiffer();
    this.allDiffer = problem.allDiffer();
    this.x = problem.blanket().layout().places().stream().mapToInt(Place::x).toArray();
    this.y = problem.blanket().layout().places().stream().mapToInt(Place::y).toArray();
    this.yarn = new int[slots.count()];
    this.pairCost = new int[slots.count() * yarns];
    this.surplus = new int[problem.targets().length];
    this.balanceCost = problem.balanceCost();
    this.sequencesMatter = problem.copies() < slots.pieces() || problem.copyCost() > 0;
    this.copyCost = problem.copyCost();
    this.hardCost = problem.hardCost();
    this.stock = new StockUse(problem);
    this.sequences = new SequenceCounts(slots, yarns, problem.copies());
  }

  /** Takes over an assignment and counts everything afresh. */
  void reset(int[] assignment) {
    System.arraycopy(assignment, 0, yarn, 0, yarn.length);
    rebuildPairCost();
    for (int i = 0; i < surplus.length; i++) {
      surplus[i] = -problem.targets()[i];
    }
    for (int slot = 0; slot < yarn.length; slot++) {
      surplus[layer[slot] * yarns + yarn[slot]]++;
    }
    stock.reset(yarn);
    sequences.reset(slots, yarn);
    Cost fresh = Cost.of(problem, yarn, stock.pressure());
    cost = fresh.total();
    surplusFacts = Cost.surplusFacts(problem, yarn);
    pairFaults = fresh.hard() - stock.overdrawn() - (sequences.surplus() - surplusFacts);
  }

  private void rebuildPairCost() {
    Arrays.fill(pairCost, 0);
    if (problem.unaryCost() != null) {
      System.arraycopy(problem.unaryCost(), 0, pairCost, 0, pairCost.length);
    }
    for (int slot = 0; slot < yarn.length; slot++) {
      int row = slot * yarns;
      for (int i = lightStart[slot]; i < lightStart[slot + 1]; i++) {
        pairCost[row + yarn[lightSlot[i]]] += lightCost[i];
      }
      for (int i = seamStart[slot]; i < seamStart[slot + 1]; i++) {
        int other = yarn[seamSlot[i]] * yarns;
        for (int b = 0; b < yarns; b++) {
          pairCost[row + b] += seamCost[other + b];
        }
      }
    }
  }

  /** The cost with all penalties, as the sum of the costs told so far. */
  long cost() {
    return cost;
  }

  /** Broken rules, as {@link Cost#hard()} counts them. */
  long hard() {
    return pairFaults + stock.overdrawn() + sequences.surplus() - surplusFacts;
  }

  /** Weighs overdrawn yarns by another factor from now on. */
  void setPressure(double times) {
    cost -= stock.overdrawLoss();
    stock.setPressure(times);
    cost += stock.overdrawLoss();
  }

  /** Adds a told cost once its move is made. */
  void addCost(long told) {
    cost += told;
  }

  /**
   * The cost of giving a slot another yarn. Where the pairs, the piece and the balance alone cost
   * more than {@code most} and nothing else could win that back, only their sum.
   */
  long change(int slot, int to, long most) {
    int from = yarn[slot];
    int row = slot * yarns;
    long told = pairCost[row + to] - pairCost[row + from] + innerChange(slot, from, to);
    told += balanceChange(layer[slot] * yarns, layer[slot], from, to);
    long sequenceGain = sequenceGain();
    if (told > most + stock.mostToGain(from) + sequenceGain) {
      return told;
    }
    told += stock.change(from, problem.need(slot, from), to, problem.need(slot, to));
    if (sequencesMatter && told <= most + sequenceGain) {
      int p = piece[slot];
      long code = sequences.code(p);
      told += oneSequence(code, code + sequences.change(slot - pieceStart[p], from, to));
    }
    return told;
  }

  /**
   * The cost of exchanging the yarns of two slots, of any pieces and layers; early out as there.
   */
  long exchange(int slotA, int slotB, long most) {
    int a = yarn[slotA];
    int b = yarn[slotB];
    long told =
        pairCost[slotA * yarns + b]
            - pairCost[slotA * yarns + a]
            + pairCost[slotB * yarns + a]
            - pairCost[slotB * yarns + b];
    int layerA = layer[slotA];
    int layerB = layer[slotB];
    if (piece[slotA] == piece[slotB]) {
      told += innerExchange(slotA, slotB, a, b);
    } else {
      told += innerChange(slotA, a, b) + innerChange(slotB, b, a);
      if (layerA == layerB) {
        told -= pairedTwice(slotA, slotB, a, b);
      }
    }
    if (layerA != layerB) {
      told += balanceChange(layerA * yarns, layerA, a, b);
      told += balanceChange(layerB * yarns, layerB, b, a);
    }
    long sequenceGain = 2 * sequenceGain();
    if (problem.slotClass()[slotA] != problem.slotClass()[slotB]) {
      if (told > most + stock.mostToGain(a) + stock.mostToGain(b) + sequenceGain) {
        return told;
      }
      told +=
          stock.change(
              a,
              problem.need(slotA, a) - problem.need(slotB, a),
              b,
              problem.need(slotA, b) - problem.need(slotB, b));
    }
    boolean settled = !sequencesMatter || told > most + sequenceGain;
    return settled ? told : told + sequenceExchange(slotA, slotB, a, b);
  }

  /** The cost of exchanging the whole sequences of two pieces of one kind. */
  long exchangeSequences(int pieceA, int pieceB) {
    long told = 0;
    int slotA = pieceStart[pieceA];
    int slotB = pieceStart[pieceB];
    for (int end = pieceStart[pieceA + 1]; slotA < end; slotA++, slotB++) {
      int a = yarn[slotA];
      int b = yarn[slotB];
      if (a != b) {
        told +=
            pairCost[slotA * yarns + b]
                - pairCost[slotA * yarns + a]
                + pairCost[slotB * yarns + a]
                - pairCost[slotB * yarns + b]
                - pairedTwice(slotA, slotB, a, b);
      }
    }
    return told;
  }

  /** What both slots' pair costs count of the pair that they make themselves, if they are one. */
  private long pairedTwice(int slotA, int slotB, int a, int b) {
    int pieceA = piece[slotA];
    int pieceB = piece[slotB];
    if (Math.abs(x[pieceA] - x[pieceB]) > REACH || Math.abs(y[pieceA] - y[pieceB]) > REACH) {
      return 0;
    }
    for (int i = lightStart[slotA]; i < lightStart[slotA + 1]; i++) {
      if (lightSlot[i] == slotB) {
        return 2L * lightCost[i];
      }
    }
    for (int i = seamStart[slotA]; i < seamStart[slotA + 1]; i++) {
      if (seamSlot[i] == slotB) {
        return seamCost[a * yarns + a] + seamCost[b * yarns + b] - 2L * seamCost[a * yarns + b];
      }
    }
    return 0;
  }

  private long balanceChange(int row, int ofLayer, int from, int to) {
    int steps = (surplus[row + from] > 0 ? -1 : 1) + (surplus[row + to] >= 0 ? 1 : -1);
    return steps * balanceCost[ofLayer];
  }

  private long innerChange(int slot, int from, int to) {
    int start = pieceStart[piece[slot]];
    int end = pieceStart[piece[slot] + 1];
    long told = 0;
    if (slot > start) {
      int row = yarn[slot - 1] * yarns;
      told += inner[row + to] - inner[row + from];
    }
    if (slot + 1 < end) {
      int row = yarn[slot + 1] * yarns;
      told += inner[row + to] - inner[row + from];
    }
    if (allDiffer) {
      for (int other = start; other < end; other++) {
        if (other < slot - 1 || other > slot + 1) {
          told += (yarn[other] == to ? hardCost : 0) - (yarn[other] == from ? hardCost : 0);
        }
      }
    }
    return told;
  }

  private long innerExchange(int slotA, int slotB, int a, int b) {
    long told = innerChange(slotA, a, b);
    yarn[slotA] = b;
    told += innerChange(slotB, b, a);
    yarn[slotA] = a;
    return told;
  }

  private long sequenceGain() {
    return sequences.surplus() > surplusFacts ? copyCost + hardCost : copyCost;
  }

  private long oneSequence(long before, long after) {
    int old = sequences.count(before);
    int now = sequences.count(after);
    long told = (old == 1 ? copyCost : 0) - (now == 0 ? copyCost : 0);
    if (old > problem.copies()) {
      told -= hardCost;
    }
    return now >= problem.copies() ? told + hardCost : told;
  }

  private long sequenceExchange(int slotA, int slotB, int a, int b) {
    int pieceA = piece[slotA];
    int pieceB = piece[slotB];
    long codeA = sequences.code(pieceA);
    long changeA = sequences.change(slotA - pieceStart[pieceA], a, b);
    long changeB = sequences.change(slotB - pieceStart[pieceB], b, a);
    if (pieceA == pieceB) {
      return oneSequence(codeA, codeA + changeA + changeB);
    }
    long codeB = sequences.code(pieceB);
    long newA = codeA + changeA;
    long newB = codeB + changeB;
    int oldA = sequences.count(codeA);
    int oldB = sequences.count(codeB) - (codeB == codeA ? 1 : 0);
    int nowA = sequences.count(newA) - (newA == codeA ? 1 : 0) - (newA == codeB ? 1 : 0);
    int nowB =
        sequences.count(newB)
            - (newB == codeA ? 1 : 0)
            - (newB == codeB ? 1 : 0)
            + (newB == newA ? 1 : 0);
    int copies = problem.copies();
    int copiesMore = (oldA == 1 ? 1 : 0) + (oldB == 1 ? 1 : 0);
    copiesMore -= (nowA == 0 ? 1 : 0) + (nowB == 0 ? 1 : 0);
    int surplusMore = (nowA >= copies ? 1 : 0) + (nowB >= copies ? 1 : 0);
    surplusMore -= (oldA > copies ? 1 : 0) + (oldB > copies ? 1 : 0);
    return copiesMore * copyCost + surplusMore * hardCost;
  }

  /** Gives a slot another yarn. The cost told for it is to be added by the caller. */
  void apply(int slot, int to) {
    int from = yarn[slot];
    if (from == to) {
      return;
    }
    for (int i = lightStart[slot]; i < lightStart[slot + 1]; i++) {
      int row = lightSlot[i] * yarns;
      pairCost[row + from] -= lightCost[i];
      pairCost[row + to] += lightCost[i];
    }
    int fromRow = from * yarns;
    int toRow = to * yarns;
    for (int i = seamStart[slot]; i < seamStart[slot + 1]; i++) {
      int other = seamSlot[i];
      int row = other * yarns;
      for (int b = 0; b < yarns; b++) {
        pairCost[row + b] += seamCost[toRow + b] - seamCost[fromRow + b];
      }
      pairFaults += (seamHard[toRow + yarn[other]] ? 1 : 0);
      pairFaults -= (seamHard[fromRow + yarn[other]] ? 1 : 0);
    }
    int p = piece[slot];
    int start = pieceStart[p];
    int end = pieceStart[p + 1];
    for (int other = start; other < end; other++) {
      boolean differ =
          other != slot && (allDiffer || adjacentDiffer && Math.abs(other - slot) == 1);
      if (differ) {
        pairFaults += (yarn[other] == to ? 1 : 0) - (yarn[other] == from ? 1 : 0);
      }
    }
    surplus[layer[slot] * yarns + from]--;
    surplus[layer[slot] * yarns + to]++;
    stock.apply(from, problem.need(slot, from), to, problem.need(slot, to));
    if (sequencesMatter) {
      sequences.move(p, sequences.code(p) + sequences.change(slot - start, from, to));
    }
    yarn[slot] = to;
  }

  /** The first entry of the kept tables that is not what it is from scratch, in words; or null. */
  String firstWrongEntry() {
    State fresh = new State(problem);
    fresh.reset(yarn);
    for (int i = 0; i < pairCost.length; i++) {
      if (pairCost[i] != fresh.pairCost[i]) {
        return "pair cost of slot "
            + i / yarns
            + " with yarn "
            + i % yarns
            + " kept "
            + pairCost[i]
            + ", from scratch "
            + fresh.pairCost[i];
      }
    }
    for (int i = 0; i < surplus.length; i++) {
      if (surplus[i] != fresh.surplus[i]) {
        return "surplus of layer "
            + i / yarns
            + ", yarn "
            + i % yarns
            + " kept "
            + surplus[i]
            + ", from scratch "
            + fresh.surplus[i];
      }
    }
    return null;
  }

  /** Spoils a kept cost, for tests of the assertions. */
  void spoilPairCost(int slot, int by) {
    pairCost[slot * yarns] += by;
  }

  /** Whether a slot may change. */
  boolean free(int slot) {
    return slots.fixedYarn()[slot] == Sequences.OPEN;
  }
}
