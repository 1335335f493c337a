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

  /** The part that the latest moves have in the speed. */
  private static final double LATEST_PART = 0.3;

  private final long startNanos = System.nanoTime();
  private final OptionalLong moves;
  private final OptionalDouble seconds;
  private final BooleanSupplier stop;
  private long spent;
  private double usable = 1;
  private double resumed;
  private double speed;

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

  /** Moves are made from now on: what was done since the last ones does not count as slowness. */
  void resume() {
    resumed = elapsedSeconds();
  }

  /** Counts moves as spent. The latest count most for the speed, which grows as code warms up. */
  void spend(long made) {
    double now = elapsedSeconds();
    double latest = made / Math.max(1e-9, now - resumed);
    speed = spent == 0 ? latest : speed + LATEST_PART * (latest - speed);
    resumed = now;
    spent += made;
  }

  /** Whether the search was told to stop, or has no moves left. */
  boolean stopped() {
    return stop.getAsBoolean() || moves.isPresent() && spent >= moves.getAsLong();
  }

  /** {@return whether the search must end} */
  public boolean over() {
    return stopped() || seconds.isPresent() && elapsedSeconds() >= seconds.getAsDouble();
  }

  /** Whether only moves limit it, so that its course is the same on every machine. */
  boolean countsMovesOnly() {
    return seconds.isEmpty();
  }

  /**
   * Keeps a part back from what {@link #movesLeft} tells, until this is said again.
   *
   * @param part of all, 0 to below 1
   */
  void keepBack(double part) {
    usable = 1 - part;
  }

  /**
   * Moves that may still be made: those left, or as many as fit the seconds left at the speed of
   * late.
   *
   * @param fallback the answer where nothing limits, or no speed is known yet
   */
  long movesLeft(long fallback) {
    long left = movesAllowed();
    if (seconds.isPresent()) {
      double now = elapsedSeconds();
      double fitting = spent > 0 ? speed * (usable * seconds.getAsDouble() - now) : fallback;
      left = Math.min(left, (long) fitting);
    }
    return left == Long.MAX_VALUE ? fallback : left;
  }

  /** Moves that the limit of moves leaves; {@link Long#MAX_VALUE} where there is none. */
  long movesAllowed() {
    return moves.isPresent() ? (long) (usable * moves.getAsLong()) - spent : Long.MAX_VALUE;
  }
}
