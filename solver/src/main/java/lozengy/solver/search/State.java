package lozengy.solver.search;

import java.util.List;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;
import lozengy.solver.problem.YarnSupply;

/**
 * An assignment of yarns to slots with everything that a move's cost needs at hand: for each slot
 * and yarn what it would cost beside the others, counts by layer, yarn used, and shared sequences.
 * To tell a change's cost is O(1), to make it O(pairs of the slot). No method allocates.
 *
 * <p>A part of a state shares yarns and table with the whole and with other parts beyond its reach,
 * and counts copies by itself, until the whole settles with it.
 */
final class State {

  final Problem problem;
  final int[] yarn;
  private final int yarns;
  private final Slots slots;
  private final int[] orbit;
  private final int[] layer;
  private final int[] orbitStart;
  private final CostTable table;
  private final boolean tied;
  private final int[] weight;
  private final int[] surplus;
  private final long[] balanceCost;
  private final boolean sequencesMatter;
  private final long copyCost;
  private final long hardCost;
  final StockUse stock;
  final SequenceCounts sequences;
  final PileAssignment laid;
  private final CountUse counts;
  private final OrderUse order;
  private long surplusFacts;
  private long pairFaults;
  private long cost;

  State(Problem problem) {
    this.problem = problem;
    this.yarns = problem.yarns();
    this.slots = problem.slots();
    this.orbit = slots.orbit();
    this.layer = slots.layer();
    this.orbitStart = slots.orbitStart();
    this.table = new CostTable(problem);
    this.yarn = new int[slots.count()];
    this.tied = slots.tied();
    this.weight = new int[slots.count()];
    for (int slot = 0; slot < weight.length; slot++) {
      weight[slot] = slots.weight(orbit[slot]);
    }
    this.surplus = new int[problem.balance().targets().length];
    this.balanceCost = problem.balance().cost();
    this.sequencesMatter = problem.copies() < slots.orbits() || problem.prices().copy() > 0;
    this.copyCost = problem.prices().copy();
    this.hardCost = problem.prices().hard();
    this.stock = new StockUse(problem);
    this.sequences = new SequenceCounts(slots, yarns, problem.copies());
    this.laid = new PileAssignment(problem);
    this.counts = new CountUse(problem);
    this.order = OrderUse.of(problem);
  }

  /**
   * Makes a part, for exchanges alone that leave counts and stock as they are.
   *
   * @param whole without counts of the look and without order
   * @param pieces how many pieces may change in it
   */
  State(State whole, int pieces) {
    this.problem = whole.problem;
    this.yarns = whole.yarns;
    this.slots = whole.slots;
    this.orbit = whole.orbit;
    this.layer = whole.layer;
    this.orbitStart = whole.orbitStart;
    this.table = whole.table;
    this.yarn = whole.yarn;
    this.tied = whole.tied;
    this.weight = whole.weight;
    this.surplus = null;
    this.balanceCost = null;
    this.sequencesMatter = whole.sequencesMatter;
    this.copyCost = whole.copyCost;
    this.hardCost = whole.hardCost;
    this.stock = null;
    this.sequences = new SequenceCounts(whole.sequences, pieces);
    this.laid = whole.laid;
    this.counts = whole.counts;
    this.order = null;
  }

  /** Takes over what has changed in parts. */
  void settle(List<State> parts) {
    for (State part : parts) {
      // what copies cost is known only now that all parts are together
      cost += part.cost - (part.copiesCost() - copiesCost());
      pairFaults += part.pairFaults;
    }
    cost -= copiesCost();
    parts.forEach(part -> sequences.settle(part.sequences));
    cost += copiesCost();
  }

  /** The cost of sequences that several pieces have, but for a constant. */
  private long copiesCost() {
    return hardCost * sequences.surplus() - copyCost * sequences.distinct();
  }

