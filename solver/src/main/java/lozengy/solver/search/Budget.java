package lozengy.solver.search;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * What a solve may still spend. The only clock of the solver; a budget of moves alone never reads
 * it for a decision.
 */
public final class Budget {

  private static final double NANOS = 1e9;

  private final long startNanos = System.nanoTime();
  private final OptionalLong moves;
  private final OptionalDouble seconds;
  private final BooleanSupplier stop;
  private long spent;
  private double searchStart = Double.NaN;

  /**
   * Starts the clock.
   *
   * @param moves most moves, where limited
   * @param seconds most seconds from now, where limited
   * @param stop asked now and then; once true, all is spent
   */
  public Budget(OptionalLong moves, OptionalDouble seconds, BooleanSupplier stop) {
    this.moves = moves;
    this.seconds = seconds;
    this.stop = stop;
  }

  /** {@return seconds since the start} */
  public double elapsedSeconds() {
    return (System.nanoTime() - startNanos) / NANOS;
  }

  /** {@return moves spent so far} */
  public long spent() {
    return spent;
  }

  /** Counts moves as spent. */
  void spend(long made) {
    if (Double.isNaN(searchStart)) {
      searchStart = elapsedSeconds();
    }
    spent += made;
  }

  /** Whether the search was told to stop, or has no moves left. */
  boolean stopped() {
    return stop.getAsBoolean() || moves.isPresent() && spent >= moves.getAsLong();
  }

  /** {@return whether the search must end} */
  public boolean over() {
    return stop.getAsBoolean()
        || moves.isPresent() && spent >= moves.getAsLong()
        || seconds.isPresent() && elapsedSeconds() >= seconds.getAsDouble();
  }

  /** Whether only moves limit it, so that its course is the same on every machine. */
  boolean countsMovesOnly() {
    return seconds.isEmpty();
  }

  /**
   * Moves that may still be made: those left, or as many as fit the seconds left at the speed so
   * far.
   *
   * @param fallback the answer where nothing limits, or no speed is known yet
   */
  long movesLeft(long fallback) {
    long left = moves.isPresent() ? moves.getAsLong() - spent : Long.MAX_VALUE;
    if (seconds.isPresent()) {
      double now = elapsedSeconds();
      boolean known = spent > 0 && now > searchStart;
      double speed = known ? spent / (now - searchStart) : 0;
      double fitting = known ? speed * (seconds.getAsDouble() - now) : fallback;
      left = Math.min(left, (long) fitting);
    }
    return left == Long.MAX_VALUE ? fallback : left;
  }
}
