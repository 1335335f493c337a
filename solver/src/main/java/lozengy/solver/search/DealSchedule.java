package lozengy.solver.search;

/**
 * How often a search deals afresh and how good a plan of counts each deal gets, by the size of the
 * blanket and the moves that there are. All moves here are those of one walker, unless said.
 */
final class DealSchedule {

  /** The part of all moves that fresh deals may take; the rest goes over the best. */
  static final double PART = 0.6;

  /**
   * Moves for each slot between two fresh deals, of blankets up to so many slots; of larger ones at
   * least, and more by the square of their size.
   */
  private static final long MOVES_BETWEEN_DEALS = 2500;

  static final double SLOTS_OF_SMALL = 200;

  /** Of the fresh deals of a small blanket with few borders, one in so many keeps to a plan. */
  static final int PLANNED_EVERY = 4;

  /**
   * Fresh deals of a small blanket at least, for with fewer moves they come that much faster; of a
   * larger one at most, for with more moves each settles that much slower.
   */
  private static final int DEALS = 4;

  private static final long LEAST_MOVES_BETWEEN_DEALS = 600;

  /** Exchanges of a plan of counts, by the moves of the leg to come. */
  private static final int LEAST_EXCHANGES = 1000;

  private static final int MOST_EXCHANGES = 10_000;
  private static final int MOVES_OF_EXCHANGE = 150;

  /** Moves of a walker for which a better plan of counts than the first is worth its time. */
  static final long MOVES_WORTH_A_PLAN = (long) LEAST_EXCHANGES * MOVES_OF_EXCHANGE;

  /** The part of all moves that planning a pattern of borders may take at most. */
  private static final double PATTERN_PART = 1.0 / 6;

  /** Deals of plans of borders by each walker, and the part of all moves that they take. */
  static final int PLAN_DEALS = 6;

  private static final double PLANS_PART = 0.45;

  /** The part of such a deal's moves in which borders move alone. */
  static final double BORDERS_PART = 0.3;

  /** How many of the deals go on, and the part of all moves that they take. */
  static final int PLANS_IN_HEATS = 4;

  private static final double HEATS_PART = 0.15;

  private DealSchedule() {}

  /** Whether a pattern of borders is worth what planning it may take, both in moves of all. */
  static boolean worthAPattern(long most, long moves) {
    return most <= PATTERN_PART * moves;
  }

  /** Moves of the deal of a plan of borders, by all the moves that there are. */
  static long movesOfPlan(long moves) {
    return (long) (PLANS_PART * moves / PLAN_DEALS);
  }

  /** Moves of a walker in each of the heats among the best of them. */
  static long movesOfHeat(long moves, int walkers) {
    int heats = (PLANS_IN_HEATS + walkers - 1) / walkers;
    return (long) (HEATS_PART * moves / heats);
  }

  /** Moves between two fresh deals, by all the moves that there are. */
  static long movesBetween(int slots, long moves) {
    double size = Math.max(1, slots / SLOTS_OF_SMALL);
    long full = (long) (MOVES_BETWEEN_DEALS * slots * size * size);
    long part = (long) (PART * moves / DEALS);
    return slots > SLOTS_OF_SMALL
        ? Math.max(full, part)
        : Math.max(LEAST_MOVES_BETWEEN_DEALS * slots, Math.min(full, part));
  }

  /** Exchanges of a plan of counts for a leg of so many moves. */
  static int exchanges(long moves) {
    return (int) Math.max(LEAST_EXCHANGES, Math.min(MOST_EXCHANGES, moves / MOVES_OF_EXCHANGE));
  }
}
