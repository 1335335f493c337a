package lozengy.solver;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.Bounds;

/** Proves a bound on a thread of its own, while the search goes on. */
final class Proving implements AutoCloseable {

  /** Pieces up to which a bound is worked out in three stages, and in two. */
  private static final int FEW_PIECES = 600;

  private static final int MANY_PIECES = 20_000;

  private static final int STAGES_WITH_TIME = 4;

  /**
   * Moves for each piece from which on the search takes at least as long as the proof up to its
   * second and its third stage. A search of fewer moves, as for many small briefs in a row, would
   * spend nearly all of its time on the proof.
   */
  private static final long MOVES_FOR_SECOND_STAGE = 1_500;

  private static final long MOVES_FOR_THIRD_STAGE = 5_000;

  /** Of a time limit, what the search has before the proof begins, and the most of it. */
  private static final double PAUSE_PART = 0.25;

  private static final double LONGEST_PAUSE_SECONDS = 0.3;
  private static final int PAUSE_STEP_MILLISECONDS = 5;

  private static final int PATIENCE_MILLISECONDS = 50;

  /** What the proof has to come to an end once the search is over by the clock. */
  private static final int GRACE_MILLISECONDS = 100;

  private final FutureTask<Bound> task;
  private final BooleanSupplier stop;
  private volatile boolean closed;

  /**
   * Begins.
   *
   * @param moves the limit of moves, if there is one
   * @param seconds the time limit, if there is one: then as many stages as it allows, and after the
   *     search has had the machine to itself for a while, else a number of stages fixed by the
   *     blanket's size and the moves
   * @param stop once true, what is proved so far counts
   */
  Proving(
      Blanket blanket,
      Optional<Sequences> earlier,
      OptionalLong moves,
      OptionalDouble seconds,
      BooleanSupplier stop) {
    this.stop = stop;
    int stages =
        Math.min(blanket.pieceCount() <= FEW_PIECES ? 2 : 1, stages(blanket.pieceCount(), moves));
    if (earlier.isPresent()) {
      // planning again is over soon, and the proof must not hold it up
      stages = 0;
    }
    if (seconds.isPresent()) {
      stages = STAGES_WITH_TIME;
    }
    double pause = Math.min(LONGEST_PAUSE_SECONDS, PAUSE_PART * seconds.orElse(0));
    BoundLimits limits = new BoundLimits(blanket.pieceCount() > MANY_PIECES ? 0 : stages);
    task =
        new FutureTask<>(
            () -> {
              pause(pause, stop);
              return withObjective(blanket, earlier, Bounds.of(blanket, limits, this::ends));
            });
    Thread thread = new Thread(task, "lozengy-bound");
    thread.setDaemon(true);
    thread.start();
  }

  /** How many further stages a search of so many moves is worth. */
  private static int stages(int pieces, OptionalLong moves) {
    if (moves.isEmpty() || moves.getAsLong() >= MOVES_FOR_THIRD_STAGE * pieces) {
      return 2;
    }
    return moves.getAsLong() >= MOVES_FOR_SECOND_STAGE * pieces ? 1 : 0;
  }

  private boolean ends() {
    return closed || stop.getAsBoolean();
  }

  private static Bound withObjective(Blanket blanket, Optional<Sequences> earlier, Bound bound) {
    Optional<Double> objective =
        earlier.map(before -> Bounds.ofObjective(blanket, before, bound.total()));
    return new Bound(bound.total(), bound.proof(), objective);
  }

  private static void pause(double seconds, BooleanSupplier stop) throws InterruptedException {
    long end = System.nanoTime() + (long) (seconds * 1e9);
    while (System.nanoTime() < end && !stop.getAsBoolean()) {
      Thread.sleep(PAUSE_STEP_MILLISECONDS);
    }
  }

  /** Whether the bound is there. */
  boolean done() {
    return task.isDone();
  }

  /**
   * Waits for the bound, but not for long.
   *
   * @return whether it is there
   */
  boolean await() {
    try {
      task.get(PATIENCE_MILLISECONDS, TimeUnit.MILLISECONDS);
    } catch (TimeoutException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | CancellationException e) {
      // told by bound()
    }
    return true;
  }

  /**
   * The bound; waits for it, but once it is to stop, or the thread is interrupted, only for as long
   * as nobody notices: then it may be missing.
   */
  Optional<Bound> bound() {
    while (!Thread.currentThread().isInterrupted() && !stop.getAsBoolean() && !await()) {
      // goes on
    }
    boolean interrupted = Thread.interrupted();
    try {
      return Optional.of(task.get(GRACE_MILLISECONDS, TimeUnit.MILLISECONDS));
    } catch (TimeoutException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      interrupted = true;
      return Optional.empty();
    } catch (ExecutionException | CancellationException e) {
      throw new IllegalStateException("the proof of a bound failed", e);
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  @Override
  public void close() {
    closed = true;
    task.cancel(true);
  }
}
