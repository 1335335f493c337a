package lozengy.solver.explain.remedy;

import java.util.List;

/**
 * Changes of one line, each of which allows all that the one before it allows.
 *
 * @param rungs the changes, the mildest first, at least one
 */
record Ladder(List<Move> rungs) {

  Ladder {
    rungs = List.copyOf(rungs);
  }

  /** A ladder with one rung. */
  static Ladder of(Move move) {
    return new Ladder(List.of(move));
  }
}
