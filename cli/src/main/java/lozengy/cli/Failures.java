package lozengy.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Map;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.input.Mistake;
import lozengy.report.FailureData;
import lozengy.report.Json;
import lozengy.report.PlainText;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IExitCodeExceptionMapper;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * Tells failures: one line for each mistake on standard error, and where {@code --json} is given
 * the same as an object on standard output.
 */
final class Failures
    implements IParameterExceptionHandler, IExecutionExceptionHandler, IExitCodeExceptionMapper {

  private static final String JSON_OPTION = "--json";

  private final Terminal terminal;

  Failures(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public int handleParseException(ParameterException failure, String[] arguments) {
    boolean json = Arrays.asList(arguments).contains(JSON_OPTION);
    return tell(CallMistakes.refusal(failure), json);
  }

  @Override
  public int handleExecutionException(
      Exception failure, CommandLine commandLine, ParseResult parsed) {
    return tell(failure, commandLine.getParseResult().hasMatchedOption(JSON_OPTION));
  }

  @Override
  public int getExitCode(Throwable failure) {
    return ExitCode.of(failure).code();
  }

  /**
   * Tells a failure.
   *
   * @param json whether it is wanted on standard output too
   * @return the exit code
   */
  int tell(Throwable failure, boolean json) {
    ExitCode code = ExitCode.of(failure);
    Refusal refusal = Refusal.of(failure);
    PrintWriter err = terminal.err();
    for (Mistake mistake : refusal.mistakes()) {
      err.println("lozengy: " + PlainText.oneLine(Refusal.words(refusal.place(), mistake)));
    }
    if (terminal.debug()) {
      failure.printStackTrace(err);
    }
    err.flush();
    if (json) {
      Map<String, Object> error = FailureData.of(code.code(), refusal.place(), refusal.mistakes());
      terminal.out().println(Json.result("error", Json.object("error", error)));
      terminal.out().flush();
    }
    return code.code();
  }
}
