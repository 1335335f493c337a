package lozengy.solver.search;

import java.util.function.BooleanSupplier;
import lozengy.solver.problem.Problem;

/**
 * Looks for something valid to begin with: deals each walker a start and makes short legs until one
 * is, each twice as long as the one before.
 */
final class FirstDeals {

  /** Deals at the start, whatever the time, and moves of the first for each slot. */
  private static final int FEW = 4;

  private static final int LEG_OF_FEW = 30;

  /** Slots from which on the clock counts at the start, too. */
  private static final int LARGE = 20_000;

  /** Further deals, and the moves of their first for each slot. */
  private static final int MORE = 5;

  private static final int LEG_OF_MORE = 250;

  /** Exchanges of a plan of counts. */
  private static final int EXCHANGES = 300;

  /** Warm as a leg that goes on from a valid assignment. */
  private static final double WARM = 0.5;

  /**
   * For a pile that does not lie well at once: pieces must be able to pass where they may not stay.
   */
  private static final double HOT_FOR_PILE = 16;

  private final Problem problem;
  private final Walkers walkers;
  private final BorderPlans plans;
  private final Budget budget;
  private final int slots;

  /**
   * Makes ready.
   *
   * @param plans plans of borders that the walkers share
   * @param slots how many slots may change
   */
  FirstDeals(Problem problem, Walkers walkers, BorderPlans plans, Budget budget, int slots) {
    this.problem = problem;
    this.walkers = walkers;
    this.plans = plans;
    this.budget = budget;
    this.slots = slots;
  }

  /**
   * Makes a few deals, however little time there is; one at least, unless it takes long, where the
   * mending of an earlier plan has left no moves: else there would be nothing to tell of.
   */
  boolean few() {
    boolean small = slots < LARGE;
    int least = small && budget.spent() > 0 ? 1 : 0;
    return deal(least, FEW, LEG_OF_FEW, plans.few(), small ? budget::stopped : walkers::ended);
  }

  /** Makes more deals, with longer legs. */
  boolean more() {
    return deal(0, MORE, LEG_OF_MORE, true, walkers::ended);
  }

  private boolean deal(
      int least, int most, long movesOfSlot, boolean planned, BooleanSupplier ends) {
    for (int deal = 0;
        deal < most && !walkers.found() && (deal < least || !ends.getAsBoolean());
        deal++) {
      // the last one as if there were many border yarns, whose counts suit a tight stock better
      boolean plan = planned && deal < most - 1;
      int exchanges = walkers.tiled() ? DealSchedule.exchanges(Long.MAX_VALUE) : EXCHANGES;
      walkers.together(walker -> walker.deal(exchanges, plan));
      walkers.barOverdrawing(deal % 2 == 0);
      // even where the deal is valid at once a chunk is walked, which tells the speed
      long longest = walkers.found() ? Walkers.CHUNK : Long.MAX_VALUE;
      walkers.leg(Math.min(longest, (movesOfSlot << deal) * slots), hot(deal), ends);
    }
    walkers.barOverdrawing(true);
    return walkers.found();
  }

  private double hot(int deal) {
    return deal == 0 || problem.pile().isEmpty() ? WARM : HOT_FOR_PILE;
  }
}
