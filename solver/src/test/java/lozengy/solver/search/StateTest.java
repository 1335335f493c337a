package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Symmetry;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.problem.Slots;
import org.junit.jupiter.api.Test;

/** What changes are said to cost, and what is kept of rules, against sums from scratch. */
class StateTest {

  /** So much that no delta is left off early, and so little that sums do not overflow. */
  private static final long MOST = 1L << 60;

  private int changed;
  private int exchanged;
  private int swapped;
  private int refused;

  @Test
  void deltasAreDifferencesOfSumsFromScratch() {
    for (long seed = 1; seed <= 120; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Brief drawn = RandomBriefs.of(seed, seed % 5 == 0 ? 6 : 3, 5);
      Brief brief = RandomLooks.of(seed, seed % 3 == 0 ? RandomDraws.ample(drawn, random) : drawn);
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      if (problem.domains().anyEmpty() || problem.slots().free().length < 2) {
        continue;
      }
      if (seed % 4 == 0) {
        Sequences earlier = problem.sequences(RandomDraws.of(problem, random, true));
        problem = ProblemCompiler.compile(blanket, Optional.of(earlier));
      }
      State state = new State(problem);
      state.reset(RandomDraws.of(problem, random, true));
      if (seed % 6 == 0) {
        state.setPressure(2.5);
      }
      assertKept(state, "seed " + seed);
      for (int step = 0; step < 25; step++) {
        step(state, random, "seed " + seed + ", step " + step);
      }
    }
    assertTrue(changed > 400, changed + " changed");
    assertTrue(exchanged > 400, exchanged + " exchanged");
    assertTrue(swapped > 30, swapped + " swapped");
    assertTrue(refused > 100, refused + " refused early");
  }

  /** The order of borders is for boards so large that hardly any drawn here is one. */
  @Test
  void deltasOfAnOrderAreDifferencesToo() {
    int ordered = 0;
    for (long seed = 1; seed <= 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Brief drawn = RandomBriefs.of(seed, 6, 4);
      Map<Part, Double> weights = new EnumMap<>(drawn.prefer().weights());
      weights.put(Part.ORDER, 1.0 + seed % 7);
      Look look = Look.NONE.withOrder(Order.values()[(int) (seed % 2)]);
      look = seed % 3 == 0 ? look.withSymmetry(Symmetry.values()[(int) (1 + seed % 4)]) : look;
      Brief brief = drawn.withLook(look).withPrefer(new Preferences(weights));
      Problem problem = RandomDraws.problem(brief).filter(p -> p.order() != null).orElse(null);
      if (problem == null || problem.slots().free().length < 2) {
        continue;
      }
      State state = new State(problem);
      state.reset(RandomDraws.of(problem, random, true));
      assertKept(state, "seed " + seed);
      for (int step = 0; step < 25; step++) {
        step(state, random, "ordered, seed " + seed + ", step " + step);
      }
      ordered++;
    }
    assertTrue(ordered > 8 && exchanged > 50, ordered + " with an order, " + exchanged);
  }

  /** Two parts that have no pair in common change by themselves; the whole takes both over. */
  @Test
  void partsAreTakenOverWithTheCopiesThatTheyMakeTogether() {
    int settled = 0;
    for (long seed = 1; seed <= 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Brief brief = RandomDraws.ample(RandomBriefs.of(seed, 5, 3), random);
      Problem problem = RandomDraws.problem(brief).orElse(null);
      if (problem == null || problem.slots().orbits() < 8) {
        continue;
      }
      State whole = new State(problem);
      whole.reset(RandomDraws.of(problem, random, false));
      List<List<int[]>> phases = Tiles.of(problem, 6).phases();
      for (List<int[]> tiles : phases) {
        List<State> parts = new ArrayList<>();
        for (int[] pieces : tiles) {
          State part = new State(whole, pieces.length);
          exchangeWithin(part, pieces, random);
          parts.add(part);
        }
        whole.settle(parts);
        assertKept(whole, "seed " + seed);
        settled += parts.size() > 1 ? 1 : 0;
      }
    }
    assertTrue(settled > 20, settled + " phases of several parts");
  }

