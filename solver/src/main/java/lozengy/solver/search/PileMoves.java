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

  private final Problem problem;
  private final PilePlaces pile;
  private final State state;
  private final Draws draws;
  private final Audit audit;
  private final Slots slots;

  PileMoves(State state, Draws draws, Audit audit) {
    this.problem = state.problem;
    this.pile = problem.pile();
    this.state = state;
    this.draws = draws;
    this.audit = audit;
    this.slots = problem.slots();
  }

  /** Tries one exchange. */
  void exchange(double temperature) {
    LaidPile laid = state.laid;
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
    long most = (long) (temperature * draws.exponential());
    long told = state.exchangeSequences(placeA, placeB);
    if (audit != null && audit.full()) {
      Runnable swap = () -> swap(placeA, placeB);
      audit.tried(
          "exchange of a finished piece",
          told,
          swap,
          swap,
          slots.border(placeA),
          slots.border(placeB));
    }
    if (told <= most) {
      swap(placeA, placeB);
      state.addCost(told);
      if (audit != null) {
        audit.made("exchange of a finished piece", slots.border(placeA), slots.border(placeB));
      }
    }
  }

  /** Whether what is still to be worked at one place may be worked at another. */
  private boolean mayBeWorked(int from, int to) {
    int slot = slots.pieceStart()[from];
    int end = slots.pieceStart()[from + 1];
    for (int there = slots.pieceStart()[to]; slot < end; slot++, there++) {
      if (!problem.domains().allows(there, state.yarn[slot])) {
        return false;
      }
    }
    return true;
  }

  private void swap(int placeA, int placeB) {
    int slotB = slots.pieceStart()[placeB];
    int end = slots.pieceStart()[placeA + 1];
    for (int slotA = slots.pieceStart()[placeA]; slotA < end; slotA++, slotB++) {
      int yarn = state.yarn[slotA];
      state.apply(slotA, state.yarn[slotB]);
      state.apply(slotB, yarn);
    }
    state.laid.exchange(placeA, placeB);
  }
}
