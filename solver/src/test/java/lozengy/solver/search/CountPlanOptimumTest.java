package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.Symmetry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** On tiny blankets the plan of counts is held against all assignments there are. */
class CountPlanOptimumTest {

  private static final int MOST_WAYS = 5000;

  /** Balance and stock of an assignment; what is overdrawn makes it invalid. */
  private static long cost(Problem problem, int[] yarn) {
    StockUse stock = new StockUse(problem);
    stock.reset(yarn);
    return stock.overdrawn() > 0 ? Long.MAX_VALUE : stock.leewayLoss() + balance(problem, yarn);
  }

  private static long balance(Problem problem, int[] yarn) {
    int[] shown = new int[problem.balance().targets().length];
    for (int slot = 0; slot < yarn.length; slot++) {
      int orbit = problem.slots().orbit()[slot];
      shown[problem.slots().layer()[slot] * problem.yarns() + yarn[slot]] +=
          problem.slots().weight(orbit);
    }
    long cost = 0;
    for (int i = 0; i < shown.length; i++) {
      cost +=
          problem.balance().cost()[i / problem.yarns()]
              * Math.abs(shown[i] - problem.balance().targets()[i]);
    }
    return cost;
  }

  /**
   * Where stock suffices at all it is found, and where repeats are not minded, at the least cost.
   */
  @Test
  void countsAreWithinStockWhereThatCanBeAndTheBestThereAre() {
    int feasible = 0;
    int lacking = 0;
    int best = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      long[] least = {Long.MAX_VALUE};
      TinyProblems.all(problem, yarn -> least[0] = Math.min(least[0], cost(problem, yarn)));
      CountPlan plan = new CountPlan(problem, new Draws(seed));
      int[] dealt = plan.deal(200);
      assertEquals(least[0] < Long.MAX_VALUE, plan.settled(), "seed " + seed);
      for (int slot : problem.slots().free()) {
        assertTrue(problem.domains().allows(slot, dealt[slot]), "seed " + seed);
      }
      if (!plan.settled()) {
        lacking++;
        continue;
      }
      feasible++;
      assertEquals(cost(problem, dealt), plan.cost(), "seed " + seed);
      List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
      if (!new ExpectedRepeats(problem, groups, dealt).any()) {
        best++;
        assertEquals(least[0], plan.cost(), "seed " + seed);
        assertEquals(least[0], cost(problem, plan.dealAgain(50)), "again, seed " + seed);
      }
    }
    assertTrue(feasible > 8 && lacking > 4 && best > 5, feasible + " " + lacking + " " + best);
  }

  /** The formula, against the mean over all ways to deal the same counts. */
  @Test
  void expectedRepeatsAreTheMeanOverAllDeals() {
    int tight = 0;
    for (long seed = 1; seed <= 150; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
      int[] dealt = RandomDraws.of(problem, new SplittableRandom(seed), false);
      ExpectedRepeats repeats = new ExpectedRepeats(problem, groups, dealt);
      if (!repeats.any()) {
        assertEquals(0, repeats.of(TinyProblems.counts(problem, groups, dealt)));
        assertEquals(0, repeats.step(0, TinyProblems.counts(problem, groups, dealt), 0, 1));
        continue;
      }
      tight++;
      int[][] counts = TinyProblems.counts(problem, groups, dealt);
      double[] sum = new double[2];
      TinyProblems.all(
          problem,
          yarn -> {
            if (Arrays.deepEquals(counts, TinyProblems.counts(problem, groups, yarn))) {
              sum[0] += repeats(problem, yarn);
              sum[1]++;
            }
          });
      double mean = sum[0] / sum[1];
      assertEquals(mean, repeats.of(counts), 1e-6 * (1 + mean), "seed " + seed);
    }
    assertTrue(tight > 15, tight + " tight");
  }

  /** Repeats of which at least one slot is free. */
  private static double repeats(Problem problem, int[] yarn) {
    boolean[] free = new boolean[yarn.length];
    Arrays.stream(problem.slots().free()).forEach(slot -> free[slot] = true);
    int[] start = problem.costs().pairs().lightStart();
    double cost = 0;
    for (int slot = 0; slot < yarn.length; slot++) {
      for (int i = start[slot]; i < start[slot + 1]; i++) {
        int other = problem.costs().pairs().lightSlot()[i];
        boolean counts = yarn[slot] == yarn[other] && (free[slot] || free[other]);
        cost += counts ? problem.costs().pairs().lightCost()[i] / 2.0 : 0;
      }
    }
    return cost;
  }

  /** What it costs to have other counts than before is what the best deal of them must change. */
  @Test
  void earlierCountsCostTheRoundsThatMustChange() {
    int shifted = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      SplittableRandom random = new SplittableRandom(seed);
      List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
      int[] kept = RandomDraws.of(problem, random, false);
      for (int slot : problem.slots().free()) {
        kept[slot] = random.nextInt(4) == 0 ? Sequences.OPEN : kept[slot];
      }
      EarlierCounts earlier = EarlierCounts.of(problem, groups, kept, 7);
      assertTrue(earlier.any());
      assertEquals(kept, earlier.kept());
      for (int turn = 0; turn < 20; turn++) {
        int[] now = RandomDraws.of(problem, random, false);
        int group = random.nextInt(groups.size());
        int[] counts = TinyProblems.counts(problem, groups, now)[group];
        int[] slots = groups.get(group);
        int from = random.nextInt(problem.yarns());
        int to = random.nextInt(problem.yarns());
        int times = from == to ? 0 : random.nextInt(counts[from] + 1);
        int[] then = counts.clone();
        then[from] -= times;
        then[to] += times;
        int weight = problem.slots().weight(problem.slots().orbit()[slots[0]]);
        int more = stay(slots, counts, kept) - stay(slots, then, kept);
        assertEquals(7L * weight * more, earlier.shift(group, counts, from, to, times));
        if (times == 1) {
          assertEquals(7L * weight * more, earlier.shift(group, counts, from, to));
        }
        shifted += times > 0 ? 1 : 0;
        // and so many stay when they are dealt
        int[] left = counts.clone();
        int[] dealt = new int[kept.length];
        int[] rest = earlier.deal(slots, left, dealt);
        assertEquals(slots.length - stay(slots, counts, kept), rest.length);
        assertEquals(rest.length, IntStream.of(left).sum());
        for (int slot : slots) {
          boolean open = IntStream.of(rest).anyMatch(each -> each == slot);
          assertTrue(open || dealt[slot] == kept[slot]);
        }
      }
    }
    assertTrue(shifted > 100, shifted + " shifts");
  }

  /** Slots of a group that can stay at counts. */
  private static int stay(int[] slots, int[] counts, int[] kept) {
    int[] left = counts.clone();
    int stay = 0;
    for (int slot : slots) {
      stay += kept[slot] >= 0 && left[kept[slot]]-- > 0 ? 1 : 0;
    }
    return stay;
  }

  @Test
  void withoutAnEarlierPlanNothingIsKeptAndNothingCosts() {
    Problem problem = TinyProblems.of(firstSeed(), MOST_WAYS).orElseThrow();
    List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
    EarlierCounts none = EarlierCounts.of(problem, groups, null, 7);
    assertFalse(none.any());
    assertEquals(0, none.shift(0, new int[problem.yarns()], 0, 1));
    int[] slots = groups.get(0);
    assertArrayEquals(slots, none.deal(slots, new int[problem.yarns()], new int[100]));
  }

  private static long firstSeed() {
    long seed = 1;
    while (TinyProblems.of(seed, MOST_WAYS).isEmpty()) {
      seed++;
    }
    return seed;
  }

  /** A round that stands for two mirrored places costs twice as much. */
  @Test
  void roundsThatStandForSeveralPlacesCostForEach() {
    Blanket plain =
        BlanketBuilder.straight(3, 1)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
            .yarns(3, Tone.DARK, 100_000)
            .build();
    Look mirrored = Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT);
    Problem problem =
        ProblemCompiler.compile(Blanket.of(plain.brief().withLook(mirrored)), Optional.empty());
    List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
    EarlierCounts earlier = EarlierCounts.of(problem, groups, new int[] {0, 1}, 7);
    for (int group = 0; group < groups.size(); group++) {
      int slot = groups.get(group)[0];
      int[] counts = new int[3];
      counts[slot] = 1;
      int weight = problem.slots().weight(slot);
      assertEquals(7 * weight, earlier.shift(group, counts, slot, 2));
      assertEquals(3 - weight, problem.slots().weight(1 - slot));
    }
  }

  /** Where a change is dear a plan within stock is dealt as it was; and filled where it is open. */
  @Test
  void aPlanThatCanStandIsDealtAsItWas() {
    int stood = 0;
    int filled = 0;
    for (long seed = 1; seed <= 150; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      SplittableRandom random = new SplittableRandom(seed);
      int[] plan = RandomDraws.of(problem, random, true);
      int[] none = new int[problem.slots().orbits()];
      Arrays.fill(none, -1);
      long dear = 1L << 40;
      if (cost(problem, plan) < Long.MAX_VALUE) {
        EarlierPlan stands = new EarlierPlan(plan, none);
        int[] dealt = CountPlan.near(problem, new Draws(seed), stands, dear).deal(100);
        assertArrayEquals(plan, dealt, "seed " + seed);
        stood++;
      }
      int[] open = plan.clone();
      for (int slot : problem.slots().free()) {
        open[slot] = random.nextInt(3) == 0 ? Sequences.OPEN : open[slot];
      }
      EarlierPlan part = new EarlierPlan(open, none);
      int[] loose = part.loose(problem);
      int[] dealt = CountPlan.near(problem, new Draws(seed), part, dear).fill();
      for (int slot = 0; slot < open.length; slot++) {
        int each = slot;
        boolean is = open[slot] == Sequences.OPEN;
        assertEquals(is, IntStream.of(loose).anyMatch(other -> other == each));
        assertTrue(is ? problem.domains().allows(slot, dealt[slot]) : dealt[slot] == open[slot]);
      }
      filled += loose.length;
      if (loose.length == 1) {
        // the only one that is open takes what its layer lacks most
        long least = Long.MAX_VALUE;
        int[] other = dealt.clone();
        for (int yarn : problem.domains().yarns(loose[0])) {
          other[loose[0]] = yarn;
          least = Math.min(least, balance(problem, other));
        }
        assertEquals(least, balance(problem, dealt), "seed " + seed);
      }
    }
    assertTrue(stood > 20 && filled > 30, stood + " stood, " + filled + " filled");
  }

  @Test
  void whatOfAnEarlierPlanCanStayStays() {
    int changed = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Problem problem = TinyProblems.of(seed, MOST_WAYS).orElse(null);
      if (problem == null) {
        continue;
      }
      SplittableRandom random = new SplittableRandom(seed);
      int[] before = RandomDraws.of(problem, random, true);
      for (int slot : problem.slots().free()) {
        int way = random.nextInt(3);
        before[slot] = way == 0 ? Sequences.OPEN : way == 1 ? random.nextInt(problem.yarns()) : 0;
      }
      Problem again =
          ProblemCompiler.compile(problem.blanket(), Optional.of(problem.sequences(before)));
      EarlierPlan plan = EarlierPlan.of(again, new Draws(seed));
      boolean[] free = new boolean[before.length];
      IntStream.of(again.slots().free()).forEach(slot -> free[slot] = true);
      for (int slot = 0; slot < before.length; slot++) {
        boolean may = before[slot] >= 0 && again.domains().allows(slot, before[slot]);
        int expected =
            free[slot] ? may ? before[slot] : Sequences.OPEN : again.slots().fixedYarn()[slot];
        assertEquals(expected, plan.yarn()[slot], "seed " + seed);
        changed += expected == before[slot] ? 0 : 1;
      }
      assertTrue(IntStream.of(plan.laid()).allMatch(stack -> stack == -1));
    }
    assertTrue(changed > 10, changed + " may not stay");
  }
}
