package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
  void largerBlanketsTakeMoreMovesForEachRoundAndNoMoreThanFourDeals() {
    assertEquals(2500 * 400 * 4, DealSchedule.movesBetween(400, 1_000_000));
    assertEquals((long) (0.6 * 1_000_000_000 / 4), DealSchedule.movesBetween(400, 1_000_000_000));
  }

  @Test
  void plansAreBetteredByTheMovesToCome() {
    assertEquals(1000, DealSchedule.exchanges(0));
    assertEquals(2000, DealSchedule.exchanges(300_000));
    assertEquals(10_000, DealSchedule.exchanges(1_000_000_000));
  }

  @Test
  void smallIsUpToTwoHundredRounds() {
    assertEquals(600 * 200, DealSchedule.movesBetween(200, 0));
    assertEquals(2500 * 200, DealSchedule.movesBetween(200, 1_000_000_000));
    // a hundredth more is by its square more
    assertEquals((long) (2500 * 202 * 1.01 * 1.01), DealSchedule.movesBetween(202, 0));
    // four deals take the part of fresh deals
    assertEquals((long) (0.6 * 2_000_000 / 4), DealSchedule.movesBetween(200, 2_000_000));
  }

  @Test
  void plansOfBordersAndHeatsTakeTheirParts() {
    assertEquals(45_000, DealSchedule.movesOfPlan(600_000));
    assertEquals(37_500, DealSchedule.movesOfHeat(1_000_000, 1));
    assertEquals(75_000, DealSchedule.movesOfHeat(1_000_000, 2));
    assertEquals(75_000, DealSchedule.movesOfHeat(1_000_000, 3));
    assertEquals(150_000, DealSchedule.movesOfHeat(1_000_000, 4));
    assertEquals(150_000, DealSchedule.MOVES_WORTH_A_PLAN);
  }

  @Test
  void aPatternMayTakeASixth() {
    assertTrue(DealSchedule.worthAPattern(100, 601));
    assertFalse(DealSchedule.worthAPattern(101, 600));
  }
}
