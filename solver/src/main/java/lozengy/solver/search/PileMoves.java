package lozengy.solver.search;

import lozengy.solver.problem.PilePlaces;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * Exchanges a finished piece of the pile with what lies at another place of its kind, finished or
 * still to be worked. Yarns never leave their piece, so balance, stock and copies stay as they are:
 * only pairs and the look's counts are weighed, O(rounds) to tell and O(pairs of the rounds) to
 * make. No move allocates.
 */
final class PileMoves {

  private static final String EXCHANGE = "exchange of a finished orbit";

  private final Problem problem;
  private final PilePlaces pile;
  private final State state;
  private final Draws draws;
  private final Acceptance acceptance;
  private final Slots slots;

  PileMoves(State state, Draws draws, Acceptance acceptance) {
    this.problem = state.problem;
    this.pile = problem.pile();
    this.state = state;
    this.draws = draws;
    this.acceptance = acceptance;
    this.slots = problem.slots();
  }

  /** Tries one exchange. */
  void exchange(double temperature) {
    PileAssignment laid = state.laid;
    int placeA = laid.place(draws.below(laid.pieces()));
    int[] like = pile.places()[pile.kindOf()[placeA]];
    int placeB = like[draws.below(like.length)];
    boolean possible =
        placeA != placeB
            && pile.fits(slots, laid.stack(placeA), placeB)
            && (laid.holds(placeB)
                ? pile.fits(slots, laid.stack(placeB), placeA)
                : mayBeWorked(placeB, placeA));
    if (!possible) {
      return;
    }
    int borderA = slots.border(placeA);
    int borderB = slots.border(placeB);
    long delta = state.exchangeSequences(placeA, placeB);
    if (acceptance.triesOut()) {
      Runnable swap = () -> swap(placeA, placeB);
      acceptance.tryOut(EXCHANGE, delta, swap, swap, borderA, borderB);
    }
    if (acceptance.accepts(delta, acceptance.most(temperature), temperature)) {
      swap(placeA, placeB);
      acceptance.made(EXCHANGE, delta, borderA, borderB);
    }
  }

  /** Whether what is still to be worked at one place may be worked at another. */
  private boolean mayBeWorked(int from, int to) {
    int slot = slots.orbitStart()[from];
    int end = slots.orbitStart()[from + 1];
    for (int there = slots.orbitStart()[to]; slot < end; slot++, there++) {
      if (!problem.domains().allows(there, state.yarn[slot])) {
        return false;
      }
    }
    return true;
  }

  private void swap(int placeA, int placeB) {
    state.swapSequences(placeA, placeB);
    state.laid.exchange(placeA, placeB);
  }
}
