package lozengy.solver;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.ProgressListener.Progress;

/**
 * A solve that goes on by itself, on a daemon thread of its own: it can be looked at and ended at
 * any time, from any thread. Made by {@link Solver#start}.
 */
public final class RunningSolve {

  private final CompletableFuture<SolveResult> result = new CompletableFuture<>();
  private final BooleanSupplier stop;
  private final ProgressListener listener;
  private double best = Double.NEGATIVE_INFINITY;
  private volatile boolean ended;
  private volatile Progress progress;
  private volatile Incumbent incumbent;

  private RunningSolve(SolveOptions options) {
    this.stop = options.stop();
    this.listener = options.listener();
  }

  static RunningSolve start(Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    RunningSolve running = new RunningSolve(options);
    SolveOptions heard = options.withStop(running::isToEnd).withListener(running::hear);
    Thread thread = new Thread(() -> running.complete(blanket, earlier, heard), "lozengy-solve");
    thread.setDaemon(true);
    thread.start();
    return running;
  }

  /**
   * {@return what it comes to, as {@link Solver#solve} tells it; completed exceptionally where that
   * throws. To cancel the future ends the solve, too, but then hands nothing out}
   */
  public CompletableFuture<SolveResult> result() {
    return result;
  }

  /** Ends it: {@link #result} completes soon, with the best so far. */
  public void cancel() {
    ended = true;
  }

  /** {@return how far it has come; empty at the very beginning} */
  public Optional<Progress> progress() {
    return Optional.ofNullable(progress);
  }

  /**
   * {@return the best so far, checked and scored; empty until something valid is found. Once it is
   * over, that of the result}
   */
  public Optional<Arrangement> best() {
    // what a proof settled, and what bound it came to, was never told as progress
    if (result.isDone()
        && !result.isCompletedExceptionally()
        && result.join() instanceof SolveResult.Found found) {
      return Optional.of(found.arrangement());
    }
    return Optional.ofNullable(incumbent).map(Incumbent::arrangement);
  }

  private boolean isToEnd() {
    return ended || result.isDone() || stop.getAsBoolean();
  }

  private void complete(Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    try {
      result.complete(Solver.solve(blanket, earlier, options));
    } catch (Throwable e) {
      // errors, too: whoever waits for the result would never hear of them
      result.completeExceptionally(e);
    }
  }

  private void hear(Progress told) {
    if (told.score() > best) {
      Optional<Incumbent> better = told.incumbent().get();
      if (better.isPresent()) {
        incumbent = better.get();
        best = told.score();
      }
    }
    // without the incumbent, which is to be asked for only now
    progress = new Progress(told.seconds(), told.moves(), told.score(), told.bound());
    listener.progress(told);
  }
}
