package lozengy.solver.pack;

/** What a pack is to have least of. */
public enum PackGoal {
  /** Balls. */
  BALLS,
  /** Money: every yarn that is not gone has a price. */
  PRICE,
  /** Grams. */
  WEIGHT
}
