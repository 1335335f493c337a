package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import lozengy.cli.process.Refusal;
import lozengy.model.blanket.Blanket;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.solver.ProgressListener;
import lozengy.solver.SolveOptions;

/**
 * A solve that is asked for.
 *
 * @param seed seed of the random source
 * @param moves most moves to try, at least 1, where limited
 * @param seconds most seconds to take, above 0, where limited
 * @param threads threads to use, at least 1
 */
record SolveRequest(long seed, OptionalLong moves, OptionalDouble seconds, int threads) {

  private static final int MOST_THREADS = 1024;

  /**
   * Checks the numbers.
   *
   * @throws Refusal if one is out of its range
   */
  SolveRequest {
    List<Mistake> mistakes = new ArrayList<>();
    if (moves.isPresent() && moves.getAsLong() < 1) {
      mistakes.add(
          wrong(
              "--moves",
              moves.getAsLong(),
              MistakeCode.OUT_OF_RANGE.about(moves.getAsLong(), 1),
              "Give a whole number, 1 or more"));
    }
    if (seconds.isPresent()
        && !(seconds.getAsDouble() > 0 && Double.isFinite(seconds.getAsDouble()))) {
      mistakes.add(
          wrong(
              "--seconds",
              seconds.getAsDouble(),
              MistakeCode.OUT_OF_RANGE.about(seconds.getAsDouble(), null, null, null, 0),
              "Give a number above 0"));
    }
    if (threads < 1 || threads > MOST_THREADS) {
      mistakes.add(
          wrong(
              "--threads",
              threads,
              MistakeCode.OUT_OF_RANGE.about(threads, 1, MOST_THREADS),
              "Give a whole number from 1 to " + MOST_THREADS));
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
  }

  private static Mistake wrong(String option, Number found, Mistake.Sort sort, String remedy) {
    return Mistake.ofWish(option, sort, found.toString(), remedy);
  }

  /**
   * The request from what the user said; without a limit of either kind the blanket's size gives
   * the moves.
   *
   * @param seed null if not said
   * @param moves null if not said
   * @param seconds null if not said
   * @param threads null if not said
   * @throws Refusal if a number is out of its range
   */
  static SolveRequest of(Long seed, Long moves, Double seconds, Integer threads) {
    SolveOptions usual = SolveOptions.defaults();
    return new SolveRequest(
        seed == null ? usual.seed() : seed,
        moves == null ? OptionalLong.empty() : OptionalLong.of(moves),
        seconds == null ? OptionalDouble.empty() : OptionalDouble.of(seconds),
        threads == null ? usual.threads() : threads);
  }

  /** Where a solve of a blanket ends at the latest, to tell how long it will take. */
  ProgressLine.Limits limits(Blanket blanket) {
    boolean limited = moves.isPresent() || seconds.isPresent();
    return new ProgressLine.Limits(
        limited ? moves : OptionalLong.of(SolveOptions.defaultMoves(blanket)), seconds);
  }

  /** The same for the solver. */
  SolveOptions options(BooleanSupplier stop, ProgressListener listener) {
    return new SolveOptions(seed, moves, seconds, threads, stop, listener);
  }
}
