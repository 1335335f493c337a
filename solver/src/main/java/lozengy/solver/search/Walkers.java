package lozengy.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.ObjIntConsumer;
import lozengy.solver.problem.Problem;

/**
 * Several walkers in lockstep, and what they may spend: each makes the same number of moves between
 * two meetings, so that the outcome depends on their number, the seed and the moves, however many
 * threads carry them.
 */
final class Walkers implements AutoCloseable {

  /** Moves of a walker between two meetings. */
  static final int CHUNK = 1 << 15;

  /** Moves of a walker taken to be left while no speed is known. */
  private static final long UNKNOWN_SPEED = 50L * CHUNK;

  /** Where a leg ends, in steps of the lightest repeat: cold enough to settle. */
  private static final double COLD = 0.08;

  /** Where the last leg of all ends, from which no further one goes on. */
  private static final double COLD_AT_LAST = 0.05;

  /** Moves of a walker that take about as long as a floor does. */
  private static final long MOVES_WORTH_A_FLOOR = 20_000_000;

  private final Problem problem;
  private final Budget budget;
  private final LongSupplier floor;
  private final Runnable tick;
  private final List<Walker> walkers = new ArrayList<>();
  private final Lockstep lockstep;
  private final TiledWalk tiled;
  private long floorCost = Long.MIN_VALUE;

  /**
   * Makes the walkers.
   *
   * @param seed seed of their random sources
   * @param count how many, at least 1; the outcome depends on it
   * @param threadCount threads to use, at least 1
   * @param budget what may be spent
   * @param floor a cost that no valid assignment can fall below
   * @param tick called between two meetings
   */
  Walkers(
      Problem problem,
      BorderPlans plans,
      long seed,
      int count,
      int threadCount,
      Budget budget,
      LongSupplier floor,
      Runnable tick,
      Assertions assertions) {
    this.problem = problem;
    this.budget = budget;
    this.floor = floor;
    this.tick = tick;
    for (int i = 0; i < count; i++) {
      walkers.add(new Walker(problem, plans, seed * count + i, count, assertions));
    }
    boolean tiles = count == 1 && TiledWalk.suits(problem.blanket());
    this.lockstep = new Lockstep(Math.min(threadCount, tiles ? Tiles.MOST_AT_ONCE : count));
    this.tiled = tiles ? new TiledWalk(walkers.get(0), Tiles.of(problem), lockstep, seed) : null;
  }

  /** How many. */
  int count() {
    return walkers.size();
  }

  /** Whether a single walker has its board in tiles. */
  boolean tiled() {
    return tiled != null;
  }

  /** Has each walker do the same. */
  void together(Consumer<Walker> work) {
    lockstep.run(walkers, work);
  }

  /** Has each walker do something by its number. */
  void eachWith(ObjIntConsumer<Walker> work) {
    together(walker -> work.accept(walker, walkers.indexOf(walker)));
  }

  /** Keeps in a pool where each walker stands. */
  void keepIn(ElitePool pool) {
    pool.keep(walkers);
  }

  /**
   * Starts all from a valid assignment.
   *
   * @param assignment the yarn of every slot; copied by each walker
   */
  void startFrom(int[] assignment) {
    together(walker -> walker.restart(assignment));
  }

  /** Each walker goes on from an assignment of its own; the last, where there are too few. */
  void restart(List<int[]> assignments) {
    for (int i = 0; i < walkers.size() && !assignments.isEmpty(); i++) {
      walkers.get(i).restart(assignments.get(Math.min(i, assignments.size() - 1)));
    }
  }

  /** Has the first walker better the best of all by exchanges of many rounds at once. */
  void reassignBest() {
    int[] best = best();
    if (best != null && !ended()) {
      long most = budget.movesLeft(UNKNOWN_SPEED);
      long made = walkers.get(0).reassign(best.clone(), most, budget::over);
      // where moves are counted all count, so that as many again make the same course
      budget.spend(budget.countsMovesOnly() ? most : made);
    }
  }

  /** Has all go on from the best of all, if there is one. */
  void restartFromBest() {
    int[] best = best();
    if (best != null) {
      startFrom(best.clone());
    }
  }

  /** The first of several walkers never overdraws; whether the others do is to be said. */
  void barOverdrawing(boolean all) {
    for (int i = 0; i < walkers.size(); i++) {
      walkers.get(i).barOverdrawing(all || i == 0 && walkers.size() > 1);
    }
  }

