package lozengy.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.ObjIntConsumer;
import lozengy.solver.problem.Problem;

/**
 * Several walkers in lockstep: each makes the same number of moves between two meetings, so that
 * the outcome depends on the seed and the moves alone, however many threads carry them.
 *
 * <p>Each deal is mended before it is walked, so most are valid at once; short first legs serve
 * where they are not. After that, small blankets are dealt afresh many times, for the counts that
 * are dealt decide much of the score, and the best is gone over once more; the larger a blanket,
 * the longer such a leg, until a single one takes all there is. Where time is left over, further
 * legs start again from the best of all walkers.
 *
 * <p>Planning again begins with the earlier plan, see {@link Replanning}.
 */
public final class Search implements AutoCloseable {

  /** How many walkers: fixed, for the outcome depends on it. */
  public static final int WALKERS = 2;

  private static final int CHUNK = 1 << 15;

  /** Moves taken to be left while no speed is known. */
  private static final long UNKNOWN_SPEED = 50L * WALKERS * CHUNK;

  /** Deals at the start, whatever the time, and moves of the first for each slot; doubled. */
  private static final int FIRST_DEALS = 4;

  private static final int FIRST_LEG = 30;

  /** Slots from which on the clock counts at the start, too. */
  private static final int LARGE = 20_000;

  /** Further deals, and the moves of their first for each slot; doubled. */
  private static final int MORE_DEALS = 5;

  private static final int MORE_LEG = 250;

  /** Fresh deals without any better end the dealing, if they are also half of all. */
  private static final int IDLE_DEALS = 64;

  /** The part of the first leg, where a blanket is too large for fresh deals. */
  private static final double FIRST_PART = 0.2;

  /** Exchanges of a plan of counts at the start. */
  private static final int FIRST_EXCHANGES = 300;

  /**
   * Temperatures, in steps of the lightest repeat: hot enough to rearrange, cold enough to settle.
   */
  private static final double HOT = 1.0;

  /**
   * For a pile that does not lie well at once: pieces must be able to pass where they may not stay.
   */
  private static final double HOT_FOR_PILE = 16;

  private static final double WARM = 0.5;
  private static final double COLD = 0.08;

  private static final int IDLE_LEGS = 4;

  /** Moves of a walker that take about as long as a floor does. */
  private static final long MOVES_WORTH_A_FLOOR = 20_000_000;

  private final Problem problem;
  private final long seed;
  private final int slots;
  private final Budget budget;
  private final LongSupplier floor;
  private final Runnable tick;
  private final BorderPlans plans;
  private boolean dealt;
  private OptionalLong apart = OptionalLong.empty();
  private Replanning replanning;
  private long floorCost = Long.MIN_VALUE;
  private final List<Walker> walkers = new ArrayList<>();
  private final Lockstep lockstep;

  /**
   * Sets up a search.
   *
   * @param problem the problem
   * @param seed seed of the random source
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
      int threadCount,
      Budget budget,
      LongSupplier floor,
      Runnable tick,
      Assertions assertions) {
    this.problem = problem;
    this.seed = seed;
    this.slots = movable(problem);
    this.budget = budget;
    this.floor = floor;
    this.tick = tick;
    this.plans = new BorderPlans(problem);
    for (int i = 0; i < WALKERS; i++) {
      walkers.add(new Walker(problem, plans, seed * WALKERS + i, assertions));
    }
    this.lockstep = new Lockstep(Math.min(threadCount, WALKERS));
  }

  /**
   * Deals each walker a start and makes short legs until one is valid: a few deals, however little
   * time there is, for without them there is nothing to hand out.
   *
   * @return whether a valid assignment was found
   */
  public boolean start() {
    return deals(
        FIRST_DEALS, FIRST_LEG, plans.few(), slots < LARGE ? budget::stopped : this::ended);
  }

  /**
   * Looks for a valid assignment by more deals and longer legs.
   *
   * @return whether one was found
   */
  public boolean startAgain() {
    return deals(MORE_DEALS, MORE_LEG, true, this::ended);
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
    Repair repair = new Repair(problem, plan, seed);
    Optional<int[]> repaired = repair.repaired(budget::over);
    budget.resume();
    budget.spend(repair.moves());
    repaired.ifPresent(
        assignment -> {
          startFrom(assignment);
          barOverdrawing(true);
          replanning = new Replanning(this, problem, plan, endsByItself);
        });
    return repaired.isPresent();
  }

