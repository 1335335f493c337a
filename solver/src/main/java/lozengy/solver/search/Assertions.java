package lozengy.solver.search;

/** How closely a search checks itself. */
public enum Assertions {
  /** Not at all: for real work. */
  OFF,
  /** After every move that is made, the cost kept against the cost from scratch. */
  STEP,
  /**
   * For every move that is drawn, made or not: the delta against the cost from scratch, after the
   * move and after its undoing, and the state against the model's own check and score.
   */
  FULL
}
