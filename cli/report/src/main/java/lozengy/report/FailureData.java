package lozengy.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.solver.TooLargeException;

/** Puts failures as people and programs read them. */
public final class FailureData {

  /** The exit code where the program is at fault. */
  public static final int PROGRAM_FAULT = 1;

  /** The exit code where the input is wrong. */
  public static final int WRONG_INPUT = 2;

  private static final double BYTES_PER_GB = 1 << 30;

  private FailureData() {}

  /** The exit code of a failure. */
  public static int exit(Throwable failure) {
    return failure instanceof InputException || failure instanceof TooLargeException
        ? WRONG_INPUT
        : PROGRAM_FAULT;
  }

  /** The mistakes of a failure, in words for its user. */
  public static List<Mistake> mistakes(Throwable failure) {
    if (failure instanceof InputException input) {
      return input.mistakes();
    }
    if (failure instanceof TooLargeException large) {
      return List.of(tooLarge(large));
    }
    if (failure instanceof OutOfMemoryError) {
      return List.of(
          Mistake.ofWhole(
              MistakeCode.OUT_OF_MEMORY.about(),
              "The memory does not suffice",
              "Plan a smaller blanket, or give Java more with JDK_JAVA_OPTIONS=-Xmx8g"));
    }
    return List.of(
        Mistake.ofWhole(
            MistakeCode.PROGRAM_FAULT.about(failure),
            "This is a fault of the program, " + failure + where(failure),
            "Please report this line with the command and its input; LOZENGY_DEBUG=1 shows more"));
  }

  private static Mistake tooLarge(TooLargeException large) {
    double needed = Math.ceil(large.neededBytes() / BYTES_PER_GB * 10) / 10;
    return Mistake.ofWhole(
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

  /** A failure as an object. */
  public static Map<String, Object> of(Throwable failure) {
    return of(exit(failure), "", mistakes(failure));
  }

  /**
   * A failure as an object.
   *
   * @param exit the exit code
   * @param place the file or option concerned; empty for the whole
   * @param mistakes what is wrong
   */
  public static Map<String, Object> of(int exit, String place, List<Mistake> mistakes) {
    return Json.object(
        "exit",
        exit,
        "place",
        Optional.of(place).filter(text -> !text.isEmpty()),
        "mistakes",
        mistakes.stream().map(FailureData::mistake).toList());
  }

  private static Map<String, Object> mistake(Mistake mistake) {
    return Json.object(
        "path", Optional.of(mistake.path().toString()).filter(path -> !path.isEmpty()),
        "line", Optional.of(mistake.line()).filter(line -> line > 0),
        "code", mistake.sort().code().word(),
        "data", Optional.of(new TreeMap<>(mistake.sort().data())).filter(data -> !data.isEmpty()),
        "found", mistake.found(),
        "remedy", mistake.remedy());
  }
}
