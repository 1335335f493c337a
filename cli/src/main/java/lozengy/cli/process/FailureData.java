package lozengy.cli.process;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.report.Json;
import lozengy.solver.TooLargeException;

/** Puts failures as programs read them. */
public final class FailureData {

  private static final double BYTES_PER_GB = 1 << 30;

  private FailureData() {}

  /** The mistakes of a failure, in words for its user. */
  public static Refusal refusal(Throwable failure) {
    if (failure instanceof Refusal refusal) {
      return refusal;
    }
    if (failure instanceof InputException input) {
      return Refusal.of("", input);
    }
    if (failure instanceof TooLargeException large) {
      return tooLarge(large);
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

  private static Refusal tooLarge(TooLargeException large) {
    double needed = Math.ceil(large.neededBytes() / BYTES_PER_GB * 10) / 10;
    return Refusal.of(
        "",
        MistakeCode.TOO_LARGE.about("bytes", large.availableBytes(), large.neededBytes()),
        String.format(
            Locale.ROOT,
            "%,d rounds in %,d yarns need about %.1f GB of memory to be planned, and Java may use %.1f",
            large.rounds(),
            large.yarns(),
            needed,
            large.availableBytes() / BYTES_PER_GB),
        "Plan in parts, leave out yarns that are not wanted, or give Java more with JDK_JAVA_OPTIONS=-Xmx"
            + (int) Math.ceil(needed)
            + "g");
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
