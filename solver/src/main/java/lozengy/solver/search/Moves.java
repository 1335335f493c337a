package lozengy.solver.search;

import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/** The operators that change one round or exchange two, two pieces or a chain. */
final class Moves {

  static final long NO_LIMIT = Long.MAX_VALUE / 2;

  private static final String CHANGE = "change";
  private static final String EXCHANGE = "exchange";
  private static final String SEQUENCES = "exchange of sequences";

  private final State state;
  private final Draws draws;
  private final Acceptance acceptance;
  private final Neighbourhood neighbourhood;
  private final Slots slots;
  private final Domains domains;
  private final boolean pile;
  private final Chains chains;

  /**
   * Makes the moves of a walk.
   *
   * @param neighbourhood what may change
   * @param chains chains of borders; null for none
   */
  Moves(
      State state, Draws draws, Acceptance acceptance, Neighbourhood neighbourhood, Chains chains) {
    Problem problem = state.problem;
    this.state = state;
    this.draws = draws;
    this.acceptance = acceptance;
    this.neighbourhood = neighbourhood;
    this.slots = problem.slots();
    this.domains = problem.domains();
    this.pile = !problem.pile().isEmpty();
    this.chains = chains;
  }

  /** Draws one neighbour and goes there, or stays. Nothing is allocated. */
  void attempt(Operator operator, double temperature) {
    switch (operator) {
      case CHANGE -> change(neighbourhood.slot(), temperature);
      case EXCHANGE_ALIKE -> exchangeAlike(neighbourhood.slot(), temperature);
      case EXCHANGE_IN_LAYER -> exchangeInLayer(temperature);
      case EXCHANGE_ACROSS -> exchange(neighbourhood.slot(), neighbourhood.slot(), temperature);
      case EXCHANGE_WITHIN -> exchangeWithin(temperature);
      case EXCHANGE_SEQUENCES -> exchangeSequences(temperature);
      case CHAIN -> chain(temperature);
      case BORDER -> changeOrExchangeBorder(temperature);
    }
  }

  private void chain(double temperature) {
    if (chains != null && neighbourhood.hasBorders()) {
      chains.exchange(neighbourhood.border(), temperature);
    }
  }

  /** Whether a slot belongs to a finished piece of the pile, which only moves as a whole. */
  private boolean held(int slot) {
    return state.laid.holds(slots.orbit()[slot]);
  }

  /** Gives a slot a random other yarn. */
  void change(int slot, double temperature) {
    if (held(slot)) {
      return;
    }
    int[] domain = domains.yarns(slot);
    int to = domain[draws.below(domain.length)];
    int from = state.yarn[slot];
    if (to == from) {
      return;
    }
    if (acceptance.triesOut()) {
      long delta = state.change(slot, to, NO_LIMIT);
      acceptance.tryOut(
          CHANGE, delta, () -> state.apply(slot, to), () -> state.apply(slot, from), slot);
    }
    long most = acceptance.most(temperature);
    long delta = state.change(slot, to, most);
    if (acceptance.accepts(delta, most, temperature)) {
      state.apply(slot, to);
      acceptance.made(CHANGE, delta, slot, slot);
    }
  }

  private void exchangeInLayer(double temperature) {
    int slot = neighbourhood.slot();
    exchange(slot, neighbourhood.ofLayer(slot), temperature);
  }

  /** Exchanges the yarns of two rounds of one piece. */
  private void exchangeWithin(double temperature) {
    int slotA = neighbourhood.slot();
    int orbit = slots.orbit()[slotA];
    int slotB = slots.orbitStart()[orbit] + draws.below(slots.rounds(orbit));
    if (neighbourhood.has(slotB) && state.free(slotB)) {
      exchange(slotA, slotB, temperature);
    }
  }

