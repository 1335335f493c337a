package lozengy.solver.search;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongSupplier;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.solver.problem.Problem;

/**
 * Several walkers in lockstep: each makes the same number of moves between two meetings, so that
 * the outcome depends on their number, the seed and the moves, however many threads carry them.
 *
 * <p>Each deal is mended before it is walked, so most are valid at once; short first legs serve
 * where they are not. After that, small blankets are dealt afresh many times, for the counts that
 * are dealt decide much of the score, and the best is gone over once more; the larger a blanket,
 * the longer such a leg, until a single one takes all there is. Where time is left over, further
 * legs start again from the best of all walkers.
 *
 * <p>Where yarn is to spare, the last walker begins with its borders in a pattern, see {@link
 * BorderPattern}, and all go on from it if that leads. A {@link Reassignment} of many rounds at
 * once ends the search.
 *
 * <p>On a large blanket a single walker does better than several, for each has few moves for a
 * round: its tiles change side by side, see {@link TiledWalk}.
 *
 * <p>Planning again begins with the earlier plan, see {@link Replanning}.
 */
public final class Search implements AutoCloseable {

  /** Fresh deals without any better end the dealing, if they are also half of all. */
  private static final int IDLE_DEALS = 64;

  /** The part of the first leg, where a blanket is too large for fresh deals. */
  private static final double FIRST_PART = 0.2;

  /**
   * Temperatures, in steps of the lightest repeat: hot enough to rearrange, cold enough to settle.
   */
  private static final double HOT = 1.0;

  private static final double WARM = 0.5;

  /**
   * Points by which a pattern of borders has to be ahead after the first leg: borders that stay let
   * the rest settle sooner, but in the long run they lose by it if they are no better.
   */
  private static final double LEAD_POINTS = 0.4;

  /** For a large board, which has few moves for each round. */
  private static final double HOT_OF_LARGE = 0.6;

  private static final int IDLE_LEGS = 4;

  /** The part of what may be spent that is left to exchanges of many rounds at the end. */
  private static final double REASSIGNED_PART = 0.03;

  private final Problem problem;
  private final long seed;
  private final int slots;
  private final Budget budget;
  private final BorderPlans plans;
  private boolean dealt;
  private OptionalLong apart = OptionalLong.empty();
  private Replanning replanning;
  private final Walkers walkers;
  private final FirstDeals firstDeals;

  /**
   * Sets up a search.
   *
   * @param problem the problem
   * @param seed seed of the random source
   * @param walkerCount walkers that share the moves, at least 1
   * @param threadCount threads to use, at least 1
   * @param budget what may be spent
   * @param floor asked for a cost that no valid assignment can fall below; the search ends when it
   *     is met. Where only moves are limited, it is asked once, if many moves are left; else now
   *     and then
   * @param tick called on the solving thread between two meetings of the walkers
   * @param assertions how closely the walkers check themselves
   */
  public Search(
      Problem problem,
      long seed,
      int walkerCount,
      int threadCount,
      Budget budget,
      LongSupplier floor,
      Runnable tick,
      Assertions assertions) {
    this.problem = problem;
    this.seed = seed;
    this.slots = movable(problem);
    this.budget = budget;
    this.plans = new BorderPlans(problem);
    this.walkers =
        new Walkers(
            problem, plans, seed, walkerCount, threadCount, budget, floor, tick, assertions);
    this.firstDeals = new FirstDeals(problem, walkers, plans, budget, slots);
  }

  /**
   * Deals each walker a start and makes short legs until one is valid: a few deals, however little
   * time there is, for without them there is nothing to hand out.
   *
   * @return whether a valid assignment was found
   */
  public boolean start() {
    dealt = firstDeals.few();
    return dealt;
  }

  /**
   * Looks for a valid assignment by more deals and longer legs.
   *
   * @return whether one was found
   */
  public boolean startAgain() {
    dealt = firstDeals.more();
    return dealt;
  }

