package lozengy.solver;

import java.util.Optional;
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

  private static final int PATIENCE_MILLISECONDS = 200;

  private final FutureTask<Bound> task;

  /**
   * Begins.
   *
   * @param timed whether time is limited: then as many stages as it allows, else a number fixed by
   *     the blanket's size
   * @param stop once true, what is proved so far counts
   */
  Proving(Blanket blanket, Optional<Sequences> earlier, boolean timed, BooleanSupplier stop) {
    int stages = blanket.pieceCount() <= FEW_PIECES ? 2 : 1;
    if (timed) {
      stages = STAGES_WITH_TIME;
    }
    BoundLimits limits = new BoundLimits(blanket.pieceCount() > MANY_PIECES ? 0 : stages);
    task = new FutureTask<>(() -> Bounds.of(blanket, earlier, limits, stop));
    Thread thread = new Thread(task, "lozengy-bound");
    thread.setDaemon(true);
    thread.start();
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

  /** The bound; waits for it. */
  Bound bound() {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while proving a bound", e);
    } catch (ExecutionException | CancellationException e) {
      throw new IllegalStateException("the proof of a bound failed", e);
    }
  }

  @Override
  public void close() {
    task.cancel(true);
  }
}
