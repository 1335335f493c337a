package lozengy.solver;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * How to solve.
 *
 * @param seed seed of the random source
 * @param moves most moves to try, where limited; with the seed it fixes the result
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

  /** Seed 1, about a second and a half, all cores. */
  public static SolveOptions defaults() {
    return new SolveOptions(
        1,
        OptionalLong.empty(),
        OptionalDouble.of(1.5),
        Runtime.getRuntime().availableProcessors(),
        () -> false,
        progress -> {});
  }
}
