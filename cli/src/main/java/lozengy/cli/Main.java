package lozengy.cli;

import lozengy.cli.command.Lozengy;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.solver.Solver;
import lozengy.solver.Solving;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /** Runs one command and ends the program with its exit code. */
  public static void main(String[] arguments) {
    Interrupt interrupt = new Interrupt();
    int code = run(Terminal.ofProcess(interrupt), arguments);
    interrupt.finished(code);
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @param terminal where it reads and prints
   * @param arguments the words of the command line
   * @return its exit code, see {@link ExitCode}
   */
  static int run(Terminal terminal, String... arguments) {
    return run(terminal, Solver::solve, arguments);
  }

  /** The same with another solver. */
  static int run(Terminal terminal, Solving solving, String... arguments) {
    Failures failures = new Failures(terminal);
    CommandLine commandLine = Lozengy.commandLine(terminal, solving, arguments);
    commandLine.setOut(terminal.out());
    commandLine.setErr(terminal.err());
    commandLine.setColorScheme(new ColorScheme.Builder(Ansi.OFF).build());
    commandLine.setParameterExceptionHandler(failures);
    commandLine.setExecutionExceptionHandler(failures);
    commandLine.setExitCodeExceptionMapper(failures);
    try {
      int code = commandLine.execute(arguments);
      terminal.flush();
      return code;
    } catch (Refusal | OutOfMemoryError | StackOverflowError failure) {
      return failures.tell(failure, false);
    }
  }
}