  private boolean deals(int most, long movesOfSlot, boolean planned, BooleanSupplier ends) {
    for (int deal = 0; deal < most && !found() && !ends.getAsBoolean(); deal++) {
      // the last one as if there were many border yarns, whose counts suit a tight stock better
      boolean plan = planned && deal < most - 1;
      together(walker -> walker.deal(FIRST_EXCHANGES, plan));
      barOverdrawing(deal % 2 == 0);
      // even where the deal is valid at once a chunk is walked, which tells the speed
      long longest = found() ? CHUNK : Long.MAX_VALUE;
      leg(Math.min(longest, (movesOfSlot << deal) * slots), hotOfDeal(deal), ends);
    }
    barOverdrawing(true);
    dealt = found();
    return dealt;
  }

  /** Warm as ever; for a pile that does not lie well at once, so hot that pieces can pass. */
  private double hotOfDeal(int deal) {
    return deal == 0 || problem.pile().isEmpty() ? WARM : HOT_FOR_PILE;
  }

  /** The first walker never overdraws; whether the others do is to be said. */
  private void barOverdrawing(boolean all) {
    for (int i = 0; i < walkers.size(); i++) {
      walkers.get(i).barOverdrawing(all || i == 0);
    }
  }

  private boolean found() {
    return bestCost() < Long.MAX_VALUE;
  }

  /**
   * Starts all walkers from a valid assignment found elsewhere.
   *
   * @param assignment the yarn of every slot; copied by each walker
   */
  public void startFrom(int[] assignment) {
    dealt = false;
    together(walker -> walker.restart(assignment));
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
    if (plans.few() && slots > DealSchedule.SLOTS_OF_SMALL) {
      dealPlans(end);
    } else if (!dealAfresh(end)) {
      if (dealt && movesLeft(end) >= DealSchedule.MOVES_WORTH_A_PLAN) {
        deal(movesLeft(end), false);
      }
      leg(Math.max(1, (long) (movesLeft(end) * FIRST_PART)), HOT);
      askForFloor(end);
      // under a time limit only now is it known how many moves there are
      if (!dealAfresh(end)) {
        lastLeg(end, HOT);
      }
    }
    apart = apartNow();
    int idle = 0;
    while (!ended() && idle < IDLE_LEGS && movesLeft(end) >= leastLeg()) {
      long before = bestCost();
      restartFromBest();
      leg(Math.min(movesLeft(end), Math.max(CHUNK, budget.spent())), found() ? WARM : HOT);
      idle = bestCost() < before ? 0 : idle + 1;
    }
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
    long length = DealSchedule.movesBetween(slots, movesLeft(end));
    while (!ended()
        && spent + length <= DealSchedule.PART * (spent + movesLeft(end))
        && deals - lastBetter < Math.max(IDLE_DEALS, lastBetter)) {
      long before = bestCost();
      deal(length, plans.few() && deals % DealSchedule.PLANNED_EVERY == 0);
      leg(length, HOT);
      spent += length;
      deals++;
      lastBetter = bestCost() < before ? deals : lastBetter;
      askForFloor(end);
      length = DealSchedule.movesBetween(slots, spent + movesLeft(end));
    }
    return deals > 0;
  }

  /**
   * Where few border yarns may meet, and the board is not small: deals, in turns by a plan of
   * borders and freely, which suits a tight stock better where it can be mended; lets the borders
   * settle before the other rounds bind them; and goes on from the best of all in heats.
   */
  private void dealPlans(long end) {
    long all = movesLeft(end);
    ElitePool standings = new ElitePool();
    long length = DealSchedule.movesOfPlan(all);
    for (int deal = 0; deal < DealSchedule.PLAN_DEALS && !ended(); deal++) {
      deal(length, deal % 2 == 0);
      walkers.forEach(walker -> walker.bordersOnly(true));
      leg((long) (DealSchedule.BORDERS_PART * length), HOT);
      walkers.forEach(walker -> walker.bordersOnly(false));
      leg((long) ((1 - DealSchedule.BORDERS_PART) * length), HOT);
      standings.keep(walkers);
    }
    List<int[]> best = standings.takeBest(DealSchedule.PLANS_IN_HEATS);
    for (int heat = 0; heat < best.size() && !ended(); heat += WALKERS) {
      restart(best.subList(heat, best.size()));
      leg(DealSchedule.movesOfHeat(all), HOT);
      standings.keep(walkers);
    }
    restart(standings.takeBest(WALKERS));
    lastLeg(end, HOT);
  }

  /** Each walker goes on from an assignment of its own; the last, where there are too few. */
  private void restart(List<int[]> assignments) {
    for (int i = 0; i < WALKERS && !assignments.isEmpty(); i++) {
      walkers.get(i).restart(assignments.get(Math.min(i, assignments.size() - 1)));
    }
  }