  /**
   * Starts from the problem's earlier plan, repaired with few changes where it cannot stand, and
   * goes on from there: nothing that {@link #best} tells from now on costs more.
   *
   * @param endsByItself whether to end soon once little gets better, whatever is left to spend
   * @return whether the repaired plan is valid; if not, another start is needed
   */
  public boolean startFromEarlier(boolean endsByItself) {
    EarlierPlan plan = EarlierPlan.of(problem, new Draws(seed));
    Repair repair = new Repair(problem, plan, seed, budget.movesAllowed());
    Optional<int[]> repaired = repair.repaired(budget::over);
    budget.resume();
    budget.spend(repair.moves());
    repaired.ifPresent(
        assignment -> {
          startFrom(assignment);
          walkers.barOverdrawing(true);
          replanning = new Replanning(walkers, problem, plan, endsByItself);
        });
    return repaired.isPresent();
  }

  /**
   * {@return how many walkers a blanket gains from: two; one where the blanket is so large that a
   * single walker has its tiles change side by side}
   *
   * @param blanket the blanket
   */
  public static int usualWalkers(Blanket blanket) {
    return TiledWalk.suits(blanket) ? 1 : Arrangement.Solved.USUAL_WALKERS;
  }

  /** Searches until the budget is spent, the floor is met, or nothing has improved for long. */
  public void improve() {
    improve(Long.MAX_VALUE);
  }

  /**
   * Searches as {@link #improve()} does, but no further than a number of moves.
   *
   * @param most moves to make at most, beside the budget
   */
  public void improve(long most) {
    if (slots == 0) {
      return;
    }
    long end = most > Long.MAX_VALUE - budget.spent() ? Long.MAX_VALUE : budget.spent() + most;
    if (replanning != null) {
      replanning.improve(end, slots);
      return;
    }
    boolean all = most == Long.MAX_VALUE && problem.slots().free().length > 0;
    budget.keepBack(all ? REASSIGNED_PART : 0);
    if (plans.few() && slots > DealSchedule.SLOTS_OF_SMALL) {
      dealPlans(end);
    } else if (walkers.tiled()) {
      walkers.lastLeg(end, HOT_OF_LARGE);
    } else {
      improveFreely(end);
    }
    apart = walkers.apart();
    int idle = 0;
    while (!walkers.ended() && idle < IDLE_LEGS && walkers.movesLeft(end) >= walkers.leastLeg()) {
      long before = walkers.bestCost();
      walkers.restartFromBest();
      walkers.leg(
          Math.min(walkers.movesLeft(end), Math.max(Walkers.CHUNK, budget.spent())),
          walkers.found() ? WARM : HOT);
      idle = walkers.bestCost() < before ? 0 : idle + 1;
    }
    budget.keepBack(0);
    if (all) {
      walkers.reassignBest();
    }
  }

  /**
   * Goes on from a pattern of borders if that comes far ahead in a first leg; else deals afresh, if
   * the board is small enough, or makes one long leg.
   */
  private void improveFreely(long end) {
    boolean patterned = worthAPattern(end);
    if (patterned) {
      firstLeg(end, true);
      walkers.last().changeAll();
      if (walkers.lastLeadsBy((long) (LEAD_POINTS * problem.prices().unitsPerPoint()))) {
        walkers.restartFromBest();
        walkers.lastLeg(end, WARM);
        return;
      }
    }
    if (!dealAfresh(end)) {
      if (!patterned) {
        firstLeg(end, false);
      }
      // under a time limit only now is it known how many moves there are
      if (!dealAfresh(end)) {
        walkers.lastLeg(end, HOT);
      }
    }
  }

  /** A first leg, from fresh deals if there is a valid one; the last walker's with a pattern. */
  private void firstLeg(long end, boolean withPattern) {
    long moves = walkers.movesLeft(end);
    if (dealt && moves >= DealSchedule.MOVES_WORTH_A_PLAN) {
      deal(moves, false);
    }
    if (withPattern) {
      BorderPattern pattern = new BorderPattern(problem, new Draws(seed));
      walkers.last().deal(DealSchedule.exchanges(moves), pattern.yarns(budget::over));
      budget.spend(pattern.moves());
    }
    walkers.leg(Math.max(1, (long) (walkers.movesLeft(end) * FIRST_PART)), HOT);
    walkers.askForFloor(end);
  }

  /** Whether a pattern of borders may be planned, and there are moves and room enough for it. */
  private boolean worthAPattern(long end) {
    long moves = walkers.count() * walkers.movesLeft(end);
    return dealt
        && walkers.count() > 1
        && slots > DealSchedule.SLOTS_OF_SMALL
        && DealSchedule.worthAPattern(BorderPattern.mostMoves(problem), moves)
        && BorderPattern.suits(problem, walkers.best());
  }

