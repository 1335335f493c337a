package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.Problem;

/**
 * The course of planning again. Round by round one walker goes on from the best there is, which at
 * first is the repaired plan, and each other, or this one in every second round, from a deal of
 * counts close to the earlier plan, a change now weighing more and now less than it costs, in which
 * rounds keep their yarn as far as the counts allow; now and then from the earlier plan with what
 * is open filled anew. No leg's length depends on the moves that are left: so a course that ends
 * because nothing gets better is the same as one with just so many moves.
 */
final class Replanning {

  /** Moves that each walker makes in a round, for each slot. */
  private static final int MOVES_OF_SLOT = 150;

  /** By rounds, what a change weighs in a deal of counts, in what it costs. */
  private static final double[] CHANGE_COSTS = {1, 2, 0.5, 4, 0};

  /** In one of so many rounds what stands is filled anew instead, with no plan of counts. */
  private static final int FILL_EVERY = 3;

  /** By rounds, the temperature, in steps of the lightest repeat. */
  private static final double[] HOT = {0.5, 0.25, 1};

  private static final int EXCHANGES = 1000;

  /** Rounds in a row without a gain that end it, where it ends by itself. */
  private static final int IDLE = 3;

  /** Rounds without a gain that end it, at least, where it does not end by itself. */
  private static final int LONG_IDLE = 100;

  /** A gain that counts where it ends by itself, in points. */
  private static final double GAIN_POINTS = 0.02;

  private final Walkers walkers;
  private final Problem problem;
  private final EarlierPlan plan;
  private final boolean endsByItself;
  private boolean allStands;
  private int round;
  private int idle;

  /**
   * Sets up a course.
   *
   * @param walkers the walkers
   * @param plan what stands of the earlier plan
   * @param endsByItself whether it ends soon once little gets better
   */
  Replanning(Walkers walkers, Problem problem, EarlierPlan plan, boolean endsByItself) {
    this.walkers = walkers;
    this.problem = problem;
    this.plan = plan;
    this.endsByItself = endsByItself;
  }

  /** Goes on until the walkers' budget or a number of moves is spent, or nothing gets better. */
  void improve(long end, int slots) {
    allStands |= round == 0 && Arrays.equals(plan.yarn(), walkers.best());
    long gain = endsByItself ? (long) (GAIN_POINTS * problem.prices().unitsPerPoint()) : 1;
    while (!walkers.ended() && !idle() && walkers.movesLeft(end) > 0) {
      long before = walkers.bestCost();
      int[] best = walkers.best().clone();
      long changeCost =
          (long) (CHANGE_COSTS[round % CHANGE_COSTS.length] * problem.prices().keep());
      walkers.eachWith(
          (walker, number) -> {
            if (number == 0 && (walkers.count() > 1 || round % 2 == 0)) {
              walker.restart(best);
            } else if (round % FILL_EVERY == FILL_EVERY - 1) {
              walker.fill(plan, changeCost);
            } else {
              walker.dealNear(plan, changeCost, EXCHANGES);
            }
          });
      long length = (long) MOVES_OF_SLOT * slots;
      walkers.leg(Math.min(walkers.movesLeft(end), length), HOT[round % HOT.length]);
      round++;
      idle = before - walkers.bestCost() >= gain ? 0 : idle + 1;
    }
  }

  private boolean idle() {
    if (!endsByItself) {
      return idle >= Math.max(LONG_IDLE, round / 2);
    }
    // if all of the earlier plan can stand, and neither going on nor a deal gains at first, later
    // rounds hardly ever do
    int first = walkers.count() > 1 ? 1 : 2;
    return idle >= (allStands && idle == round ? first : IDLE);
  }
}
