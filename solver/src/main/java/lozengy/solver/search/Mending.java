package lozengy.solver.search;

import lozengy.solver.problem.Problem;

/**
 * Mends a fresh deal: goes from one round that breaks a rule beside its neighbours to the next, and
 * exchanges it with others of its group until it fits. A deal breaks few rules against its size, so
 * this finds a valid assignment in far fewer steps than a walk that draws rounds anywhere; where
 * rules are tight it leaves the rest to the walk. O(rounds) a pass and {@link #TRIES} for each
 * round at fault.
 */
final class Mending {

  private static final int PASSES = 12;
  private static final int TRIES = 48;

  /** One in so many tries gives the round another yarn: its group may hold none that fits. */
  private static final int CHANGE_EVERY = 6;

  private final Problem problem;
  private final State state;
  private final Moves moves;

  Mending(State state, Moves moves) {
    this.problem = state.problem;
    this.state = state;
    this.moves = moves;
  }

  /** Mends until nothing is at fault, pass by pass taking more losses into account. */
  void mend() {
    for (int pass = 0; pass < PASSES && state.hard() > 0; pass++) {
      double temperature = pass * (double) problem.prices().step();
      for (int slot : problem.slots().free()) {
        for (int i = 1; i <= TRIES && state.atFault(slot); i++) {
          if (i % CHANGE_EVERY == 0) {
            moves.change(slot, temperature);
          } else {
            moves.exchangeAlike(slot, temperature);
          }
        }
      }
    }
  }
}
