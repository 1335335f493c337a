package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import lozengy.model.blanket.PileMatching;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.solver.constraint.TinyPiles;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** On tiny blankets a short search finds the best of all arrangements, however it begins. */
class TinySearchTest {

  private static final int MOST_WAYS = 3000;

  /** The least cost of all valid assignments; {@link Long#MAX_VALUE} where there is none. */
  private static long best(Problem problem) {
    long[] best = {Long.MAX_VALUE};
    TinyProblems.all(
        problem,
        yarn -> {
          Cost cost = Cost.of(problem, yarn, 1);
          best[0] = cost.hard() > 0 ? best[0] : Math.min(best[0], cost.total());
        });
    return best[0];
  }

  private static Budget moves(long most) {
    return new Budget(OptionalLong.of(most), OptionalDouble.empty(), () -> false);
  }

  private static Search search(Problem problem, long seed, int walkers, Budget budget) {
    return new Search(
        problem, seed, walkers, 1, budget, () -> Long.MIN_VALUE, () -> {}, Assertions.OFF);
  }

  @Test
  void findsTheBestThereIsAndSpendsItsMovesToTheLast() {
    int found = 0;
    int none = 0;
    for (long seed = 1; seed <= 45; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      long best = best(problem);
      Budget budget = moves(12_000);
      int walkers = 1 + (int) (seed % 2);
      try (Search search = search(problem, seed, walkers, budget)) {
        boolean started = search.start() || search.startAgain();
        assertEquals(best < Long.MAX_VALUE, started, "seed " + seed);
        if (!started) {
          assertNull(search.best());
          assertEquals(Long.MAX_VALUE, search.bestCost());
          assertTrue(Cost.of(problem, search.nearest(), 1).hard() > 0);
          none++;
          continue;
        }
        assertTrue(budget.spent() > 0, "a start tells the speed");
        search.improve();
        assertEquals(12_000, budget.spent(), "seed " + seed);
        assertEquals(best, search.bestCost(), "seed " + seed);
        assertEquals(best, Cost.of(problem, search.best(), 1).total(), "seed " + seed);
        assertEquals(0, Check.faults(problem.blanket(), problem.sequences(search.best())).size());
        assertEquals(walkers > 1, search.apart().isPresent());
        assertTrue(search.apart().orElse(0) >= 0);
        found++;
      }
    }
    assertTrue(found > 8 && none > 2, found + " found, " + none + " without");
  }

  /** What is told of a search that found nothing is an attempt, not a state that nobody dealt. */
  @Test
  void dealsOnceWhereMendingHasLeftNoMoves() {
    int fixed = 0;
    for (long seed = 1; seed <= 45; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      Budget budget = moves(5);
      budget.spend(5);
      try (Search search = search(problem, seed, 1, budget)) {
        search.start();
        int[] nearest = search.nearest();
        assertEquals(5, budget.spent());
        for (int slot : problem.slots().free()) {
          int yarn = nearest[slot];
          assertTrue(
              Arrays.stream(problem.domains().yarns(slot)).anyMatch(may -> may == yarn),
              "seed " + seed);
        }
        int[] held = problem.slots().fixedYarn();
        for (int slot = 0; slot < held.length; slot++) {
          if (held[slot] >= 0) {
            assertEquals(held[slot], nearest[slot], "seed " + seed);
            fixed += held[slot] > 0 ? 1 : 0;
          }
        }
      }
    }
    assertTrue(fixed > 5, fixed + " rounds held to another yarn than the first");
  }

