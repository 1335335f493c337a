package lozengy.range;

import java.io.Serializable;
import lozengy.report.batch.LineSolver;
import lozengy.solver.SolveOptions;

/**
 * How long to search for a line; the same words and meaning as those of batch.
 *
 * @param moves most moves, at least 1; null if not said
 * @param seconds most seconds, above 0; null if not said
 * @param bestOf of how many seeds the best is taken, 1 to 1000
 */
record Limits(Long moves, Double seconds, int bestOf) implements Serializable {

  Limits {
    if (moves != null && moves < 1) {
      throw new IllegalArgumentException("--moves " + moves + ": give a whole number, 1 or more");
    }
    if (seconds != null && !(seconds > 0 && Double.isFinite(seconds))) {
      throw new IllegalArgumentException("--seconds " + seconds + ": give a number above 0");
    }
    if (bestOf < 1 || bestOf > LineSolver.MOST_SEEDS) {
      throw new IllegalArgumentException(
          "--best-of " + bestOf + ": give a whole number from 1 to " + LineSolver.MOST_SEEDS);
    }
  }

  /** The same for the solver, on one thread: an executor solves as many lines as it has cores. */
  SolveOptions options() {
    SolveOptions options = SolveOptions.defaults().withThreads(1);
    options = moves == null ? options : options.withMoves(moves);
    return seconds == null ? options : options.withSeconds(seconds);
  }
}