  private static void exchangeWithin(State part, int[] pieces, SplittableRandom random) {
    Problem problem = part.problem;
    for (int turn = 0; turn < 40; turn++) {
      int one = slot(problem, pieces, random);
      int other = slot(problem, pieces, random);
      boolean alike =
          part.free(one)
              && part.free(other)
              && part.yarn[one] != part.yarn[other]
              && problem.supply().slotClass()[one] == problem.supply().slotClass()[other]
              && problem.domains().allows(one, part.yarn[other])
              && problem.domains().allows(other, part.yarn[one]);
      if (alike) {
        long delta = part.exchangeAlike(one, other, MOST);
        part.exchange(one, other);
        part.addCost(delta);
      }
    }
  }

  private static int slot(Problem problem, int[] pieces, SplittableRandom random) {
    int piece = pieces[random.nextInt(pieces.length)];
    int rounds = problem.slots().rounds(piece);
    return problem.slots().orbitStart()[piece] + random.nextInt(rounds);
  }

  private void step(State state, SplittableRandom random, String where) {
    Problem problem = state.problem;
    int[] free = problem.slots().free();
    int slot = free[random.nextInt(free.length)];
    int other = free[random.nextInt(free.length)];
    int[] allowed = problem.domains().yarns(slot);
    int to = allowed[random.nextInt(allowed.length)];
    int from = state.yarn[slot];
    int its = state.yarn[other];
    long before = state.cost();
    if (random.nextBoolean()) {
      if (to == from) {
        return;
      }
      long delta = state.change(slot, to, MOST);
      long early = state.change(slot, to, 0);
      state.apply(slot, to);
      state.addCost(delta);
      assertEarly(early, delta, where);
      changed++;
    } else if (slot != other && from != its && exchangeable(problem.slots(), slot, other)) {
      boolean alike =
          problem.slots().layer()[slot] == problem.slots().layer()[other]
              && problem.supply().slotClass()[slot] == problem.supply().slotClass()[other];
      long delta = state.exchange(slot, other, MOST);
      if (alike) {
        assertEquals(delta, state.exchangeAlike(slot, other, MOST), where);
        assertEarly(state.exchangeAlike(slot, other, 0), delta, where);
      }
      assertEarly(state.exchange(slot, other, 0), delta, where);
      state.apply(slot, its);
      state.apply(other, from);
      state.addCost(delta);
      exchanged++;
      int one = problem.slots().orbit()[slot];
      int two = problem.slots().orbit()[other];
      if (alike && one != two && problem.slots().rounds(one) == problem.slots().rounds(two)) {
        assertKept(state, where);
        swap(state, one, two, where);
      }
    }
    assertKept(state, where + ", from " + before);
  }

  /** Within a layer, rounds of as many pieces each. */
  private static boolean exchangeable(Slots slots, int slot, int other) {
    return slots.layer()[slot] != slots.layer()[other]
        || slots.weight(slots.orbit()[slot]) == slots.weight(slots.orbit()[other]);
  }

  /** Whole sequences of pieces of one kind, as the pile's are exchanged. */
  private void swap(State state, int one, int two, String where) {
    Problem problem = state.problem;
    if (problem.slots().weight(one) != problem.slots().weight(two)
        || problem.costs().unary() != null) {
      return;
    }
    long delta = state.exchangeSequences(one, two);
    state.swapSequences(one, two);
    state.addCost(delta);
    assertKept(state, where + ", swapped");
    swapped++;
  }

  /** What is left off early is a delta that is not wanted, and no delta that is. */
  private void assertEarly(long early, long delta, String where) {
    assertTrue(early == delta || early > 0 && delta > 0, where + ": " + early + ", " + delta);
    refused += early == delta ? 0 : 1;
  }

  private static void assertKept(State state, String where) {
    Cost fresh = Cost.of(state.problem, state.yarn, state.stock.pressure());
    assertEquals(fresh.total(), state.cost(), where);
    assertEquals(fresh.hard(), state.hard(), where);
    assertNull(state.firstWrongEntry(), where);
  }
}