  /** Takes over an assignment and counts everything afresh. */
  void reset(int[] assignment) {
    System.arraycopy(assignment, 0, yarn, 0, yarn.length);
    laid.reset(yarn);
    table.rebuild(yarn);
    for (int i = 0; i < surplus.length; i++) {
      surplus[i] = -problem.balance().targets()[i];
    }
    for (int slot = 0; slot < yarn.length; slot++) {
      surplus[layer[slot] * yarns + yarn[slot]] += weight[slot];
    }
    stock.reset(yarn);
    sequences.reset(slots, yarn);
    counts.reset(yarn);
    if (order != null) {
      order.reset(yarn);
    }
    Cost fresh = Cost.of(problem, yarn, stock.pressure());
    cost = fresh.total();
    surplusFacts = Cost.surplusFacts(problem, yarn);
    pairFaults = fresh.hard() - stock.overdrawn() - counts.broken();
    pairFaults -= sequences.surplus() - surplusFacts;
  }

  /** The cost with all penalties, as the sum of the deltas so far. */
  long cost() {
    return cost;
  }

  /** Broken rules, as {@link Cost#hard()} counts them. */
  long hard() {
    return pairFaults + stock.overdrawn() + counts.broken() + sequences.surplus() - surplusFacts;
  }

  /** Weighs overdrawn yarns by another factor from now on. */
  void setPressure(double times) {
    cost -= stock.overdrawLoss();
    stock.setPressure(times);
    cost += stock.overdrawLoss();
  }

  /** Adds a delta once its move is made. */
  void addCost(long delta) {
    cost += delta;
  }

  /**
   * The cost of giving a slot another yarn. Where the pairs, the piece and the balance alone cost
   * more than {@code most} and nothing else could win that back, only their sum.
   */
  long change(int slot, int to, long most) {
    int from = yarn[slot];
    long delta = table.change(slot, from, to) + balanceChange(slot, from, to);
    if (counts.any()) {
      delta += counts.change(slot, from, to);
    }
    if (order != null) {
      delta += order.change(slot, from, to, yarn);
    }
    int p = orbit[slot];
    if (beyond(delta, most + stock.mostToGain(from), p, p)) {
      return delta;
    }
    delta +=
        stock.change(from, problem.supply().need(slot, from), to, problem.supply().need(slot, to));
    if (sequencesMatter && !beyond(delta, most, p, p)) {
      delta += oneSequence(p, sequences.change(slot - orbitStart[p], from, to));
    }
    return delta;
  }

  /**
   * The cost of exchanging the yarns of two slots with the same needs and layer, so that counts and
   * stock stay as they are; early out as there.
   */
  long exchangeAlike(int slotA, int slotB, long most) {
    if (counts.any() || order != null && layer[slotA] == 0) {
      return exchange(slotA, slotB, most);
    }
    int a = yarn[slotA];
    int b = yarn[slotB];
    long delta = table.change(slotA, a, b) + table.change(slotB, b, a);
    int orbitA = orbit[slotA];
    int orbitB = orbit[slotB];
    int ofLayer = layer[slotA];
    if (ofLayer > 0 && beyond(delta - table.mostTwice(ofLayer), most, orbitA, orbitB)) {
      return delta;
    }
    delta -= table.countedTwice(slotA, slotB, a, b);
    boolean settled = !sequencesMatter || beyond(delta, most, orbitA, orbitB);
    return settled ? delta : delta + sequenceExchange(slotA, slotB, a, b);
  }

  /**
   * The cost of exchanging the yarns of two slots, of any pieces and layers; early out as there.
   */
  long exchange(int slotA, int slotB, long most) {
    int a = yarn[slotA];
    int b = yarn[slotB];
    long delta = table.change(slotA, a, b) + table.change(slotB, b, a);
    delta -= table.countedTwice(slotA, slotB, a, b);
    if (layer[slotA] != layer[slotB]) {
      delta += balanceChange(slotA, a, b);
      delta += balanceChange(slotB, b, a);
    }
    if (counts.any()) {
      delta += countsExchange(slotA, slotB);
    }
    if (order != null) {
      delta += order.exchange(slotA, slotB, yarn);
    }
    int orbitA = orbit[slotA];
    int orbitB = orbit[slotB];
    if (problem.supply().slotClass()[slotA] != problem.supply().slotClass()[slotB]) {
      if (beyond(delta, most + stock.mostToGain(a) + stock.mostToGain(b), orbitA, orbitB)) {
        return delta;
      }
      delta += stockExchange(slotA, slotB, a, b);
    }
    boolean settled = !sequencesMatter || beyond(delta, most, orbitA, orbitB);
    return settled ? delta : delta + sequenceExchange(slotA, slotB, a, b);
  }

