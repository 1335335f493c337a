package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.brief.Brief;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.problem.Problem;
import org.junit.jupiter.api.Test;

/**
 * Each operator by itself: what it changes and what it leaves, within what slots may take, its
 * deltas held against sums from scratch and against the model.
 */
class MovesTest {

  private static final int TURNS = 30;

  private final Map<Operator, Integer> made = new EnumMap<>(Operator.class);

  @Test
  void operatorsChangeWhatTheySayAndCostWhatTheySay() {
    for (long seed = 1; seed <= 26; seed++) {
      Brief drawn = RandomBriefs.of(seed, 3, 6);
      Brief asked = seed % 2 == 0 ? RandomLooks.of(seed, drawn) : drawn;
      Brief brief = seed % 3 == 0 ? asked : RandomDraws.ample(asked, new SplittableRandom(seed));
      Problem problem = RandomDraws.problem(brief).orElse(null);
      for (Operator operator : problem == null ? new Operator[0] : Operator.values()) {
        attempt(problem, operator, seed);
      }
    }
    for (Operator operator : Operator.values()) {
      assertTrue(made.getOrDefault(operator, 0) >= 20, operator + ": " + made);
    }
  }

  private void attempt(Problem problem, Operator operator, long seed) {
    Draws draws = new Draws(seed);
    State state = new State(problem);
    Audit audit = new Audit(Assertions.FULL, state, seed);
    Acceptance acceptance = new Acceptance(state, draws, audit);
    int[] free = problem.slots().free();
    // some slots stay out of it
    int[] some = seed % 4 == 0 ? Arrays.copyOf(free, (free.length + 1) / 2) : free;
    Neighbourhood near = new Neighbourhood(problem, draws, some);
    Chains chains = seed % 4 == 0 ? null : new Chains(state, draws, acceptance, seed % 8 < 5);
    Moves moves = new Moves(state, draws, acceptance, near, chains);
    state.reset(RandomDraws.of(problem, new SplittableRandom(seed), seed % 5 > 0));
    double hot = (seed % 3 + 0.5) * problem.prices().hard();
    for (int turn = 0; turn < TURNS; turn++) {
      int[] before = state.yarn.clone();
      moves.attempt(operator, hot);
      String where = operator + ", seed " + seed + ", turn " + turn;
      int[] changed = changed(before, state.yarn);
      for (int slot : changed) {
        assertTrue(near.has(slot) || operator == Operator.CHAIN && state.free(slot), where);
        assertTrue(problem.domains().allows(slot, state.yarn[slot]), where);
      }
      if (changed.length > 0) {
        made.merge(operator, 1, Integer::sum);
        assertKind(problem, operator, before, state.yarn, changed, where);
      }
    }
  }

  private static int[] changed(int[] before, int[] after) {
    return IntStream.range(0, before.length).filter(i -> before[i] != after[i]).toArray();
  }

  private static void assertKind(
      Problem problem, Operator operator, int[] before, int[] after, int[] changed, String where) {
    int[] layers = Arrays.stream(changed).map(slot -> problem.slots().layer()[slot]).toArray();
    int[] orbits = Arrays.stream(changed).map(slot -> problem.slots().orbit()[slot]).toArray();
    switch (operator) {
      case CHANGE -> assertEquals(1, changed.length, where);
      case EXCHANGE_ALIKE, EXCHANGE_IN_LAYER -> {
        assertExchanged(before, after, changed, where);
        assertEquals(layers[0], layers[1], where);
      }
      case EXCHANGE_ACROSS -> assertExchanged(before, after, changed, where);
      case EXCHANGE_WITHIN -> {
        assertExchanged(before, after, changed, where);
        assertEquals(orbits[0], orbits[1], where);
      }
      case EXCHANGE_SEQUENCES ->
          assertEquals(sequences(problem, before), sequences(problem, after), where);
      // a border that clashed before may be given the yarn that it has
      case CHAIN -> assertTrue(changed.length >= 1, where);
      case BORDER -> assertTrue(changed.length <= 2, where);
    }
    if (operator == Operator.EXCHANGE_ALIKE) {
      int[] classes =
          Arrays.stream(changed).map(slot -> problem.supply().slotClass()[slot]).toArray();
      assertEquals(classes[0], classes[1], where);
    }
  }

  private static void assertExchanged(int[] before, int[] after, int[] changed, String where) {
    assertEquals(2, changed.length, where);
    assertArrayEquals(
        new int[] {before[changed[1]], before[changed[0]]},
        new int[] {after[changed[0]], after[changed[1]]},
        where);
  }

  private static List<List<Integer>> sequences(Problem problem, int[] yarn) {
    List<List<Integer>> sequences = new ArrayList<>();
    for (int orbit = 0; orbit < problem.slots().orbits(); orbit++) {
      int start = problem.slots().orbitStart()[orbit];
      int end = problem.slots().orbitStart()[orbit + 1];
      sequences.add(Arrays.stream(yarn, start, end).boxed().toList());
    }
    sequences.sort(Comparator.comparing(List::toString));
    return sequences;
  }
}
