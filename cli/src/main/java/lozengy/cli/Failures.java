package lozengy.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.cli.report.PlainText;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * Tells failures: one line for each mistake on standard error, and where {@code --json} is given
 * the same as an object on standard output.
 */
final class Failures implements IParameterExceptionHandler, IExecutionExceptionHandler {

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

  /**
   * Tells a failure.
   *
   * @param json whether it is wanted on standard output too
   * @return the exit code
   */
  int tell(Throwable failure, boolean json) {
    ExitCode code = ExitCode.of(failure);
    Refusal refusal = refusal(failure);
    PrintWriter err = terminal.err();
    for (Mistake mistake : refusal.mistakes()) {
      err.println("lozengy: " + PlainText.oneLine(Refusal.words(refusal.place(), mistake)));
    }
    if (terminal.debug()) {
      failure.printStackTrace(err);
    }
    err.flush();
    if (json) {
      terminal.out().println(Json.text(object(code, refusal)));
      terminal.out().flush();
    }
    return code.code();
  }

  private static Refusal refusal(Throwable failure) {
    if (failure instanceof Refusal refusal) {
      return refusal;
    }
    if (failure instanceof InputException input) {
      return Refusal.of("", input);
    }
    if (failure instanceof OutOfMemoryError) {
      return Refusal.of(
          "",
          "The memory does not suffice",
          "Plan a smaller blanket, or give Java more with JDK_JAVA_OPTIONS=-Xmx8g");
    }
    return Refusal.of(
        "",
        "This is a fault of the program, " + failure + where(failure),
        "Please report this line with the command and its input; LOZENGY_DEBUG=1 shows more");
  }

  private static String where(Throwable failure) {
    StackTraceElement[] trace = failure.getStackTrace();
    return trace.length == 0 ? "" : " at " + trace[0];
  }

  private static Map<String, Object> object(ExitCode code, Refusal refusal) {
    List<Map<String, Object>> mistakes =
        refusal.mistakes().stream()
            .map(
                each ->
                    Json.object(
                        "path", Optional.of(each.path()).filter(path -> !path.isEmpty()),
                        "line", Optional.of(each.line()).filter(line -> line > 0),
                        "found", each.found(),
                        "remedy", each.remedy()))
            .toList();
    Optional<String> place = Optional.of(refusal.place()).filter(text -> !text.isEmpty());
    return Json.object(
        "error", Json.object("exit", code.code(), "place", place, "mistakes", mistakes));
  }
}
