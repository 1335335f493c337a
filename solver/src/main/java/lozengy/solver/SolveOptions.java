package lozengy.solver;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import lozengy.model.blanket.Blanket;
import lozengy.model.input.Nulls;
import lozengy.solver.search.Search;

/**
 * How to solve.
 *
 * @param seed seed of the random source
 * @param moves most moves to try, where limited; with the seed and the walkers it fixes the result;
 *     where neither moves nor seconds are limited, {@link #defaultMoves} holds
 * @param walkers walkers that share the moves, 1 to {@value #MOST_WALKERS}, where said; else {@link
 *     #defaultWalkers} holds
 * @param seconds most seconds to take, where limited
 * @param reserved seconds of these that are not for the search: spent before it begins, or kept for
 *     what comes after it
 * @param threads threads to use, at least 1; does not change the result of a seed, moves and
 *     walkers
 * @param stop asked now and then, by several threads at once; once true, the search ends with the
 *     best so far
 * @param listener told of progress, on the solving thread
 */
public record SolveOptions(
    long seed,
    OptionalLong moves,
    OptionalInt walkers,
    OptionalDouble seconds,
    double reserved,
    int threads,
    BooleanSupplier stop,
    ProgressListener listener) {

  /** Most walkers. */
  public static final int MOST_WALKERS = 64;

  private static final long MOVES_PER_ROUND = 16_000;
  private static final long LEAST_MOVES = 2_000_000;
  private static final long MOST_MOVES = 400_000_000;

  /** Moves for each round of a blanket for which that is too few. */
  private static final long LEAST_MOVES_PER_ROUND = 1_000;

  /**
   * Checks the ranges.
   *
   * @param seed seed of the random source
   * @param moves most moves to try, at least 0, where limited
   * @param walkers walkers that share the moves, 1 to {@value #MOST_WALKERS}, where said
   * @param seconds most seconds to take, at least 0 and not without end, where limited
   * @param reserved seconds of these that are not for the search, at least 0
   * @param threads threads to use, at least 1
   * @param stop asked now and then; once true, the search ends with the best so far
   * @param listener told of progress, on the solving thread
   * @throws IllegalArgumentException if a number is out of its range
   */
  public SolveOptions {
    Nulls.refuse("moves walkers seconds stop listener", moves, walkers, seconds, stop, listener);
    int shared = walkers.orElse(1);
    if (shared < 1 || shared > MOST_WALKERS) {
      throw new IllegalArgumentException("walkers " + shared + " are not 1 to " + MOST_WALKERS);
    }
    if (threads < 1) {
      throw new IllegalArgumentException("threads " + threads + ": at least 1 is needed");
    }
    if (moves.isPresent() && moves.getAsLong() < 0) {
      throw new IllegalArgumentException("moves " + moves.getAsLong() + " are below 0");
    }
    double most = seconds.orElse(0);
    if (!(most >= 0 && Double.isFinite(most))) {
      throw new IllegalArgumentException("seconds " + most + " are no finite number from 0");
    }
    if (!(reserved >= 0 && Double.isFinite(reserved))) {
      throw new IllegalArgumentException("reserved seconds " + reserved + " are not 0 or more");
    }
  }

  /** {@return seed 1, moves by the size of the blanket, all cores} */
  public static SolveOptions defaults() {
    return new SolveOptions(
        1,
        OptionalLong.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        0,
        Runtime.getRuntime().availableProcessors(),
        () -> false,
        progress -> {});
  }

  /**
   * {@return the same with another seed}
   *
   * @param other seed of the random source
   */
  public SolveOptions withSeed(long other) {
    return new SolveOptions(other, moves, walkers, seconds, reserved, threads, stop, listener);
  }

  /**
   * {@return the same with a limit of moves}
   *
   * @param most most moves to try, at least 0
   */
  public SolveOptions withMoves(long most) {
    return new SolveOptions(
        seed, OptionalLong.of(most), walkers, seconds, reserved, threads, stop, listener);
  }

  /**
   * {@return the same with a number of walkers}
   *
   * @param number walkers that share the moves, 1 to {@value #MOST_WALKERS}
   */
  public SolveOptions withWalkers(int number) {
    return new SolveOptions(
        seed, moves, OptionalInt.of(number), seconds, reserved, threads, stop, listener);
  }

  /**
   * {@return walkers that share the moves: those said, else {@link #defaultWalkers}}
   *
   * @param blanket the blanket
   */
  public int walkers(Blanket blanket) {
    return walkers.orElse(defaultWalkers(blanket));
  }

  /**
   * {@return the same with a limit of time}
   *
   * @param most most seconds to take, at least 0
   */
  public SolveOptions withSeconds(double most) {
    return new SolveOptions(
        seed, moves, walkers, OptionalDouble.of(most), reserved, threads, stop, listener);
  }

  /**
   * {@return the same with a part of the limit of time kept from the search}
   *
   * @param kept seconds spent before solving begins or needed after it, at least 0
   */
  public SolveOptions withReserved(double kept) {
    return new SolveOptions(seed, moves, walkers, seconds, kept, threads, stop, listener);
  }

  /** {@return the seconds that the search may take, where limited, 0 or more} */
  public OptionalDouble searchSeconds() {
    return seconds.isPresent()
        ? OptionalDouble.of(Math.max(0, seconds.getAsDouble() - reserved))
        : seconds;
  }

  /**
   * {@return the same with other threads}
   *
   * @param number threads to use, at least 1
   */
  public SolveOptions withThreads(int number) {
    return new SolveOptions(seed, moves, walkers, seconds, reserved, number, stop, listener);
  }

  /**
   * {@return the same with something that stops it}
   *
   * @param asked asked now and then; once true, the search ends with the best so far
   */
  public SolveOptions withStop(BooleanSupplier asked) {
    return new SolveOptions(seed, moves, walkers, seconds, reserved, threads, asked, listener);
  }

  /** {@return the same, ended too where the thread that calls this is interrupted} */
  public SolveOptions endedByInterrupt() {
    Thread caller = Thread.currentThread();
    return withStop(() -> caller.isInterrupted() || stop.getAsBoolean());
  }

  /**
   * {@return the same with a listener}
   *
   * @param told told of progress, on the solving thread
   */
  public SolveOptions withListener(ProgressListener told) {
    return new SolveOptions(seed, moves, walkers, seconds, reserved, threads, stop, told);
  }

  /**
   * {@return moves for what is still to be worked of a blanket: 16,000 a round, from 2 million to
   * 400 million, but 1,000 a round at least}
   *
   * @param blanket the blanket
   */
  public static long defaultMoves(Blanket blanket) {
    long rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece) - blanket.roundsWorked(piece);
    }
    long most = Math.max(MOST_MOVES, LEAST_MOVES_PER_ROUND * rounds);
    return Math.max(LEAST_MOVES, Math.min(most, MOVES_PER_ROUND * rounds));
  }

  /**
   * {@return how many walkers a blanket gains from: two; one from 20,000 rounds on, where its look
   * wishes no order and counts nothing}
   *
   * @param blanket the blanket
   */
  public static int defaultWalkers(Blanket blanket) {
    return Search.usualWalkers(blanket);
  }
}
