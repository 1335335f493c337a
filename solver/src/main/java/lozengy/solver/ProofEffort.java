package lozengy.solver;

import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.Limits;

/**
 * How much the constraint model may do beside a search, so that a search of few moves does not
 * spend nearly all of its time on proofs. A limit of moves makes it the same on every machine;
 * where time is limited, that limit rules.
 *
 * @param start dead ends in the look for a start, or for a proof that there is none
 * @param optimum nodes of each look for something better than the best of a small brief
 */
record ProofEffort(long start, long optimum) {

  private static final long START_NODES = 200_000;

  /** Of 1,900 rounds some 4,000 a second, of 200 some 15,000. */
  private static final long MOST_START = 50_000;

  private static final long LEAST_START = 1_000;

  /** The part of the usual moves from which on it is most: what a trial of a pack has. */
  private static final double PART_FOR_MOST = 0.25;

  /** Some 2,000 to 20,000 a second. */
  private static final long MOST_OPTIMUM = 4_000;

  private static final long LEAST_OPTIMUM = 1_000;
  private static final long OPTIMUM_TIMED = 100_000;

  /** Moves of the search before the look for something better. */
  static final long MOVES_BEFORE_OPTIMUM = 400_000;

  /** {@return what suits the limits of a solve} */
  static ProofEffort of(Blanket blanket, SolveOptions options) {
    if (options.seconds().isPresent()) {
      return new ProofEffort(MOST_START, OPTIMUM_TIMED);
    }
    long usual = SolveOptions.defaultMoves(blanket);
    double moves = options.moves().orElse(usual);
    return new ProofEffort(
        part(moves / (PART_FOR_MOST * usual), LEAST_START, MOST_START),
        part(moves / MOVES_BEFORE_OPTIMUM, LEAST_OPTIMUM, MOST_OPTIMUM));
  }

  private static long part(double part, long least, long most) {
    return Math.max(least, (long) (Math.min(1, part) * most));
  }

  Limits forStart(BooleanSupplier stop) {
    return new Limits(START_NODES, start, stop);
  }

  Limits forOptimum(BooleanSupplier stop) {
    return new Limits(optimum, optimum, stop);
  }
}
