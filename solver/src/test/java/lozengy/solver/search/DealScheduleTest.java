package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Small blankets are dealt afresh several times even if moves are few; large ones are not. */
class DealScheduleTest {

  @Test
  void smallBlanketsGetSeveralDealsOfFewMoves() {
    assertTrue(4 * DealSchedule.movesBetween(75, 500_000) <= 0.6 * 500_000);
    assertEquals(2500 * 75, DealSchedule.movesBetween(75, 100_000_000));
    assertEquals(600 * 75, DealSchedule.movesBetween(75, 10_000));
  }

  @Test
  void largerBlanketsTakeMoreMovesForEachRoundWhateverThereAre() {
    assertEquals(2500 * 400 * 4, DealSchedule.movesBetween(400, 1_000_000));
    assertEquals(2500 * 400 * 4, DealSchedule.movesBetween(400, 1_000_000_000));
  }

  @Test
  void plansAreBetteredByTheMovesToCome() {
    assertEquals(1000, DealSchedule.exchanges(0));
    assertEquals(2000, DealSchedule.exchanges(300_000));
    assertEquals(10_000, DealSchedule.exchanges(1_000_000_000));
  }
}