  /** What exchanging two slots' yarns costs in stock and leeway; nothing within a class. */
  private long stockExchange(int slotA, int slotB, int a, int b) {
    YarnSupply supply = problem.supply();
    return supply.slotClass()[slotA] == supply.slotClass()[slotB]
        ? 0
        : stock.change(
            a,
            supply.need(slotA, a) - supply.need(slotB, a),
            b,
            supply.need(slotA, b) - supply.need(slotB, b));
  }

  /**
   * The cost of exchanging the whole sequences of two pieces of one kind, of which only the borders
   * may take otherwise, by their seams.
   */
  long exchangeSequences(int orbitA, int orbitB) {
    long delta = 0;
    int slotA = orbitStart[orbitA];
    int slotB = orbitStart[orbitB];
    for (int end = orbitStart[orbitA + 1]; slotA < end; slotA++, slotB++) {
      int a = yarn[slotA];
      int b = yarn[slotB];
      if (a != b) {
        delta += table.beside(slotA, a, b, yarn) + table.beside(slotB, b, a, yarn);
        delta -= table.countedTwice(slotA, slotB, a, b);
        delta += stockExchange(slotA, slotB, a, b);
      }
    }
    if (order != null) {
      delta += order.exchange(slots.border(orbitA), slots.border(orbitB), yarn);
    }
    return counts.any() ? delta + countsExchangeOfSequences(orbitA, orbitB) : delta;
  }

  private long countsExchange(int slotA, int slotB) {
    int a = yarn[slotA];
    int b = yarn[slotB];
    long delta = counts.change(slotA, a, b);
    counts.apply(slotA, a, b);
    delta += counts.change(slotB, b, a);
    counts.apply(slotA, b, a);
    return delta;
  }

  private long countsExchangeOfSequences(int orbitA, int orbitB) {
    long before = counts.broken();
    exchangeCounted(orbitA, orbitB, false);
    long delta = hardCost * (counts.broken() - before);
    exchangeCounted(orbitA, orbitB, true);
    return delta;
  }

  private void exchangeCounted(int orbitA, int orbitB, boolean back) {
    int slotB = orbitStart[orbitB];
    for (int slotA = orbitStart[orbitA]; slotA < orbitStart[orbitA + 1]; slotA++, slotB++) {
      int a = back ? yarn[slotB] : yarn[slotA];
      int b = back ? yarn[slotA] : yarn[slotB];
      if (a != b) {
        counts.apply(slotA, a, b);
        counts.apply(slotB, b, a);
      }
    }
  }

  private long balanceChange(int slot, int from, int to) {
    int ofLayer = layer[slot];
    int row = ofLayer * yarns;
    if (tied) {
      int less = surplus[row + from];
      int more = surplus[row + to];
      int off = Math.abs(less - weight[slot]) - Math.abs(less);
      off += Math.abs(more + weight[slot]) - Math.abs(more);
      return off * balanceCost[ofLayer];
    }
    int steps = (surplus[row + from] > 0 ? -1 : 1) + (surplus[row + to] >= 0 ? 1 : -1);
    return steps * balanceCost[ofLayer];
  }

  /** Whether a delta is too much even if two pieces win all that other sequences can win them. */
  private boolean beyond(long delta, long most, int orbitA, int orbitB) {
    return delta > most && delta > most + sequenceGain(orbitA) + sequenceGain(orbitB);
  }

