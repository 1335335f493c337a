package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.RandomBriefs;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Counts that go on from earlier ones stay within what slots may take and what stock there is. */
class CountPlanTest {

  private static final int SEEDS = 120;

  /** Few random briefs are tight. */
  private static final int SEEDS_FOR_TIGHT = 300;

  @Test
  void countsThatGoOnStayWithinStockAndGetNoWorse() {
    int plans = 0;
    int others = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Optional<Problem> problem = problem(seed);
      if (problem.isEmpty()) {
        continue;
      }
      CountPlan plan = new CountPlan(problem.get(), new Draws(seed));
      int[] first = plan.deal(50).clone();
      if (!plan.settled()) {
        continue;
      }
      plans++;
      long cost = plan.cost();
      long least = Long.MAX_VALUE;
      for (int again = 0; again < 5; again++) {
        int[] next = plan.dealAgain(100);
        StockUse stock = new StockUse(problem.get());
        stock.reset(next);
        assertEquals(0, stock.overdrawn(), "seed " + seed);
        assertEquals(stock.leewayLoss() + balance(problem.get(), next), plan.cost());
        for (int slot : problem.get().slots().free()) {
          assertTrue(problem.get().domains().allows(slot, next[slot]), "seed " + seed);
        }
        least = Math.min(least, plan.cost());
        others += Arrays.equals(shown(problem.get(), first), shown(problem.get(), next)) ? 0 : 1;
      }
      // repeats weigh, too, where stock is tight
      boolean repeats = tight(problem.get(), first).any();
      assertTrue(repeats || least <= cost, "seed " + seed + ": " + cost + ", then " + least);
    }
    assertTrue(plans > 30, "only " + plans + " plans");
    assertTrue(others > plans, "only " + others + " other counts");
  }

  @Test
  void repeatsCostOnAverageWhatTheFormulaSays() {
    int tight = 0;
    for (long seed = 1; seed <= SEEDS_FOR_TIGHT; seed++) {
      Optional<Problem> problem = problem(seed);
      if (problem.isEmpty()) {
        continue;
      }
      Draws draws = new Draws(seed);
      int[] dealt = new CountPlan(problem.get(), draws).deal(50);
      ExpectedRepeats repeats = tight(problem.get(), dealt);
      if (!repeats.any()) {
        continue;
      }
      tight++;
      List<int[]> groups = CountPlan.groups(problem.get(), problem.get().slots().free());
      int[][] counts = TinyProblems.counts(problem.get(), groups, dealt);
      double sum = 0;
      int deals = 300;
      for (int deal = 0; deal < deals; deal++) {
        groups.forEach(group -> shuffle(group, dealt, draws));
        sum += repeats(problem.get(), dealt);
      }
      double expected = repeats.of(counts) + repeatsOfKnown(problem.get(), dealt);
      assertEquals(expected, sum / deals, 0.1 * expected + 1e-6, "seed " + seed);
      holdSteps(repeats, problem.get(), groups, counts, draws);
    }
    assertTrue(tight >= 3, "only " + tight + " tight briefs");
  }

  /** Exchanges over two groups cost what the counts after them cost more than those before. */
  private static void holdSteps(
      ExpectedRepeats repeats, Problem problem, List<int[]> groups, int[][] counts, Draws draws) {
    for (int i = 0; i < 20; i++) {
      int one = draws.below(groups.size());
      int other = draws.below(groups.size());
      int a = draws.below(problem.yarns());
      int b = draws.below(problem.yarns());
      if (one == other || a == b) {
        continue;
      }
      int[] moves = {draws.below(5) - 2, draws.below(5) - 2};
      int[] chosen = {one, other};
      double told = 0;
      for (int g = 0; g < 2; g++) {
        told += moves[g] * repeats.step(chosen[g], counts, a, b);
        for (int h = 0; h < 2; h++) {
          told += moves[g] * moves[h] * repeats.bend(chosen[g], chosen[h]);
        }
      }
      double before = repeats.of(counts);
      for (int g = 0; g < 2; g++) {
        counts[chosen[g]][a] -= moves[g];
        counts[chosen[g]][b] += moves[g];
      }
      double after = repeats.of(counts);
      assertEquals(after - before, told, 1e-9 * (Math.abs(before) + Math.abs(after)) + 1e-6);
    }
  }

  private static Optional<Problem> problem(long seed) {
    Brief brief = RandomBriefs.of(seed, 4, 9);
    if (!BriefJudge.mistakes(brief).isEmpty()) {
      return Optional.empty();
    }
    Problem problem = ProblemCompiler.compile(Blanket.of(brief), Optional.empty());
    boolean useful = !problem.domains().anyEmpty() && problem.slots().free().length > 0;
    return useful && problem.pile().isEmpty() ? Optional.of(problem) : Optional.empty();
  }

  private static ExpectedRepeats tight(Problem problem, int[] assignment) {
    List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
    return new ExpectedRepeats(problem, groups, assignment);
  }

  /** By layer and yarn, how often it shows. */
  private static int[] shown(Problem problem, int[] assignment) {
    int[] shown = new int[problem.balance().targets().length];
    for (int slot = 0; slot < assignment.length; slot++) {
      shown[problem.slots().layer()[slot] * problem.yarns() + assignment[slot]] +=
          problem.slots().weight(problem.slots().orbit()[slot]);
    }
    return shown;
  }

  private static long balance(Problem problem, int[] assignment) {
    int[] shown = shown(problem, assignment);
    long cost = 0;
    for (int i = 0; i < shown.length; i++) {
      long off = Math.abs(shown[i] - problem.balance().targets()[i]);
      cost += problem.balance().cost()[i / problem.yarns()] * off;
    }
    return cost;
  }

  private static void shuffle(int[] group, int[] assignment, Draws draws) {
    for (int i = group.length - 1; i > 0; i--) {
      int j = draws.below(i + 1);
      int swap = assignment[group[i]];
      assignment[group[i]] = assignment[group[j]];
      assignment[group[j]] = swap;
    }
  }

  private static double repeats(Problem problem, int[] assignment) {
    return repeats(problem, assignment, new int[0]);
  }

  /** What repeats cost among slots that are known, which no counts change. */
  private static double repeatsOfKnown(Problem problem, int[] assignment) {
    return repeats(problem, assignment, problem.slots().free());
  }

  private static double repeats(Problem problem, int[] assignment, int[] without) {
    PairCosts costs = problem.costs().pairs();
    boolean[] left = new boolean[assignment.length];
    Arrays.stream(without).forEach(slot -> left[slot] = true);
    long cost = 0;
    for (int slot = 0; slot < assignment.length; slot++) {
      for (int i = costs.lightStart()[slot]; i < costs.lightStart()[slot + 1]; i++) {
        int other = costs.lightSlot()[i];
        boolean counts = !left[slot] && !left[other] && assignment[slot] == assignment[other];
        cost += counts ? costs.lightCost()[i] : 0;
      }
    }
    return cost / 2.0;
  }
}
