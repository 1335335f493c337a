package lozengy.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import lozengy.solver.problem.Problem;

/**
 * Several walkers in lockstep: each makes the same number of moves between two meetings, so that
 * the outcome depends on the seed and the moves alone, however many threads carry them.
 *
 * <p>A first short leg finds a valid assignment; a second uses a part of what is left, a third the
 * rest. Where time is left over, further legs start again from the best of all walkers.
 */
public final class Search implements AutoCloseable {

  /** How many walkers: fixed, for the outcome depends on it. */
  public static final int WALKERS = 2;

  private static final int CHUNK = 1 << 15;

  /** Moves of the first leg, for each slot; of large blankets fewer, where time is short. */
  private static final int FIRST_LEG = 250;

  private static final int FIRST_LEG_OF_LARGE = 80;
  private static final int LARGE = 20_000;

  /** Deals after the first, each with twice the moves, until a valid assignment is found. */
  private static final int MORE_DEALS = 5;

  private static final double SECOND_LEG_PART = 0.2;

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

  private final Problem problem;
  private final Budget budget;
  private final LongSupplier floor;
  private final Runnable tick;
  private long floorCost = Long.MIN_VALUE;
  private final List<Walker> walkers = new ArrayList<>();
  private final ExecutorService threads;

  /**
   * Sets up a search.
   *
   * @param problem the problem
   * @param seed seed of the random source
   * @param threadCount threads to use, at least 1
   * @param budget what may be spent
   * @param floor asked once, after the second leg, for a cost that no valid assignment can fall
   *     below; the search ends when it is met
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
    this.budget = budget;
    this.floor = floor;
    this.tick = tick;
    for (int i = 0; i < WALKERS; i++) {
      walkers.add(new Walker(problem, seed * WALKERS + i, assertions));
    }
    int useful = Math.min(threadCount, WALKERS);
    this.threads =
        useful > 1
            ? Executors.newFixedThreadPool(
                useful,
                task -> {
                  Thread thread = new Thread(task, "lozengy-walker");
                  thread.setDaemon(true);
                  return thread;
                })
            : null;
  }

  /**
   * Deals each walker a start and makes the first leg.
   *
   * @return whether a valid assignment was found
   */
  public boolean start() {
    int slots = problem.slots().count();
    long moves = (slots < LARGE ? FIRST_LEG : FIRST_LEG_OF_LARGE) * (long) slots;
    together(Walker::deal);
    // However little time there is: without this leg there is nothing to hand out.
    leg(moves, HOT, slots < LARGE ? budget::stopped : this::ended);
    walkers.forEach(walker -> walker.barOverdrawing(bestCost() == Long.MAX_VALUE));
    for (int deal = 0; deal < MORE_DEALS && bestCost() == Long.MAX_VALUE && !ended(); deal++) {
      together(Walker::deal);
      leg(moves << deal, problem.pile().isEmpty() ? HOT : HOT_FOR_PILE);
    }
    return bestCost() < Long.MAX_VALUE;
  }

  /** Starts all walkers from a valid assignment found elsewhere. */
  public void startFrom(int[] assignment) {
    together(walker -> walker.restart(assignment));
  }

  /** Searches until the budget is spent, the floor is met, or nothing has improved for long. */
  public void improve() {
    if (!movable()) {
      return;
    }
    long least = (long) WALKERS * CHUNK;
    leg((long) (budget.movesLeft(50 * least) * SECOND_LEG_PART / WALKERS), HOT);
    floorCost = floor.getAsLong();
    int idle = 0;
    boolean first = true;
    while (!ended() && idle < IDLE_LEGS && movable()) {
      long before = bestCost();
      long left = budget.movesLeft(1000 * least);
      if (left < (budget.countsMovesOnly() ? 1 : least)) {
        break;
      }
      if (!first) {
        restartFromBest();
      }
      leg(Math.max(1, left / WALKERS), first || before == Long.MAX_VALUE ? HOT : WARM);
      idle = bestCost() < before ? 0 : idle + 1;
      first = false;
    }
  }

  /** Cost of the best valid assignment; {@link Long#MAX_VALUE} while there is none. */
  public long bestCost() {
    return walkers.stream().mapToLong(Walker::bestCost).min().orElse(Long.MAX_VALUE);
  }

  /** The best valid assignment; of equals, the first walker's; null while there is none. */
  public int[] best() {
    long bestCost = bestCost();
    return bestCost == Long.MAX_VALUE
        ? null
        : walkers.stream().filter(w -> w.bestCost() == bestCost).findFirst().orElseThrow().best();
  }

  /** The state with the fewest broken rules, valid or not. */
  public int[] nearest() {
    Walker nearest = walkers.get(0);
    for (Walker walker : walkers) {
      if (walker.state().hard() < nearest.state().hard()) {
        nearest = walker;
      }
    }
    return nearest.state().yarn.clone();
  }

  private boolean movable() {
    return problem.slots().free().length > 0 || !problem.pile().isEmpty();
  }

  private boolean ended() {
    return budget.over() || bestCost() <= floorCost;
  }

  private void restartFromBest() {
    int[] best = best();
    if (best != null) {
      startFrom(best.clone());
    }
  }

  private void leg(long moves, double hot) {
    leg(moves, hot, this::ended);
  }

  private void leg(long moves, double hot, BooleanSupplier ends) {
    if (!movable()) {
      return;
    }
    double step = problem.stepCost();
    walkers.forEach(walker -> walker.beginLeg(hot * step, COLD * step, moves));
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
      tick.run();
    }
    walkers.forEach(Walker::look);
  }

  private void together(Consumer<Walker> work) {
    if (threads == null) {
      walkers.forEach(work);
      return;
    }
    List<Callable<Object>> tasks = new ArrayList<>();
    walkers.forEach(walker -> tasks.add(Executors.callable(() -> work.accept(walker))));
    try {
      for (Future<Object> future : threads.invokeAll(tasks)) {
        future.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while searching", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a walker failed", e.getCause());
    }
  }

  @Override
  public void close() {
    if (threads != null) {
      threads.shutdownNow();
    }
  }
}
