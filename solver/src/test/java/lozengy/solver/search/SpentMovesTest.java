package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** What starts, repairs and rounds of planning again take, to the move. */
class SpentMovesTest {

  /** Ten squares of a border and another round. */
  private static final int SLOTS = 20;

  private static Problem board(long stock) {
    return ProblemCompiler.compile(
        BlanketBuilder.straight(5, 2)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(1000))
            .yarns(6, Tone.DARK, stock)
            .build(),
        Optional.empty());
  }

  private static Problem again(Problem problem, int[] yarn) {
    return ProblemCompiler.compile(problem.blanket(), Optional.of(problem.sequences(yarn)));
  }

  private static Budget unlimited() {
    return new Budget(OptionalLong.empty(), OptionalDouble.empty(), () -> false);
  }

  private static Search search(Problem problem, int walkers, Budget budget) {
    return new Search(
        problem, 1, walkers, 1, budget, () -> Long.MIN_VALUE, () -> {}, Assertions.OFF);
  }

  @Test
  void aStartThatIsValidAtOnceTakesOneLegAndOneThatNeverIsAllOfThem() {
    Budget budget = unlimited();
    try (Search search = search(board(100_000), 2, budget)) {
      assertTrue(search.start());
      assertEquals(2 * 30 * SLOTS, budget.spent());
      assertTrue(search.startAgain());
      assertEquals(2 * 30 * SLOTS, budget.spent());
    }
    // ten squares of a border in one yarn, which may not meet itself
    Problem single =
        ProblemCompiler.compile(
            BlanketBuilder.straight(5, 2)
                .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
                .yarn(Tone.DARK, 100_000)
                .build(),
            Optional.empty());
    Budget never = unlimited();
    try (Search search = search(single, 1, never)) {
      assertFalse(search.start());
      assertEquals((1 + 2 + 4 + 8) * 30 * 10, never.spent());
      assertFalse(search.startAgain());
      assertEquals((1 + 2 + 4 + 8) * 30 * 10 + (1 + 2 + 4 + 8 + 16) * 250 * 10, never.spent());
      assertNotNull(search.nearest());
    }
    Budget few = new Budget(OptionalLong.of(1000), OptionalDouble.empty(), () -> false);
    try (Search search = search(single, 1, few)) {
      assertFalse(search.start());
      assertEquals(1000, few.spent());
    }
  }

  /** A valid arrangement of the best cost: rows of yarns that come again as far off as they can. */
  private static int[] best(Problem problem) {
    Budget budget = new Budget(OptionalLong.of(100_000), OptionalDouble.empty(), () -> false);
    try (Search search = search(problem, 2, budget)) {
      assertTrue(search.start());
      search.improve();
      return search.best().clone();
    }
  }

  @Test
  void planningAgainEndsAfterARoundWithoutAGainWhereAllStandsElseAfterThree() {
    Problem problem = board(100_000);
    int[] best = best(problem);
    Problem again = again(problem, best);
    for (int walkers = 1; walkers <= 2; walkers++) {
      Budget budget = unlimited();
      try (Search search = search(again, walkers, budget)) {
        assertTrue(search.startFromEarlier(true));
        assertEquals(0, budget.spent(), "what can stand needs no repair");
        assertArrayEquals(best, search.best());
        search.improve();
        assertArrayEquals(best, search.best());
        // one that goes on from it and one that deals, at once or one after the other
        assertEquals(150L * SLOTS * 2, budget.spent());
        search.improve();
        assertEquals(150L * SLOTS * 2, budget.spent(), "it has ended");
      }
      int[] open = best.clone();
      open[3] = Sequences.OPEN;
      Budget filled = unlimited();
      try (Search search = search(again(problem, open), walkers, filled)) {
        assertTrue(search.startFromEarlier(true));
        assertEquals(20_000, filled.spent());
        assertArrayEquals(best, search.best(), "the best fills it again");
        search.improve();
        assertEquals(20_000 + 3 * 150L * SLOTS * walkers, filled.spent());
      }
      // by moves it goes on, and each leg is as long
      Budget moves = new Budget(OptionalLong.of(100_000), OptionalDouble.empty(), () -> false);
      try (Search search = search(again, walkers, moves)) {
        assertTrue(search.startFromEarlier(false));
        search.improve(3000);
        assertEquals(3000, moves.spent());
        search.improve();
        assertEquals(100_000, moves.spent());
      }
    }
  }

  @Test
  void aRepairTakesAWalkForWhatIsOpenAndTwoForWhatIsBroken() {
    Problem problem = board(100_000);
    int[] best = best(problem);
    int[] open = best.clone();
    open[3] = Sequences.OPEN;
    Repair ofOpen = repair(again(problem, open));
    int[] filled = ofOpen.repaired(() -> false).orElseThrow();
    assertEquals(20_000, ofOpen.moves());
    assertChanged(List.of(), open, filled);
    // the borders of the first two squares the same
    int[] broken = best.clone();
    broken[3] = broken[1];
    Repair ofBroken = repair(again(problem, broken));
    int[] mended = ofBroken.repaired(() -> false).orElseThrow();
    assertEquals(40_000, ofBroken.moves());
    assertEquals(0, Cost.of(problem, mended, 1).hard());
    List<Integer> changed = new ArrayList<>();
    for (int slot = 0; slot < SLOTS; slot++) {
      if (mended[slot] != broken[slot]) {
        changed.add(slot);
      }
    }
    assertTrue(changed.equals(List.of(1)) || changed.equals(List.of(3)), changed.toString());
    // stopped at once, nothing is tried
    Repair stopped = repair(again(problem, broken));
    assertTrue(stopped.repaired(() -> true).isEmpty());
    assertEquals(0, stopped.moves());
    // where no plan can be valid four attempts are made, each of twice the moves of the last
    Problem lacking = board(3000);
    Repair never = repair(again(lacking, best));
    assertTrue(never.repaired(() -> false).isEmpty());
    assertEquals(20_000 + 20_000 + 20_000 + (150 << 3) * SLOTS, never.moves());
  }

  private static Repair repair(Problem problem) {
    return new Repair(problem, EarlierPlan.of(problem, new Draws(1)), 1, Long.MAX_VALUE);
  }

  /** All that was not open stays, but for some slots. */
  private static void assertChanged(List<Integer> may, int[] before, int[] after) {
    for (int slot = 0; slot < before.length; slot++) {
      boolean same = before[slot] == Sequences.OPEN || before[slot] == after[slot];
      assertTrue(same || may.contains(slot), "slot " + slot);
    }
  }
}