  /** The most that one piece's other sequence could win; nothing while no other piece has its. */
  private long sequenceGain(int ofOrbit) {
    int count = sequencesMatter ? sequences.countOf(ofOrbit) : 1;
    return count == 1 ? 0 : count > problem.copies() ? copyCost + hardCost : copyCost;
  }

  private long oneSequence(int p, long change) {
    int old = sequences.countOf(p);
    int now = sequences.count(sequences.code(p) + change);
    long delta = (old == 1 ? copyCost : 0) - (now == 0 ? copyCost : 0);
    if (old > problem.copies()) {
      delta -= hardCost;
    }
    return now >= problem.copies() ? delta + hardCost : delta;
  }

  private long sequenceExchange(int slotA, int slotB, int a, int b) {
    int orbitA = orbit[slotA];
    int orbitB = orbit[slotB];
    long codeA = sequences.code(orbitA);
    long changeA = sequences.change(slotA - orbitStart[orbitA], a, b);
    long changeB = sequences.change(slotB - orbitStart[orbitB], b, a);
    if (orbitA == orbitB) {
      return oneSequence(orbitA, changeA + changeB);
    }
    long codeB = sequences.code(orbitB);
    long newA = codeA + changeA;
    long newB = codeB + changeB;
    int oldA = sequences.countOf(orbitA);
    int oldB = sequences.countOf(orbitB) - (codeB == codeA ? 1 : 0);
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

  /** Whether a slot that may change breaks a rule, with its neighbours, its piece or its copies. */
  boolean atFault(int slot) {
    int p = orbit[slot];
    return table.clashes(slot, yarn) || sequencesMatter && sequences.countOf(p) > problem.copies();
  }

  /** Exchanges the yarns of two pieces with as many rounds; the laid pile stays. */
  void swapSequences(int orbitA, int orbitB) {
    int slotB = orbitStart[orbitB];
    int end = orbitStart[orbitA + 1];
    for (int slotA = orbitStart[orbitA]; slotA < end; slotA++, slotB++) {
      int a = yarn[slotA];
      apply(slotA, yarn[slotB]);
      apply(slotB, a);
    }
  }

  /** Exchanges the yarns of two slots with the same needs and layer: counts and stock stay. */
  void exchange(int slotA, int slotB) {
    int a = yarn[slotA];
    int b = yarn[slotB];
    show(slotA, a, b);
    show(slotB, b, a);
  }

  /** Gives a slot another yarn. Its delta is to be added by the caller. */
  void apply(int slot, int to) {
    int from = yarn[slot];
    if (from == to) {
      return;
    }
    show(slot, from, to);
    surplus[layer[slot] * yarns + from] -= weight[slot];
    surplus[layer[slot] * yarns + to] += weight[slot];
    stock.apply(from, problem.supply().need(slot, from), to, problem.supply().need(slot, to));
  }

  /** Gives a slot another yarn, without counting it in its layer and in the stock. */
  private void show(int slot, int from, int to) {
    pairFaults += table.apply(slot, from, to, yarn);
    if (counts.any()) {
      counts.apply(slot, from, to);
    }
    if (order != null) {
      order.apply(slot, from, to, yarn);
    }
    if (sequencesMatter) {
      int p = orbit[slot];
      sequences.move(p, sequences.code(p) + sequences.change(slot - orbitStart[p], from, to));
    }
    yarn[slot] = to;
  }

  /** The first kept entry that is not what it is from scratch, in words; or null. */
  String firstWrongEntry() {
    String wrong = table.firstWrongEntry(yarn);
    return wrong == null && order != null ? order.firstWrongEntry(yarn) : wrong;
  }

  /** Spoils a kept cost, for tests of the assertions. */
  void spoilPairCost(int slot, int by) {
    table.spoil(slot, by);
  }

  /** Whether a slot may change. */
  boolean free(int slot) {
    return slots.fixedYarn()[slot] == Sequences.OPEN && !laid.holds(orbit[slot]);
  }
}
