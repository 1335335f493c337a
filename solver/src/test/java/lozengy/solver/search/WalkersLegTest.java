package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** What several walkers spend to the move, when they end, and what they tell of their bests. */
class WalkersLegTest {

  private static final long CHUNK = Walkers.CHUNK;

  private static final Problem PROBLEM = problem();

  private final AtomicInteger ticks = new AtomicInteger();
  private final AtomicInteger asked = new AtomicInteger();
  private final AtomicLong floor = new AtomicLong(Long.MIN_VALUE);

  private static Problem problem() {
    return ProblemCompiler.compile(
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(1000))
            .yarns(4, Tone.DARK, 100_000)
            .build(),
        Optional.empty());
  }

  private Walkers walkers(int count, Budget budget) {
    return new Walkers(
        PROBLEM,
        new BorderPlans(PROBLEM),
        1,
        count,
        1,
        budget,
        () -> {
          asked.incrementAndGet();
          return floor.get();
        },
        ticks::incrementAndGet,
        Assertions.OFF);
  }

  private static Budget moves(long most) {
    return new Budget(OptionalLong.of(most), OptionalDouble.empty(), () -> false);
  }

  private static Budget unlimited() {
    return new Budget(OptionalLong.empty(), OptionalDouble.empty(), () -> false);
  }

  /** Of random valid assignments the cheapest first. */
  private static List<int[]> valid(int count) {
    SplittableRandom random = new SplittableRandom(2);
    List<int[]> valid = new ArrayList<>();
    while (valid.size() < count) {
      int[] yarn = RandomDraws.of(PROBLEM, random, true);
      boolean other = valid.stream().allMatch(each -> cost(each) != cost(yarn));
      if (other && Cost.of(PROBLEM, yarn, 1).hard() == 0) {
        valid.add(yarn);
      }
    }
    valid.sort((one, other) -> Long.compare(cost(one), cost(other)));
    return valid;
  }

  private static long cost(int[] yarn) {
    return Cost.of(PROBLEM, yarn, 1).total();
  }

  @Test
  void aLegIsWalkedInChunksAndSpentByAll() {
    Budget budget = unlimited();
    try (Walkers walkers = walkers(2, budget)) {
      assertEquals(2, walkers.count());
      assertFalse(walkers.tiled());
      walkers.leg(CHUNK + 100, 1);
      assertEquals(2 * (CHUNK + 100), budget.spent());
      assertEquals(2, ticks.get());
      walkers.leg(0, 1);
      assertEquals(2, ticks.get());
      walkers.leg(300, 1, () -> true);
      assertEquals(2 * (CHUNK + 100), budget.spent());
      // an end of its own that comes after the first chunk
      int before = ticks.get();
      walkers.leg(5 * CHUNK, 1, () -> ticks.get() > before);
      assertEquals(before + 1, ticks.get());
      assertEquals(2 * (2 * CHUNK + 100), budget.spent());
    }
  }

  @Test
  void noWalkerGoesBeyondTheBudget() {
    Budget budget = moves(1001);
    try (Walkers walkers = walkers(2, budget)) {
      assertEquals(500, walkers.movesLeft(Long.MAX_VALUE));
      assertEquals(100, walkers.movesLeft(200));
      walkers.leg(CHUNK, 1);
      // an odd move left is made by neither
      assertEquals(1000, budget.spent());
      walkers.leg(CHUNK, 1);
      assertEquals(1000, budget.spent());
    }
    Budget last = moves(777);
    try (Walkers walkers = walkers(3, last)) {
      walkers.lastLeg(Long.MAX_VALUE, 1);
      assertEquals(777, last.spent());
    }
    Budget part = moves(10_000);
    try (Walkers walkers = walkers(2, part)) {
      part.spend(1000);
      walkers.lastLeg(4000, 1);
      assertEquals(4000, part.spent());
      assertEquals(0, walkers.movesLeft(4000));
      walkers.lastLeg(4000, 1);
      assertEquals(4002, part.spent());
    }
  }

  @Test
  void aLegOfUnknownSpeedIsLongAndShortOnesAreForMovesAlone() {
    try (Walkers walkers = walkers(2, unlimited())) {
      assertEquals(50 * CHUNK, walkers.movesLeft(Long.MAX_VALUE));
      assertEquals(1, walkers.leastLeg());
    }
    Budget timed = new Budget(OptionalLong.empty(), OptionalDouble.of(1e9), () -> false);
    try (Walkers walkers = walkers(2, timed)) {
      assertEquals(50 * CHUNK, walkers.movesLeft(Long.MAX_VALUE));
      assertEquals(CHUNK, walkers.leastLeg());
      // under a time limit the floor is asked for each time
      assertFalse(walkers.ended());
      assertFalse(walkers.ended());
      assertEquals(2, asked.get());
      walkers.startFrom(valid(1).get(0));
      floor.set(walkers.bestCost() - 1);
      assertFalse(walkers.ended());
      floor.set(walkers.bestCost());
      assertTrue(walkers.ended());
    }
  }

  @Test
  void theFloorIsAskedForOnceAndOnlyWhereItMaySaveMoves() {
    try (Walkers walkers = walkers(2, moves(39_999_998))) {
      walkers.askForFloor(Long.MAX_VALUE);
      assertFalse(walkers.ended());
      assertEquals(0, asked.get());
    }
    try (Walkers walkers = walkers(2, moves(40_000_000))) {
      walkers.startFrom(valid(1).get(0));
      floor.set(walkers.bestCost());
      assertFalse(walkers.ended());
      walkers.askForFloor(30_000_000);
      assertEquals(0, asked.get());
      walkers.askForFloor(Long.MAX_VALUE);
      walkers.askForFloor(Long.MAX_VALUE);
      assertEquals(1, asked.get());
      assertTrue(walkers.ended());
    }
  }

  @Test
  void tellsTheBestOfAllAndHowFarTheyAreApart() {
    List<int[]> valid = valid(4);
    try (Walkers walkers = walkers(3, unlimited())) {
      assertNull(walkers.best());
      assertFalse(walkers.found());
      assertEquals(OptionalLong.empty(), walkers.apart());
      walkers.restart(List.of());
      assertFalse(walkers.found());
      walkers.restart(List.of(valid.get(2), valid.get(1)));
      assertTrue(walkers.found());
      assertArrayEquals(valid.get(1), walkers.best());
      assertEquals(cost(valid.get(1)), walkers.bestCost());
      long apart = cost(valid.get(2)) - cost(valid.get(1));
      assertEquals(OptionalLong.of(apart), walkers.apart());
      // the last of the list went to both others, so the last does not lead
      assertFalse(walkers.lastLeadsBy(1));
      assertTrue(walkers.lastLeadsBy(0));
      walkers.last().restart(valid.get(0));
      long lead = cost(valid.get(1)) - cost(valid.get(0));
      assertTrue(walkers.lastLeadsBy(lead));
      assertFalse(walkers.lastLeadsBy(lead + 1));
      assertArrayEquals(valid.get(0), walkers.best());
      walkers.restartFromBest();
      walkers.together(walker -> assertArrayEquals(valid.get(0), walker.state().yarn));
      walkers.startFrom(valid.get(3));
      walkers.together(walker -> assertArrayEquals(valid.get(3), walker.state().yarn));
      assertEquals(OptionalLong.of(0), walkers.apart());
    }
    try (Walkers walkers = walkers(1, unlimited())) {
      walkers.startFrom(valid.get(0));
      assertEquals(OptionalLong.empty(), walkers.apart());
      walkers.restartFromBest();
    }
  }

  @Test
  void ofEqualsTheFirstIsTheBest() {
    int[] yarn = valid(1).get(0);
    // the mirrored board costs the same
    int[] mirrored = {
      yarn[2], yarn[3], yarn[0], yarn[1], yarn[6], yarn[7], yarn[4], yarn[5],
    };
    assertEquals(cost(yarn), cost(mirrored));
    try (Walkers walkers = walkers(2, unlimited())) {
      walkers.restart(List.of(mirrored, yarn));
      assertArrayEquals(mirrored, walkers.best());
      walkers.restart(List.of(yarn, mirrored));
      assertArrayEquals(mirrored, walkers.best());
    }
  }

  @Test
  void nearestBreaksTheFewestRules() {
    int[] valid = valid(1).get(0);
    int[] one = valid.clone();
    int[] many = new int[valid.length];
    one[1] = one[3];
    try (Walkers walkers = walkers(3, unlimited())) {
      walkers.restart(List.of(many, one, one));
      assertArrayEquals(one, walkers.nearest());
      walkers.restart(List.of(many, many, valid));
      assertArrayEquals(valid, walkers.nearest());
      walkers.restart(List.of(many, many, many));
      assertArrayEquals(many, walkers.nearest());
    }
  }

  @Test
  void eachGetsItsNumberAndTheFirstOfSeveralNeverOverdraws() {
    try (Walkers walkers = walkers(3, unlimited())) {
      List<Walker> all = new ArrayList<>();
      List<Integer> numbers = new ArrayList<>();
      walkers.eachWith(
          (walker, number) -> {
            all.add(walker);
            numbers.add(number);
            walker.restart(valid(1).get(0));
          });
      assertEquals(List.of(0, 1, 2), numbers);
      assertSame(all.get(2), walkers.last());
      walkers.barOverdrawing(false);
      assertEquals(List.of(true, false, false), all.stream().map(Walker::canPart).toList());
      walkers.barOverdrawing(true);
      assertEquals(List.of(true, true, true), all.stream().map(Walker::canPart).toList());
    }
    try (Walkers walkers = walkers(1, unlimited())) {
      walkers.last().restart(valid(1).get(0));
      walkers.barOverdrawing(false);
      assertFalse(walkers.last().canPart());
    }
  }

  @Test
  void reassigningSpendsAllThatIsLeftWhereMovesAreCounted() {
    Budget budget = moves(5000);
    int[] start = valid(8).get(7);
    try (Walkers walkers = walkers(2, budget)) {
      walkers.reassignBest();
      assertEquals(0, budget.spent(), "nothing is found yet");
      walkers.startFrom(start);
      walkers.reassignBest();
      assertEquals(5000, budget.spent());
      assertTrue(walkers.bestCost() <= cost(start));
      walkers.reassignBest();
      assertEquals(5000, budget.spent());
    }
    Budget timed = new Budget(OptionalLong.empty(), OptionalDouble.of(1e9), () -> false);
    try (Walkers walkers = walkers(1, timed)) {
      walkers.startFrom(start);
      walkers.reassignBest();
      assertTrue(timed.spent() > 0 && timed.spent() < 5000, timed.spent() + " spent");
    }
  }
}
