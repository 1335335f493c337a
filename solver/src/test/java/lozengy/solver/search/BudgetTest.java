package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** What is left of moves to the last one, and of seconds only whether there are any. */
class BudgetTest {

  private static final double AGES = 1e9;

  private static Budget moves(long most) {
    return new Budget(OptionalLong.of(most), OptionalDouble.empty(), () -> false);
  }

  @Test
  void movesAreSpentToTheLast() {
    Budget budget = moves(1000);
    assertTrue(budget.countsMovesOnly());
    assertEquals(1000, budget.movesLeft(7));
    budget.spend(400);
    assertEquals(400, budget.spent());
    budget.spend(599);
    assertEquals(999, budget.spent());
    assertEquals(1, budget.movesLeft(7));
    assertFalse(budget.over() || budget.stopped());
    budget.spend(1);
    assertEquals(0, budget.movesLeft(7));
    assertTrue(budget.over() && budget.stopped());
  }

  @Test
  void aPartIsKeptBackUntilItIsGivenFree() {
    Budget budget = moves(1000);
    budget.spend(100);
    budget.keepBack(0.25);
    assertEquals(650, budget.movesLeft(7));
    budget.spend(700);
    assertEquals(-50, budget.movesLeft(7));
    assertFalse(budget.over());
    budget.keepBack(0);
    assertEquals(200, budget.movesLeft(7));
  }

  @Test
  void nothingLimitsButTheWordToStop() {
    AtomicBoolean stop = new AtomicBoolean();
    Budget budget = new Budget(OptionalLong.empty(), OptionalDouble.empty(), stop::get);
    assertTrue(budget.countsMovesOnly());
    budget.spend(1_000_000);
    assertEquals(7, budget.movesLeft(7));
    assertFalse(budget.over() || budget.stopped());
    stop.set(true);
    assertTrue(budget.over() && budget.stopped());
  }

  @Test
  void theClockStartsWithTheBudget() {
    long before = System.nanoTime();
    double elapsed = moves(1).elapsedSeconds();
    assertTrue(elapsed >= 0 && elapsed <= (System.nanoTime() - before) / 1e9, elapsed + " s");
  }

  @Test
  void secondsEndItHoweverManyMovesThereAre() {
    Budget none = new Budget(OptionalLong.of(1000), OptionalDouble.of(0), () -> false);
    assertFalse(none.countsMovesOnly());
    assertTrue(none.over());
    assertFalse(none.stopped());
    Budget ages = new Budget(OptionalLong.empty(), OptionalDouble.of(AGES), () -> false);
    assertFalse(ages.over() || ages.stopped());
    // no speed is known yet
    assertEquals(7, ages.movesLeft(7));
  }

  /** Whatever the clock says: what was spent took no longer than has passed since the start. */
  @Test
  void movesThatFitTheSecondsFollowTheSpeedOfLate() {
    double seconds = 1e5;
    Budget budget = new Budget(OptionalLong.empty(), OptionalDouble.of(seconds), () -> false);
    budget.resume();
    budget.spend(1000);
    long first = budget.movesLeft(7);
    double passed = budget.elapsedSeconds();
    assertTrue(first >= 0.99 * 1000 / passed * (seconds - passed), first + " moves");
    budget.keepBack(0.5);
    passed = budget.elapsedSeconds();
    assertEquals(0.5 * first, budget.movesLeft(7), (0.01 + passed / seconds) * first);
    budget.keepBack(0);
    budget.resume();
    budget.spend(100_000);
    long second = budget.movesLeft(7);
    passed = budget.elapsedSeconds();
    double latest = 100_000 / passed;
    assertTrue(second >= 0.99 * 0.3 * latest * (seconds - passed), first + ", then " + second);
    // of moves that come to nothing the latest part counts, whatever the time they took
    long before = budget.movesLeft(7);
    budget.spend(0);
    assertEquals(0.7 * before, budget.movesLeft(7), 0.01 * before);
    Budget both = new Budget(OptionalLong.of(5000), OptionalDouble.of(AGES), () -> false);
    both.spend(1000);
    assertEquals(4000, both.movesLeft(7));
    Budget few = new Budget(OptionalLong.of(5000), OptionalDouble.of(0), () -> false);
    few.spend(1000);
    assertTrue(few.movesLeft(7) <= 0, "no time is left");
  }
}
