package lozengy.solver.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Lets all walkers do the same work, on as many threads as are useful, and waits for the last. */
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

  void run(List<Walker> walkers, Consumer<Walker> work) {
    if (threads == null) {
      walkers.forEach(work);
      return;
    }
    List<Callable<Object>> tasks = new ArrayList<>();
    walkers.forEach(walker -> tasks.add(Executors.callable(() -> work.accept(walker))));
    try {
      for (Future<Object> future : threads.invokeAll(tasks)) {
        future.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while searching", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a walker failed", e.getCause());
    }
  }

  @Override
  public void close() {
    if (threads != null) {
      threads.shutdownNow();
    }
  }
}
