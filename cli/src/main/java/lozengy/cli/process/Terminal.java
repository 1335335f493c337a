package lozengy.cli.process;

import java.io.BufferedInputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.function.DoubleSupplier;
import lozengy.model.input.MistakeCode;
import lozengy.report.Colours;
import lozengy.report.Screen;

/**
 * What the program shares with its surroundings. Text is UTF-8 whatever the locale, and the same on
 * a terminal and in a file; a picture in colours stands only where the {@link #screen} shows them.
 */
public final class Terminal {

  /** A start that seems to have taken longer is a clock that was set meanwhile. */
  private static final double LONGEST_START_SECONDS = 600;

  private final InputStream in;
  private final Pipe pipe;
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean showProgress;
  private final boolean debug;
  private final StopSignal stopSignal;
  private final Screen screen;
  private final DoubleSupplier age;

  /**
   * Makes a terminal.
   *
   * @param in standard input
   * @param out standard output
   * @param err standard error
   * @param showProgress whether a person watches standard error
   * @param debug whether stack traces are wanted
   * @param stopSignal tells when the user wants a long task to end
   * @param screen what a person sees
   */
  public Terminal(
      InputStream in,
      OutputStream out,
      OutputStream err,
      boolean showProgress,
      boolean debug,
      StopSignal stopSignal,
      Screen screen) {
    this(in, out, err, showProgress, debug, stopSignal, screen, () -> 0);
  }

  private Terminal(
      InputStream in,
      OutputStream out,
      OutputStream err,
      boolean showProgress,
      boolean debug,
      StopSignal stopSignal,
      Screen screen,
      DoubleSupplier age) {
    this.age = age;
    this.in = in;
    this.pipe = new Pipe(out);
    this.out = writer(pipe);
    this.err = writer(err);
    this.showProgress = showProgress;
    this.debug = debug;
    this.stopSignal = stopSignal;
    this.screen = screen;
  }

  /** Makes a terminal that shows no colours and is as wide as most are. */
  public Terminal(
      InputStream in,
      OutputStream out,
      OutputStream err,
      boolean showProgress,
      boolean debug,
      StopSignal stopSignal) {
    this(in, out, err, showProgress, debug, stopSignal, Screen.PLAIN);
  }

  /** The process's own. */
  public static Terminal ofProcess(StopSignal stopSignal) {
    return new Terminal(
        // unbuffered, Java 17 asks a pipe for its position and fails
        new BufferedInputStream(new FileInputStream(FileDescriptor.in)),
        new FileOutputStream(FileDescriptor.out),
        new FileOutputStream(FileDescriptor.err),
        Boolean.getBoolean("lozengy.progress"),
        "1".equals(System.getenv("LOZENGY_DEBUG")),
        stopSignal,
        screenOfProcess(),
        Terminal::ageOfProcess);
  }

  /**
   * Seconds since the process was started; 0 where the system does not tell, or its clock jumped.
   */
  private static double ageOfProcess() {
    Instant now = Instant.now();
    Instant start = ProcessHandle.current().info().startInstant().orElse(now);
    double seconds = Duration.between(start, now).toMillis() / 1000.0;
    return seconds >= 0 && seconds <= LONGEST_START_SECONDS ? seconds : 0;
  }

  /** As the launcher and the environment tell of it. */
  private static Screen screenOfProcess() {
    int columns = Integer.getInteger("lozengy.columns", Screen.USUAL_COLUMNS);
    boolean watched = Boolean.getBoolean("lozengy.terminal");
    return new Screen(
        Colours.of(watched, System.getenv()),
        columns < 1 ? Screen.USUAL_COLUMNS : columns,
        watched);
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
  }

  /** Standard input. */
  public InputStream in() {
    return in;
  }

  /** Standard output, as text. */
  public PrintWriter out() {
    return out;
  }

  /** Standard error, as text. */
  public PrintWriter err() {
    return err;
  }

  /** Writes bytes to standard output as they are. */
  public void write(byte[] bytes) {
    out.flush();
    pipe.write(bytes, 0, bytes.length);
  }

  /** What a person sees. */
  public Screen screen() {
    return screen;
  }

  /** Seconds since the program was started; 0 where it runs within another. */
  public double secondsSinceStart() {
    return age.getAsDouble();
  }

  /** Whether a person watches standard error. */
  public boolean showProgress() {
    return showProgress;
  }

  /** Whether stack traces are wanted. */
  public boolean debug() {
    return debug;
  }

  /** Tells when the user wants a long task to end. */
  public StopSignal stopSignal() {
    return stopSignal;
  }

  /** Whether standard output takes nothing more: its reader has left, or it cannot be written. */
  public boolean outputClosed() {
    out.flush();
    pipe.flush();
    return pipe.closed();
  }

  /**
   * Writes what is still held back.
   *
   * @throws Refusal if standard output could not be written, other than because its reader has left
   */
  public void flush() {
    out.flush();
    err.flush();
    pipe.flush();
    pipe.failure()
        .ifPresent(
            why -> {
              throw Refusal.of(
                  "standard output",
                  MistakeCode.UNWRITABLE.about(why),
                  "It cannot be written: " + why,
                  "Make room, or name a file with -o");
            });
  }
}
