package lozengy.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.BooleanSupplier;
import lozengy.cli.process.Terminal;
import lozengy.report.Colours;
import lozengy.report.Screen;
import lozengy.solver.Solver;
import lozengy.solver.Solving;

/** Runs the command line within a test, as the shell would. */
public final class Run {

  private byte[] input = new byte[0];
  private boolean progress;
  private boolean debug;
  private Screen screen = Screen.PLAIN;
  private BooleanSupplier stop = () -> false;
  private Solving solving = Solver::solve;

  /** What a run gave. */
  public record Result(int code, byte[] bytes, String err) {
    /** Standard output as text. */
    public String out() {
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }

  /** Runs with nothing on standard input. */
  public static Result of(String... arguments) {
    return new Run().run(arguments);
  }

  /** Gives standard input. */
  public Run input(byte[] bytes) {
    input = bytes;
    return this;
  }

  /** Lets a person watch standard error. */
  public Run withProgress() {
    progress = true;
    return this;
  }

  /** Shows colours on standard output. */
  public Run withColours(Colours shown) {
    screen = new Screen(shown, screen.columns());
    return this;
  }

  /** Has lines of that many characters. */
  public Run withColumns(int columns) {
    screen = new Screen(screen.colours(), columns);
    return this;
  }

  /** Wants stack traces. */
  public Run withDebug() {
    debug = true;
    return this;
  }

  /** Answers whether the user wants the search to end. */
  public Run stop(BooleanSupplier answer) {
    stop = answer;
    return this;
  }

  /** Solves otherwise. */
  public Run solving(Solving other) {
    solving = other;
    return this;
  }

  /** Runs. */
  public Result run(String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code = run(out, err, arguments);
    return new Result(code, out.toByteArray(), err.toString(StandardCharsets.UTF_8));
  }

  /** Runs with other streams. */
  public int run(OutputStream out, OutputStream err, String... arguments) {
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(input), out, err, progress, debug, () -> stop, screen);
    return Main.run(terminal, solving, arguments);
  }
}
