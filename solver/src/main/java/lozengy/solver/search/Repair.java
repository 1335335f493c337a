package lozengy.solver.search;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Problem;

/**
 * Repairs an earlier plan with few changes: fills what is open or may not stay, first with all else
 * kept, and where that breaks a rule with more and more of it changed, each change at a high cost.
 */
public final class Repair {

  /** What a changed round costs beside all else, in lightest steps: above what it can win. */
  private static final int CHANGE_STEPS = 8;

  private static final int EXCHANGES = 1000;
  private static final int MOVES_OF_LOOSE = 1500;
  private static final int LEAST_MOVES = 20_000;
  private static final int MOST_MOVES = 3_000_000;
  private static final int MOVES_OF_SLOT = 150;
  private static final int ATTEMPTS = 4;

  /** Where more had to change, how often it is gone over again, so that less does. */
  private static final int TURNS = 1;

  private static final double HOT = 1.0;
  private static final double COLD = 0.04;

  private final Problem problem;
  private final EarlierPlan plan;
  private final Walker walker;
  private final int[] free;
  private final long changeCost;
  private final long most;
  private long moves;

  /**
   * Makes ready.
   *
   * @param most moves to make at most, 0 or more
   */
  Repair(Problem problem, EarlierPlan plan, long seed, long most) {
    this.plan = plan;
    this.most = most;
    this.free = problem.slots().free();
    this.changeCost = (long) CHANGE_STEPS * problem.prices().step();
    this.problem = problem.withCosts(problem.costs().withUnary(dear(problem)));
    this.walker = new Walker(this.problem, seed, Assertions.OFF);
  }

  /**
   * Repairs a problem's earlier plan with few changes, whatever else they cost.
   *
   * @param problem a problem with an earlier plan
   * @param seed seed of the random source
   * @return a repaired plan, if one was found; locks that break a rule among themselves show only
   *     in the check
   */
  public static Optional<Sequences> of(Problem problem, long seed) {
    EarlierPlan plan = EarlierPlan.of(problem, new Draws(seed));
    return new Repair(problem, plan, seed, Long.MAX_VALUE)
        .repaired(() -> false)
        .map(problem::sequences);
  }

  private int[] dear(Problem of) {
    int[] own = of.costs().unary();
    int[] cost = own == null ? new int[of.slots().count() * of.yarns()] : own.clone();
    for (int slot : free) {
      int kept = plan.yarn()[slot];
      for (int yarn = 0; yarn < of.yarns() && kept >= 0; yarn++) {
        int weight = of.slots().weight(of.slots().orbit()[slot]);
        cost[slot * of.yarns() + yarn] += yarn == kept ? 0 : (int) changeCost * weight;
      }
    }
    return cost;
  }

  /**
   * Repairs.
   *
   * @param ends asked now and then; once true, no further attempt is made
   * @return a valid assignment, if one was found
   */
  Optional<int[]> repaired(BooleanSupplier ends) {
    int[] loose = plan.loose(problem);
    walker.barOverdrawing(true);
    walker.fill(plan, changeCost);
    if (loose.length > 0) {
      walker.changeOnly(loose);
      walk(MOVES_OF_LOOSE * (long) loose.length);
      walker.changeOnly(free);
    }
    boolean fewest = found();
    for (int attempt = 0; attempt < ATTEMPTS && !found() && !ends.getAsBoolean(); attempt++) {
      if (attempt > 0) {
        walker.dealNear(plan, changeCost, EXCHANGES);
      }
      walk((MOVES_OF_SLOT << attempt) * (long) free.length);
    }
    for (int turn = 0; turn < TURNS && !fewest && found() && !ends.getAsBoolean(); turn++) {
      walker.restart(walker.best().clone());
      walk(MOVES_OF_SLOT * (long) free.length);
    }
    return found() ? Optional.of(walker.best().clone()) : Optional.empty();
  }

  private boolean found() {
    return walker.bestCost() < Long.MAX_VALUE;
  }

  /** Moves made. */
  long moves() {
    return moves;
  }

  private void walk(long wanted) {
    long count = Math.min(most - moves, Math.max(LEAST_MOVES, Math.min(MOST_MOVES, wanted)));
    if (count <= 0) {
      return;
    }
    double step = problem.prices().step();
    walker.beginLeg(HOT * step, COLD * step, count);
    walker.walk(count);
    walker.look();
    moves += count;
  }
}