  private void exchange(int slotA, int slotB, double temperature) {
    int a = state.yarn[slotA];
    int b = state.yarn[slotB];
    if (a == b
        || !domains.allows(slotA, b)
        || !domains.allows(slotB, a)
        || !mayExchange(slotA, slotB)) {
      return;
    }
    if (acceptance.triesOut()) {
      tryOut(slotA, slotB, state.exchange(slotA, slotB, NO_LIMIT));
    }
    long most = acceptance.most(temperature);
    long delta = state.exchange(slotA, slotB, most);
    if (acceptance.accepts(delta, most, temperature)) {
      swap(slotA, slotB);
      acceptance.made(EXCHANGE, delta, slotA, slotB);
    }
  }

  /**
   * Exchanges the yarns of a slot and another one with the same needs and domain: counts and stock
   * stay as they are.
   */
  void exchangeAlike(int slotA, double temperature) {
    int slotB = neighbourhood.alike(slotA);
    if (state.yarn[slotA] == state.yarn[slotB] || !mayExchange(slotA, slotB)) {
      return;
    }
    if (acceptance.triesOut()) {
      tryOut(slotA, slotB, state.exchangeAlike(slotA, slotB, NO_LIMIT));
    }
    long most = acceptance.most(temperature);
    long delta = state.exchangeAlike(slotA, slotB, most);
    if (acceptance.accepts(delta, most, temperature)) {
      state.exchange(slotA, slotB);
      acceptance.made(EXCHANGE, delta, slotA, slotB);
    }
  }

  /** Whether neither slot is held by a finished piece, and both stand for as many places. */
  private boolean mayExchange(int slotA, int slotB) {
    if (pile && (held(slotA) || held(slotB))) {
      return false;
    }
    return !slots.tied()
        || slots.weight(slots.orbit()[slotA]) == slots.weight(slots.orbit()[slotB]);
  }

  private void tryOut(int slotA, int slotB, long delta) {
    Runnable swap = () -> swap(slotA, slotB);
    acceptance.tryOut(EXCHANGE, delta, swap, swap, slotA, slotB);
  }

  private void swap(int slotA, int slotB) {
    int a = state.yarn[slotA];
    state.apply(slotA, state.yarn[slotB]);
    state.apply(slotB, a);
  }

  /** Exchanges the sequences of two pieces of one kind. */
  private void exchangeSequences(double temperature) {
    int orbitA = slots.orbit()[neighbourhood.slot()];
    int orbitB = neighbourhood.pieceLike(orbitA);
    if (orbitB < 0
        || state.laid.holds(orbitA)
        || state.laid.holds(orbitB)
        || orbitA == orbitB
        || !domainsAllowExchange(orbitA, orbitB)) {
      return;
    }
    int borderA = slots.border(orbitA);
    int borderB = slots.border(orbitB);
    long delta = state.exchangeSequences(orbitA, orbitB);
    if (acceptance.triesOut()) {
      Runnable swap = () -> state.swapSequences(orbitA, orbitB);
      acceptance.tryOut(SEQUENCES, delta, swap, swap, borderA, borderB);
    }
    if (acceptance.accepts(delta, acceptance.most(temperature), temperature)) {
      state.swapSequences(orbitA, orbitB);
      acceptance.made(SEQUENCES, delta, borderA, borderB);
    }
  }

  private boolean domainsAllowExchange(int orbitA, int orbitB) {
    int slotB = slots.orbitStart()[orbitB];
    int end = slots.orbitStart()[orbitA + 1];
    for (int slotA = slots.orbitStart()[orbitA]; slotA < end; slotA++, slotB++) {
      if (!domains.allows(slotA, state.yarn[slotB]) || !domains.allows(slotB, state.yarn[slotA])) {
        return false;
      }
    }
    return true;
  }

  /** Gives a random border another yarn, or exchanges it with another of its needs and domain. */
  private void changeOrExchangeBorder(double temperature) {
    if (!neighbourhood.hasBorders()) {
      return;
    }
    int slot = neighbourhood.border();
    if (draws.below(2) == 0) {
      change(slot, temperature);
    } else {
      exchangeAlike(slot, temperature);
    }
  }
}