  /** Deals all walkers afresh, with as good a plan as suits the moves to come. */
  private void deal(long moves, boolean planned) {
    int exchanges = DealSchedule.exchanges(moves);
    together(walker -> walker.deal(exchanges, planned));
  }

  /** Waits for the floor, once, if so many moves are left that this may save some. */
  private void askForFloor(long end) {
    if (budget.countsMovesOnly()
        && floorCost == Long.MIN_VALUE
        && movesLeft(end) >= MOVES_WORTH_A_FLOOR) {
      floorCost = floor.getAsLong();
    }
  }

  /** Moves that each walker may still make. */
  long movesLeft(long end) {
    return Math.min(budget.movesLeft(UNKNOWN_SPEED), end - budget.spent()) / WALKERS;
  }

  /** A leg so short is not worth while, unless moves are counted. */
  private long leastLeg() {
    return budget.countsMovesOnly() ? 1 : CHUNK;
  }

  /** {@return cost of the best valid assignment; {@link Long#MAX_VALUE} while there is none} */
  public long bestCost() {
    return walkers.stream().mapToLong(Walker::bestCost).min().orElse(Long.MAX_VALUE);
  }

  /**
   * {@return the best valid assignment; of equals, the first walker's; null while there is none}
   */
  public int[] best() {
    long bestCost = bestCost();
    return bestCost == Long.MAX_VALUE
        ? null
        : walkers.stream().filter(w -> w.bestCost() == bestCost).findFirst().orElseThrow().best();
  }

  private OptionalLong apartNow() {
    long worst = walkers.stream().mapToLong(Walker::bestCost).max().orElseThrow();
    return worst == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(worst - bestCost());
  }

  /**
   * {@return cost by which the walkers' own bests lay apart before they all went on from the best;
   * empty where that is not known, as where one of them found nothing valid}
   */
  public OptionalLong apart() {
    return apart;
  }

  /** {@return the state with the fewest broken rules, valid or not} */
  public int[] nearest() {
    Walker nearest = walkers.get(0);
    for (Walker walker : walkers) {
      if (walker.state().hard() < nearest.state().hard()) {
        nearest = walker;
      }
    }
    return nearest.state().yarn.clone();
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

  /** Whether the budget is spent or the floor is met. */
  boolean ended() {
    if (!budget.countsMovesOnly()) {
      floorCost = floor.getAsLong();
    }
    return budget.over() || bestCost() <= floorCost;
  }

  private void restartFromBest() {
    int[] best = best();
    if (best != null) {
      startFrom(best.clone());
    }
  }

  /** A leg of so many moves of each walker, from a temperature in steps of the lightest repeat. */
  void leg(long moves, double hot) {
    leg(moves, hot, this::ended);
  }

  private void leg(long moves, double hot, BooleanSupplier ends) {
    leg(() -> moves, hot, ends);
  }

  /** A leg that takes all moves left; a limit in seconds tells only on the way how many. */
  private void lastLeg(long end, double hot) {
    long before = budget.spent();
    leg(() -> Math.max(1, (budget.spent() - before) / WALKERS + movesLeft(end)), hot, this::ended);
  }

  private void leg(LongSupplier length, double hot, BooleanSupplier ends) {
    double step = problem.prices().step();
    long moves = length.getAsLong();
    long planned = moves;
    walkers.forEach(walker -> walker.beginLeg(hot * step, COLD * step, planned));
    budget.resume();
    long done = 0;
    while (done < moves && !ends.getAsBoolean()) {
      long chunk = Math.min(CHUNK, moves - done);
      if (budget.countsMovesOnly()) {
        chunk = Math.min(chunk, Math.max(1, budget.movesLeft(Long.MAX_VALUE) / WALKERS));
      }
      long each = chunk;
      together(walker -> walker.walk(each));
      done += chunk;
      budget.spend(chunk * WALKERS);
      moves = length.getAsLong();
      long now = moves;
      walkers.forEach(walker -> walker.stretchLeg(now));
      if (done >= moves || ends.getAsBoolean()) {
        walkers.forEach(Walker::look);
      }
      tick.run();
    }
  }

  /** Has each walker do something by its number. */
  void eachWith(ObjIntConsumer<Walker> work) {
    together(walker -> work.accept(walker, walkers.indexOf(walker)));
  }

  private void together(Consumer<Walker> work) {
    lockstep.run(walkers, work);
  }

  @Override
  public void close() {
    lockstep.close();
  }
}