  /**
   * Deals afresh as often as it is worth while; where few border yarns may meet, now and then by a
   * plan of borders.
   *
   * @return whether at least one leg was made
   */
  private boolean dealAfresh(long end) {
    int deals = 0;
    int lastBetter = 0;
    long spent = 0;
    long length = DealSchedule.movesBetween(slots, walkers.movesLeft(end));
    while (!walkers.ended()
        && spent + length <= DealSchedule.PART * (spent + walkers.movesLeft(end))
        && deals - lastBetter < Math.max(IDLE_DEALS, lastBetter)) {
      long before = walkers.bestCost();
      if (plans.few() && deals % DealSchedule.PLANNED_EVERY == 0) {
        deal(length, true);
      } else {
        int exchanges = DealSchedule.exchanges(length);
        walkers.together(walker -> walker.dealOn(exchanges));
      }
      walkers.leg(length, HOT);
      spent += length;
      deals++;
      lastBetter = walkers.bestCost() < before ? deals : lastBetter;
      walkers.askForFloor(end);
      length = DealSchedule.movesBetween(slots, spent + walkers.movesLeft(end));
    }
    return deals > 0;
  }

  /**
   * Where few border yarns may meet, and the board is not small: deals, in turns by a plan of
   * borders and freely, which suits a tight stock better where it can be mended; lets the borders
   * settle before the other rounds bind them; and goes on from the best of all in heats.
   */
  private void dealPlans(long end) {
    long all = walkers.movesLeft(end);
    ElitePool elite = new ElitePool();
    long length = DealSchedule.movesOfPlan(all);
    for (int deal = 0; deal < DealSchedule.PLAN_DEALS && !walkers.ended(); deal++) {
      deal(length, deal % 2 == 0);
      walkers.together(walker -> walker.bordersOnly(true));
      walkers.leg((long) (DealSchedule.BORDERS_PART * length), HOT);
      walkers.together(walker -> walker.bordersOnly(false));
      walkers.leg((long) ((1 - DealSchedule.BORDERS_PART) * length), HOT);
      walkers.keepIn(elite);
    }
    int count = walkers.count();
    List<int[]> best = elite.takeBest(Math.max(DealSchedule.PLANS_IN_HEATS, count));
    for (int heat = 0; heat < best.size() && !walkers.ended(); heat += count) {
      walkers.restart(best.subList(heat, best.size()));
      walkers.leg(DealSchedule.movesOfHeat(all, count), HOT);
      walkers.keepIn(elite);
    }
    walkers.restart(elite.takeBest(count));
    walkers.lastLeg(end, HOT);
  }

  /** Deals all walkers afresh, with as good a plan as suits the moves to come. */
  private void deal(long moves, boolean planned) {
    int exchanges = DealSchedule.exchanges(moves);
    walkers.together(walker -> walker.deal(exchanges, planned));
  }

  /**
   * Starts all walkers from a valid assignment found elsewhere.
   *
   * @param assignment the yarn of every slot; copied by each walker
   */
  public void startFrom(int[] assignment) {
    dealt = false;
    walkers.startFrom(assignment);
  }

  /** {@return cost of the best valid assignment; {@link Long#MAX_VALUE} while there is none} */
  public long bestCost() {
    return walkers.bestCost();
  }

  /**
   * {@return the best valid assignment; of equals, the first walker's; null while there is none}
   */
  public int[] best() {
    return walkers.best();
  }

  /** {@return the state with the fewest broken rules, valid or not} */
  public int[] nearest() {
    return walkers.nearest();
  }

  /**
   * {@return cost by which the walkers' own bests lay apart before they all went on from the best;
   * empty where that is not known, as where one of them found nothing valid}
   */
  public OptionalLong apart() {
    return apart;
  }

  /** Slots that may change, by themselves or with a piece of the pile. */
  private static int movable(Problem problem) {
    int[] counts = problem.pile().counts();
    int slots = problem.slots().free().length;
    for (int stack = 0; stack < counts.length; stack++) {
      boolean filled = problem.pile().fills(problem.pile().kinds()[stack]);
      slots += filled ? counts[stack] * problem.pile().yarns()[stack].length : 0;
    }
    return slots;
  }

  @Override
  public void close() {
    walkers.close();
  }
}
