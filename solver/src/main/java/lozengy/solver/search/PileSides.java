package lozengy.solver.search;

import lozengy.solver.problem.Domains;
import lozengy.solver.problem.PilePlaces;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * Exchanges the pieces of a dealt pile until as many as can lie where their border fits a plan of
 * borders. O(places squared) in the worst case, O(places) where most fit.
 */
final class PileSides {

  private final Problem problem;
  private final PilePlaces pile;
  private final Slots slots;
  private final Domains planned;

  /**
   * Sets up the exchanges.
   *
   * @param planned what borders are to take
   */
  PileSides(Problem problem, Domains planned) {
    this.problem = problem;
    this.pile = problem.pile();
    this.slots = problem.slots();
    this.planned = planned;
  }

  /**
   * Exchanges what does not fit.
   *
   * @param laid by place the stack, or -1; changed in place
   */
  void settle(int[] laid) {
    for (int[] places : pile.places()) {
      for (int place : places) {
        for (int i = 0; i < places.length && misfits(laid[place], place) > 0; i++) {
          exchangeIfBetter(laid, place, places[i]);
        }
      }
    }
  }

  private void exchangeIfBetter(int[] laid, int a, int b) {
    int before = misfits(laid[a], a) + misfits(laid[b], b);
    int after = misfits(laid[b], a) + misfits(laid[a], b);
    boolean possible =
        pile.mayLie(slots, problem.domains(), laid[a], b)
            && pile.mayLie(slots, problem.domains(), laid[b], a);
    if (after < before && possible) {
      int stack = laid[a];
      laid[a] = laid[b];
      laid[b] = stack;
    }
  }

  private int misfits(int stack, int place) {
    if (stack < 0) {
      return 0;
    }
    int[] yarns = pile.yarns()[stack];
    return planned.allows(slots.border(place), yarns[yarns.length - 1]) ? 0 : 1;
  }
}
