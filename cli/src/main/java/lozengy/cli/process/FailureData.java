package lozengy.cli.process;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.report.Json;

/** Puts failures as programs read them. */
public final class FailureData {

  private FailureData() {}

  /** The mistakes of a failure, in words for its user. */
  public static Refusal refusal(Throwable failure) {
    if (failure instanceof Refusal refusal) {
      return refusal;
    }
    if (failure instanceof InputException input) {
      return Refusal.of("", input);
    }
    if (failure instanceof OutOfMemoryError) {
      return Refusal.of(
          "",
          MistakeCode.OUT_OF_MEMORY.about(),
          "The memory does not suffice",
          "Plan a smaller blanket, or give Java more with JDK_JAVA_OPTIONS=-Xmx8g");
    }
    return Refusal.of(
        "",
        MistakeCode.PROGRAM_FAULT.about(failure),
        "This is a fault of the program, " + failure + where(failure),
        "Please report this line with the command and its input; LOZENGY_DEBUG=1 shows more");
  }

  private static String where(Throwable failure) {
    StackTraceElement[] trace = failure.getStackTrace();
    return trace.length == 0 ? "" : " at " + trace[0];
  }

  /** The failure as an object: exit code, place and mistakes. */
  public static Map<String, Object> of(Throwable failure) {
    Refusal refusal = refusal(failure);
    List<Map<String, Object>> mistakes =
        refusal.mistakes().stream()
            .map(
                each ->
                    Json.object(
                        "path", Optional.of(each.path().toString()).filter(path -> !path.isEmpty()),
                        "line", Optional.of(each.line()).filter(line -> line > 0),
                        "code", each.sort().code().word(),
                        "data",
                            Optional.of(new TreeMap<>(each.sort().data()))
                                .filter(data -> !data.isEmpty()),
                        "found", each.found(),
                        "remedy", each.remedy()))
            .toList();
    Optional<String> place = Optional.of(refusal.place()).filter(text -> !text.isEmpty());
    int exit = ExitCode.of(failure).code();
    return Json.object("exit", exit, "place", place, "mistakes", mistakes);
  }
}