  /** Where it begins is never lost, and where it leads is the best again. */
  @Test
  void goesOnFromAnEarlierPlanAndFromAnotherFind() {
    int stood = 0;
    int repaired = 0;
    for (long seed = 1; seed <= 40; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null || best(problem) == Long.MAX_VALUE) {
        continue;
      }
      int[] before = RandomDraws.of(problem, new SplittableRandom(seed), true);
      Sequences plan = problem.sequences(before);
      Problem again = ProblemCompiler.compile(problem.blanket(), Optional.of(plan));
      Cost cost = Cost.of(again, before, 1);
      Budget budget = moves(120_000);
      try (Search search = search(again, seed, 1 + (int) (seed % 2), budget)) {
        assertTrue(search.startFromEarlier(seed % 3 == 0), "seed " + seed);
        if (cost.hard() == 0) {
          assertArrayEquals(before, search.best(), "what can stand stands");
          stood++;
        } else {
          repaired++;
        }
        long start = search.bestCost();
        search.improve();
        assertTrue(search.bestCost() <= start, "seed " + seed);
        assertTrue(budget.spent() <= 120_000, "seed " + seed);
        assertEquals(best(again), search.bestCost(), "seed " + seed);
      }
      try (Search search = search(again, seed, 2, moves(20))) {
        if (cost.hard() == 0) {
          search.startFrom(before);
          assertEquals(cost.total(), search.bestCost());
          search.improve(10);
          assertTrue(search.bestCost() <= cost.total());
        }
      }
    }
    assertTrue(stood > 1 && repaired > 4, stood + " stood, " + repaired + " repaired");
  }

  /** Meeting the floor ends it at once; it is asked for once, where moves are many. */
  @Test
  void endsAtTheFloor() {
    int ended = 0;
    for (long seed = 1; seed <= 40; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null || best(problem) == Long.MAX_VALUE) {
        continue;
      }
      long best = best(problem);
      AtomicInteger asked = new AtomicInteger();
      Budget budget = moves(40_000_000);
      try (Search search =
          new Search(
              problem,
              seed,
              1,
              1,
              budget,
              () -> {
                asked.incrementAndGet();
                return best;
              },
              () -> {},
              Assertions.OFF)) {
        assertTrue(search.start());
        search.improve();
        assertEquals(best, search.bestCost());
        assertEquals(1, asked.get());
        ended += budget.spent() < 1_000_000 ? 1 : 0;
      }
    }
    assertTrue(ended > 8, ended + " ended early");
  }

  @Test
  void goesNoFurtherThanItIsToldAndStopsWhenAsked() {
    Problem problem = null;
    for (long seed = 1; problem == null; seed++) {
      problem =
          TinyProblems.of(seed, MOST_WAYS).filter(each -> best(each) < Long.MAX_VALUE).orElse(null);
    }
    AtomicLong ticks = new AtomicLong();
    Budget budget =
        new Budget(OptionalLong.of(1_000_000), OptionalDouble.empty(), () -> ticks.get() > 5);
    try (Search search =
        new Search(
            problem,
            1,
            2,
            1,
            budget,
            () -> Long.MIN_VALUE,
            ticks::incrementAndGet,
            Assertions.OFF)) {
      assertTrue(search.start());
      assertEquals(1, ticks.get());
      long start = budget.spent();
      search.improve(101);
      // two walkers make as many moves each
      assertEquals(start + 100, budget.spent());
      ticks.set(3);
      search.improve();
      assertEquals(6, ticks.get());
      assertTrue(budget.spent() < 1_000_000);
      long spent = budget.spent();
      search.improve();
      assertEquals(spent, budget.spent());
    }
  }

  /** With finished pieces on a pile all that is found is valid, and what is found costs as said. */
  @Test
  void findsValidArrangementsWithAPile() {
    int found = 0;
    for (long seed = 1; seed <= 30; seed++) {
      if (!PileMatching.of(TinyPiles.looked(seed)).complete()) {
        continue;
      }
      Problem problem = ProblemCompiler.compile(TinyPiles.looked(seed), Optional.empty());
      if (problem.domains().anyEmpty()) {
        continue;
      }
      Budget budget = moves(6000);
      try (Search search = search(problem, seed, 1, budget)) {
        if (search.start() || search.startAgain()) {
          search.improve();
          assertEquals(
              0,
              Check.faults(problem.blanket(), problem.sequences(search.best())).size(),
              "seed " + seed);
          assertEquals(
              Cost.of(problem, search.best(), 1).total(), search.bestCost(), "seed " + seed);
          found++;
        }
      }
    }
    assertTrue(found > 3, found + " found");
  }
}
