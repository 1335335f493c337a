package lozengy.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import lozengy.cli.process.StopSignal;

/**
 * Ctrl-C, or a polite kill. Java answers it by ending the program once its shutdown hooks are done;
 * the hook here asks the task to stop, waits until its result is written, and then ends the program
 * with the task's own exit code.
 */
final class Interrupt implements StopSignal {

  /** How long a task may take to come to its end; after that the program ends without it. */
  private static final long GRACE_SECONDS = 20;

  /** What a shell shows for a program that an interrupt ended: 128 + SIGINT. */
  private static final int INTERRUPTED = 130;

  private final CountDownLatch finished = new CountDownLatch(1);
  private volatile boolean requested;
  private volatile int exitCode = INTERRUPTED;

  @Override
  public BooleanSupplier listen() {
    Runtime.getRuntime().addShutdownHook(new Thread(this::awaitTask, "interrupt"));
    return () -> requested;
  }

  /** Says that the program's work is done and written. */
  void finished(int code) {
    exitCode = code;
    finished.countDown();
  }

  private void awaitTask() {
    requested = true;
    try {
      if (!finished.await(GRACE_SECONDS, TimeUnit.SECONDS)) {
        System.err.println("lozengy: stopped before the task came to an end; nothing is written");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    Runtime.getRuntime().halt(exitCode);
  }
}
