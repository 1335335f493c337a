package lozengy.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import lozengy.benchmarks.record.Environment;
import lozengy.benchmarks.record.Results;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where results go: the option that says it, and how numbers are written. */
final class Output {

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

  @Option(
      names = {"-o", "--output"},
      description = "Results file; by default one in benchmarks/results, named by what and when.")
  private Path file;

  @Option(
      names = "--append",
      description =
          "Go on with this results file. It must come from the same commit, versions and machine.")
  private Path earlier;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /** What the file to go on with holds; nothing where a new one is to be begun. */
  List<Map<String, String>> rowsBefore() {
    return earlier == null || !Files.exists(earlier) ? List.of() : Results.read(earlier).rows();
  }

  /**
   * Begins the file of a command, named in its first line, or goes on with an earlier one, and
   * tells where it is.
   */
  Results.Writer open(List<String> columns) {
    Path named = earlier != null ? earlier : file;
    Path target =
        named != null
            ? named
            : Path.of("benchmarks", "results", what() + "-" + STAMP.format(Instant.now()) + ".csv");
    List<String> arguments =
        command.commandLine().getParent() == null
            ? List.of()
            : command.commandLine().getParent().getParseResult().originalArgs();
    Map<String, String> about =
        Environment.describe("benchmarks/run " + String.join(" ", arguments));
    System.out.println("writing " + target);
    if (earlier != null && Files.exists(earlier)) {
      return Results.Writer.append(earlier, about, columns);
    }
    return new Results.Writer(target, about, columns);
  }

  private String what() {
    return command.name();
  }

  /** Seconds to the millisecond. */
  static String seconds(double seconds) {
    return String.format(Locale.ROOT, "%.3f", seconds);
  }

  /** Points of a score to the ten-thousandth. */
  static String points(double points) {
    return String.format(Locale.ROOT, "%.4f", points);
  }

  /** The same; empty where there are none. */
  static String points(OptionalDouble points) {
    return points.isPresent() ? points(points.getAsDouble()) : "";
  }
}
