package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
 * @param walkers walkers that share the moves, 1 to 64, where said
 * @param seconds most seconds to take, above 0, where limited
 * @param threads threads to use, at least 1
 */
record SolveRequest(
    long seed, OptionalLong moves, OptionalInt walkers, OptionalDouble seconds, int threads) {

  private static final int MOST_THREADS = 1024;

  /**
   * What judging, writing and telling take, in parts of what starting and reading have taken: on
   * any machine both wait for the same code to be loaded.
   */
  private static final double AFTER_SEARCH = 0.5;

  /** Seconds that they take beside that for each piece, on the machine of the benchmarks. */
  private static final double AFTER_SEARCH_A_PIECE = 50e-6;

  private static final double SEARCH_AT_LEAST = 0.5;

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
    int shared = walkers.orElse(1);
    if (shared < 1 || shared > SolveOptions.MOST_WALKERS) {
      mistakes.add(
          wrong(
              "--walkers",
              shared,
              MistakeCode.OUT_OF_RANGE.about(shared, 1, SolveOptions.MOST_WALKERS),
              "Give a whole number from 1 to " + SolveOptions.MOST_WALKERS));
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
   * @param walkers null if not said
   * @param seconds null if not said
   * @param threads null if not said
   * @throws Refusal if a number is out of its range
   */
  static SolveRequest of(Long seed, Long moves, Integer walkers, Double seconds, Integer threads) {
    SolveOptions usual = SolveOptions.defaults();
    return new SolveRequest(
        seed == null ? usual.seed() : seed,
        moves == null ? OptionalLong.empty() : OptionalLong.of(moves),
        walkers == null ? OptionalInt.empty() : OptionalInt.of(walkers),
        seconds == null ? OptionalDouble.empty() : OptionalDouble.of(seconds),
        threads == null ? usual.threads() : threads);
  }

  /** Where a solve of a blanket ends at the latest, to tell how long it will take. */
  ProgressLine.Limits limits(Blanket blanket) {
    boolean limited = moves.isPresent() || seconds.isPresent();
    return new ProgressLine.Limits(
        limited ? moves : OptionalLong.of(SolveOptions.defaultMoves(blanket)), seconds);
  }

  /** The same for the solver, with the whole limit of time for the search. */
  SolveOptions options(BooleanSupplier stop, ProgressListener listener) {
    return options(0, 0, stop, listener);
  }

  /**
   * The same for the solver. A limit of time counts from the start of the program to its end: what
   * comes after the search takes some part of what came before it, and some time for each piece.
   * The search has half of the limit at least, however short that is.
   *
   * @param spent seconds since the program was started
   * @param pieces pieces of the blanket
   */
  SolveOptions options(double spent, int pieces, BooleanSupplier stop, ProgressListener listener) {
    double others = spent * (1 + AFTER_SEARCH) + pieces * AFTER_SEARCH_A_PIECE;
    double reserved = Math.min(others, SEARCH_AT_LEAST * seconds.orElse(0));
    return new SolveOptions(seed, moves, walkers, seconds, reserved, threads, stop, listener);
  }
}
