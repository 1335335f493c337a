package lozengy.cli.batch;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import lozengy.cli.process.Refusal;
import lozengy.model.input.MistakeCode;
import lozengy.solver.SolveOptions;
import lozengy.solver.Solving;

/**
 * Solves line after line: one thread reads, several solve, the caller's writes. At most twice as
 * many lines as workers are between reading and writing, so that memory does not grow with the
 * input, and a result is written as soon as those before it are.
 */
public final class Batch {

  private static final int LINES_PER_WORKER = 2;
  private static final long LOOK_MILLISECONDS = 100;
  private static final Future<byte[]> END = CompletableFuture.completedFuture(new byte[0]);

  private final InputStream in;
  private final Predicate<byte[]> writer;
  private final LineSolver solver;
  private final BooleanSupplier stop;
  private final BlockingQueue<Future<byte[]>> results = new LinkedBlockingQueue<>();
  private final Semaphore places;
  private final ExecutorService workers;

  /**
   * Makes a batch.
   *
   * @param in the lines
   * @param writer takes the lines of results in order, and says whether it takes more
   * @param solving what solves
   * @param options how each line is solved; its stop ends the batch too
   * @param workers how many lines are solved at once, at least 1
   */
  public Batch(
      InputStream in,
      Predicate<byte[]> writer,
      Solving solving,
      SolveOptions options,
      int workers) {
    this.in = in;
    this.writer = writer;
    this.solver = new LineSolver(solving, options);
    this.stop = options.stop();
    this.places = new Semaphore(LINES_PER_WORKER * workers);
    this.workers = Executors.newFixedThreadPool(workers, daemons());
  }

  private static ThreadFactory daemons() {
    return task -> {
      Thread thread = new Thread(task, "batch");
      thread.setDaemon(true);
      return thread;
    };
  }

  /**
   * Solves all lines, until the input ends, nobody reads the results, or the user stops it; lines
   * that are under way then come to their end.
   *
   * @throws Refusal if the input cannot be read
   */
  public void run() {
    daemons().newThread(this::read).start();
    try {
      for (Future<byte[]> next = take(); next != END; next = take()) {
        boolean more = writer.test(next.get());
        places.release();
        if (!more) {
          return;
        }
      }
    } catch (ExecutionException e) {
      throw e.getCause() instanceof Refusal refusal ? refusal : new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      workers.shutdownNow();
    }
  }

  /** The next result to write; the end too where the user stops and no line is under way. */
  private Future<byte[]> take() throws InterruptedException {
    while (true) {
      Future<byte[]> next = results.poll(LOOK_MILLISECONDS, TimeUnit.MILLISECONDS);
      if (next != null) {
        return next;
      }
      if (stop.getAsBoolean()) {
        return END;
      }
    }
  }

  private void read() {
    try {
      InputLines lines = new InputLines(in);
      for (InputLines.Line line = lines.next(); line != null; line = lines.next()) {
        if (stop.getAsBoolean()) {
          break;
        }
        if (!line.blank()) {
          InputLines.Line each = line;
          places.acquire();
          results.add(workers.submit(() -> solver.solve(each)));
        }
      }
      results.add(END);
    } catch (IOException e) {
      results.add(
          CompletableFuture.failedFuture(
              Refusal.of(
                  "",
                  MistakeCode.UNREADABLE.about(e.getMessage()),
                  "The input cannot be read: " + e.getMessage(),
                  "Check that you may read it")));
    } catch (RejectedExecutionException e) {
      // The batch has ended before its input.
      results.clear();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