  /** Waits for the floor, once, if so many moves are left that this may save some. */
  void askForFloor(long end) {
    if (budget.countsMovesOnly()
        && floorCost == Long.MIN_VALUE
        && movesLeft(end) >= MOVES_WORTH_A_FLOOR) {
      floorCost = floor.getAsLong();
    }
  }

  /** Moves that each walker may still make. */
  long movesLeft(long end) {
    return Math.min(budget.movesLeft(UNKNOWN_SPEED * count()), end - budget.spent()) / count();
  }

  /** A leg so short is not worth while, unless moves are counted. */
  long leastLeg() {
    return budget.countsMovesOnly() ? 1 : CHUNK;
  }

  /** Whether the budget is spent or the floor is met. */
  boolean ended() {
    if (!budget.countsMovesOnly()) {
      floorCost = floor.getAsLong();
    }
    return budget.over() || bestCost() <= floorCost;
  }

  /** A leg of so many moves of each walker, from a temperature in steps of the lightest repeat. */
  void leg(long moves, double hot) {
    leg(moves, hot, this::ended);
  }

  /** The same, with an end of its own. */
  void leg(long moves, double hot, BooleanSupplier ends) {
    leg(() -> moves, hot, COLD, ends);
  }

  /** A leg that takes all moves left; a limit in seconds tells only on the way how many. */
  void lastLeg(long end, double hot) {
    long before = budget.spent();
    leg(
        () -> Math.max(1, (budget.spent() - before) / count() + movesLeft(end)),
        hot,
        COLD_AT_LAST,
        this::ended);
  }

  private void leg(LongSupplier length, double hot, double cold, BooleanSupplier ends) {
    double step = problem.prices().step();
    long moves = length.getAsLong();
    long planned = moves;
    walkers.forEach(walker -> walker.beginLeg(hot * step, cold * step, planned));
    budget.resume();
    long done = 0;
    // fewer moves than there are walkers cannot be shared
    BooleanSupplier over = () -> budget.movesAllowed() < count() || ends.getAsBoolean();
    while (done < moves && !over.getAsBoolean()) {
      long chunk = Math.min(tiled() ? Long.MAX_VALUE : CHUNK, moves - done);
      chunk = Math.min(chunk, budget.movesAllowed() / count());
      long made = walk(chunk);
      done += made;
      budget.spend(made * count());
      moves = length.getAsLong();
      long now = moves;
      walkers.forEach(walker -> walker.stretchLeg(now));
      if (done >= moves || over.getAsBoolean()) {
        if (tiled()) {
          walkers.get(0).mend();
        }
        walkers.forEach(Walker::look);
      }
      tick.run();
    }
  }

  /** Has each walker make so many moves, or fewer; how many. */
  private long walk(long most) {
    if (tiled()) {
      return tiled.walk(most);
    }
    together(walker -> walker.walk(most));
    return most;
  }

  /** Whether a valid assignment was found. */
  boolean found() {
    return bestCost() < Long.MAX_VALUE;
  }

  /** Cost of the best valid assignment; {@link Long#MAX_VALUE} while there is none. */
  long bestCost() {
    return walkers.stream().mapToLong(Walker::bestCost).min().orElse(Long.MAX_VALUE);
  }

  /** The best valid assignment; of equals, the first walker's; null while there is none. */
  int[] best() {
    long bestCost = bestCost();
    return bestCost == Long.MAX_VALUE
        ? null
        : walkers.stream().filter(w -> w.bestCost() == bestCost).findFirst().orElseThrow().best();
  }

  /** The last of them. */
  Walker last() {
    return walkers.get(walkers.size() - 1);
  }

  /** Whether the last walker's own best costs so much less than those of all others. */
  boolean lastLeadsBy(long cost) {
    List<Walker> others = walkers.subList(0, walkers.size() - 1);
    return last().bestCost() < Long.MAX_VALUE
        && others.stream().allMatch(each -> last().bestCost() <= each.bestCost() - cost);
  }

  /** Cost by which several walkers' own bests lie apart; empty where one has none. */
  OptionalLong apart() {
    long worst = walkers.stream().mapToLong(Walker::bestCost).max().orElseThrow();
    return count() == 1 || worst == Long.MAX_VALUE
        ? OptionalLong.empty()
        : OptionalLong.of(worst - bestCost());
  }

  /** The state with the fewest broken rules, valid or not. */
  int[] nearest() {
    Walker nearest = walkers.get(0);
    for (Walker walker : walkers) {
      if (walker.state().hard() < nearest.state().hard()) {
        nearest = walker;
      }
    }
    return nearest.state().yarn.clone();
  }

  @Override
  public void close() {
    lockstep.close();
  }
}
