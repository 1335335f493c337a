package lozengy.cli.batch;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
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
import lozengy.report.batch.Line;
import lozengy.report.batch.LineResult;
import lozengy.report.batch.LineSolver;
import lozengy.solver.SolveOptions;
import lozengy.solver.Solving;

/**
 * Solves line after line: one thread reads, several solve, the caller's writes. At most twice as
 * many lines as workers are between reading and writing, so that memory does not grow with the
 * input, and a result is written as soon as those before it are.
 */
public final class Batch {

  /** Most seeds of which the best is taken. */
  public static final int MOST_SEEDS = LineSolver.MOST_SEEDS;

  private static final int LINES_PER_WORKER = 2;
  private static final long LOOK_MILLISECONDS = 100;
  private static final Future<LineResult> END = new CompletableFuture<>();
  private static final Future<LineResult> STOPPED = new CompletableFuture<>();

  private final InputStream in;
  private final Predicate<byte[]> writer;
  private final LineSolver solver;
  private final long skip;
  private final BooleanSupplier stop;
  private final BlockingQueue<Future<LineResult>> results = new LinkedBlockingQueue<>();
  private final Semaphore places;
  private final ExecutorService workers;

  /**
   * Makes a batch.
   *
   * @param in the lines
   * @param writer takes the lines of results in order, and says whether it takes more
   * @param solving what solves
   * @param options how each line is solved; its stop ends the batch too
   * @param bestOf of how many seeds the best is wanted, for lines that do not say it, at least 1
   * @param skip how many lines to leave out at the beginning, at least 0
   * @param workers how many lines are solved at once, at least 1
   */
  public Batch(
      InputStream in,
      Predicate<byte[]> writer,
      Solving solving,
      SolveOptions options,
      int bestOf,
      long skip,
      int workers) {
    this.in = in;
    this.writer = writer;
    this.solver = new LineSolver(solving, options, bestOf);
    this.skip = skip;
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
   * that are under way then come to their end, and the others are not begun.
   *
   * @return how far it came
   * @throws Refusal if the input cannot be read
   */
  public BatchEnd run() {
    daemons().newThread(this::read).start();
    long last = skip;
    List<Long> cutShort = new ArrayList<>();
    try {
      for (Future<LineResult> next = take(); next != END; next = take()) {
        LineResult result = next == STOPPED ? null : next.get();
        if (result == null || result.bytes().isEmpty()) {
          return new BatchEnd(true, last, cutShort);
        }
        last = result.line();
        if (result.cutShort()) {
          cutShort.add(last);
        }
        boolean more = writer.test(result.bytes().get());
        places.release();
        if (!more) {
          return new BatchEnd(false, last, cutShort);
        }
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof Refusal refusal ? refusal : new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new BatchEnd(true, last, cutShort);
    } finally {
      workers.shutdownNow();
    }
    return new BatchEnd(!cutShort.isEmpty(), last, cutShort);
  }

  /** The next result to write; the end too where the user stops and no line is under way. */
  private Future<LineResult> take() throws InterruptedException {
    while (true) {
      Future<LineResult> next = results.poll(LOOK_MILLISECONDS, TimeUnit.MILLISECONDS);
      if (next != null) {
        return next;
      }
      if (stop.getAsBoolean()) {
        return STOPPED;
      }
    }
  }

  private void read() {
    try {
      InputLines lines = new InputLines(in);
      for (Line line = lines.next(); line != null; line = lines.next()) {
        if (stop.getAsBoolean()) {
          results.add(STOPPED);
          return;
        }
        if (line.number() > skip && !line.blank()) {
          Line each = line;
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
    } catch (RuntimeException | OutOfMemoryError e) {
      // Nobody else would hear of it, and the results would be waited for.
      results.add(CompletableFuture.failedFuture(e));
    }
  }
}
