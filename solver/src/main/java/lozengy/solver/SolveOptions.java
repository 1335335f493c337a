package lozengy.solver;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;

/**
 * How to solve.
 *
 * @param seed seed of the random source
 * @param moves most moves to try, where limited; with the seed it fixes the result; where neither
 *     moves nor seconds are limited, {@link #defaultMoves} holds
 * @param seconds most seconds to take, where limited
 * @param threads threads to use, at least 1; does not change the result of a seed and moves
 * @param stop asked now and then; once true, the search ends with the best so far
 * @param listener told of progress, on the solving thread
 */
public record SolveOptions(
    long seed,
    OptionalLong moves,
    OptionalDouble seconds,
    int threads,
    BooleanSupplier stop,
    ProgressListener listener) {

  private static final long MOVES_PER_ROUND = 16_000;
  private static final long LEAST_MOVES = 2_000_000;
  private static final long MOST_MOVES = 400_000_000;

  /** {@return seed 1, moves by the size of the blanket, all cores} */
  public static SolveOptions defaults() {
    return new SolveOptions(
        1,
        OptionalLong.empty(),
        OptionalDouble.empty(),
        Runtime.getRuntime().availableProcessors(),
        () -> false,
        progress -> {});
  }

  /**
   * {@return moves for what is still to be worked of a blanket: 16,000 a round, from 2 million to
   * 400 million}
   *
   * @param blanket the blanket
   */
  public static long defaultMoves(Blanket blanket) {
    long rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece) - blanket.roundsWorked(piece);
    }
    return Math.max(LEAST_MOVES, Math.min(MOST_MOVES, MOVES_PER_ROUND * rounds));
  }
}
