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
  private final Slots slots;
  private final int[] orbit;
  private final int[] layer;
  private final int[] orbitStart;
  private final CostTable table;
  final StockUse stock;
  final PileAssignment laid;
  final CopyUse copies;
  private final BalanceUse balance;
  private final CountUse counts;
  private final OrderUse order;
  private long surplusFacts;
  private long pairFaults;
  private long cost;

  State(Problem problem) {
    this.problem = problem;
    this.slots = problem.slots();
    this.orbit = slots.orbit();
    this.layer = slots.layer();
    this.orbitStart = slots.orbitStart();
    this.table = new CostTable(problem);
    this.yarn = new int[slots.count()];
    this.stock = new StockUse(problem);
    this.laid = new PileAssignment(problem);
    this.copies = new CopyUse(problem);
    this.balance = new BalanceUse(problem);
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
    this.slots = whole.slots;
    this.orbit = whole.orbit;
    this.layer = whole.layer;
    this.orbitStart = whole.orbitStart;
    this.table = whole.table;
    this.yarn = whole.yarn;
    this.stock = null;
    this.laid = whole.laid;
    this.copies = new CopyUse(whole.copies, pieces);
    this.balance = null;
    this.counts = whole.counts;
    this.order = null;
  }

  /** Takes over what has changed in parts. */
  void settle(List<State> parts) {
    for (State part : parts) {
      // what copies cost is known only now that all parts are together
      cost += part.cost - (part.copies.cost() - copies.cost());
      pairFaults += part.pairFaults;
    }
    cost -= copies.cost();
    parts.forEach(part -> copies.settle(part.copies));
    cost += copies.cost();
  }

  /** Takes over an assignment and counts everything afresh. */
  void reset(int[] assignment) {
    System.arraycopy(assignment, 0, yarn, 0, yarn.length);
    laid.reset(yarn);
    table.rebuild(yarn);
    balance.reset(yarn);
    stock.reset(yarn);
    copies.reset(yarn);
    counts.reset(yarn);
    if (order != null) {
      order.reset(yarn);
    }
    Cost fresh = Cost.of(problem, yarn, stock.pressure());
    cost = fresh.total();
    surplusFacts = Cost.surplusFacts(problem, yarn);
    pairFaults = fresh.hard() - stock.overdrawn() - counts.broken();
    pairFaults -= copies.surplus() - surplusFacts;
  }

  /** The cost with all penalties, as the sum of the deltas so far. */
  long cost() {
    return cost;
  }

  /** Broken rules, as {@link Cost#hard()} counts them. */
  long hard() {
    return pairFaults + stock.overdrawn() + counts.broken() + copies.surplus() - surplusFacts;
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

  /** The cost of giving a slot another yarn, of its pairs and within its piece alone. */
  long ofPairs(int slot, int to) {
    return table.change(slot, yarn[slot], to);
  }

  /**
   * The cost of giving a slot another yarn. Where the pairs, the piece and the balance alone cost
   * more than {@code most} and nothing else could win that back, only their sum.
   */
  long change(int slot, int to, long most) {
    int from = yarn[slot];
    long delta = table.change(slot, from, to) + balance.change(slot, from, to);
    if (counts.any()) {
      delta += counts.change(slot, from, to);
    }
    if (order != null) {
      delta += order.change(slot, from, to, yarn);
    }
    int p = orbit[slot];
    if (copies.beyond(delta, most + stock.mostToGain(from), p, p)) {
      return delta;
    }
    delta +=
        stock.change(from, problem.supply().need(slot, from), to, problem.supply().need(slot, to));
    return copies.settled(delta, most, p, p) ? delta : delta + copies.change(slot, from, to);
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
    if (ofLayer > 0 && copies.beyond(delta - table.mostTwice(ofLayer), most, orbitA, orbitB)) {
      return delta;
    }
    delta -= table.countedTwice(slotA, slotB, a, b);
    return copies.settled(delta, most, orbitA, orbitB)
        ? delta
        : delta + copies.exchange(slotA, slotB, a, b);
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
      delta += balance.change(slotA, a, b);
      delta += balance.change(slotB, b, a);
    }
    if (counts.any()) {
      delta += counts.exchange(slotA, slotB, a, b);
    }
    if (order != null) {
      delta += order.exchange(slotA, slotB, yarn);
    }
    int orbitA = orbit[slotA];
    int orbitB = orbit[slotB];
    if (problem.supply().slotClass()[slotA] != problem.supply().slotClass()[slotB]) {
      if (copies.beyond(delta, most + stock.mostToGain(a) + stock.mostToGain(b), orbitA, orbitB)) {
        return delta;
      }
      delta += stockExchange(slotA, slotB, a, b);
    }
    return copies.settled(delta, most, orbitA, orbitB)
        ? delta
        : delta + copies.exchange(slotA, slotB, a, b);
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
    return counts.any() ? delta + counts.exchangeSequences(orbitA, orbitB, yarn) : delta;
  }

  /** Whether a slot that may change breaks a rule, with its neighbours, its piece or its copies. */
  boolean atFault(int slot) {
    return table.clashes(slot, yarn) || copies.tooMany(orbit[slot]);
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
    balance.apply(slot, from, to);
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
    copies.apply(slot, from, to);
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
