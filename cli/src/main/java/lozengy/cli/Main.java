package lozengy.cli;

import lozengy.cli.command.Lozengy;
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
  public static int run(Terminal terminal, String... arguments) {
    Failures failures = new Failures(terminal);
    CommandLine commandLine = Lozengy.commandLine(terminal);
    commandLine.setOut(terminal.out());
    commandLine.setErr(terminal.err());
    commandLine.setColorScheme(new ColorScheme.Builder(Ansi.OFF).build());
    commandLine.setParameterExceptionHandler(failures);
    commandLine.setExecutionExceptionHandler(failures);
    commandLine.setExitCodeExceptionMapper(ExitCode.MAPPER);
    int code = commandLine.execute(arguments);
    try {
      terminal.flush();
    } catch (Refusal refusal) {
      return failures.tell(refusal, false);
    }
    return code;
  }
}
