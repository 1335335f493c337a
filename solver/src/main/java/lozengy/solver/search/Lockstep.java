package lozengy.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Has the same work done on each of several, on as many threads as are useful, and waits for the
 * last.
 */
final class Lockstep implements AutoCloseable {

  private final ExecutorService threads;

  /**
   * Makes the threads.
   *
   * @param count how many, at least 1; with one all work is done on the caller's
   */
  Lockstep(int count) {
    this.threads =
        count > 1
            ? Executors.newFixedThreadPool(
                count,
                task -> {
                  Thread thread = new Thread(task, "lozengy-walker");
                  thread.setDaemon(true);
                  return thread;
                })
            : null;
  }

  <T> void run(List<T> all, Consumer<T> work) {
    if (threads == null) {
      all.forEach(work);
      return;
    }
    List<Future<?>> futures = new ArrayList<>();
    all.forEach(each -> futures.add(threads.submit(() -> work.accept(each))));
    futures.forEach(Lockstep::await);
  }

  /** Waits to the end even if interrupted: no walker may go on alone. The thread stays so. */
  private static void await(Future<?> future) {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          future.get();
          return;
        } catch (InterruptedException e) {
          interrupted = true;
        } catch (ExecutionException e) {
          throw new IllegalStateException("a walker failed", e.getCause());
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  @Override
  public void close() {
    if (threads != null) {
      threads.shutdownNow();
    }
  }
}
