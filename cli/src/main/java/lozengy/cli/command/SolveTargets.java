package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lozengy.cli.file.FileNames;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.file.WholeFiles;
import lozengy.cli.process.Terminal;

/**
 * Where a solve's results go.
 *
 * @param arrangement the arrangement's file; empty for standard output
 * @param chart the chart's file, beside it; empty where there is no file to be beside
 * @param files what writes them
 */
record SolveTargets(Optional<Path> arrangement, Optional<Path> chart, WholeFiles files) {

  private static final String CHART_ENDING = ".svg";

  /**
   * The places for an input: those the user named, or else beside the input; what was solved from
   * an arrangement gets the next free number, so that both stay.
   *
   * @param files what has looked at the input before it was read
   */
  static SolveTargets of(
      OutputOptions output, Source source, boolean fromArrangement, WholeFiles files) {
    Optional<Path> arrangement =
        output
            .targetOr(
                () ->
                    source.isStandardInput()
                        ? Target.standardOutput()
                        : new Target(Optional.of(beside(source.path(), fromArrangement)), files))
            .file();
    return new SolveTargets(arrangement, chart(arrangement), files);
  }

  private static Path beside(Path input, boolean fromArrangement) {
    return fromArrangement ? next(input) : FileNames.arrangement(input);
  }

  private static Path next(Path arrangement) {
    return FileNames.next(arrangement, SolveTargets::chart);
  }

  private static Optional<Path> chart(Optional<Path> arrangement) {
    return arrangement.filter(SolveTargets::mayHaveNeighbour).map(SolveTargets::chart);
  }

  /** The next free name, for what cannot go where it was meant to. */
  SolveTargets elsewhere() {
    Optional<Path> free = arrangement.map(SolveTargets::next);
    return new SolveTargets(free, chart(free), new WholeFiles(false));
  }

  private static Path chart(Path arrangement) {
    return FileNames.beside(arrangement, CHART_ENDING);
  }

  /** A device or a pipe has no place beside it. */
  private static boolean mayHaveNeighbour(Path file) {
    return !Files.exists(file) || Files.isRegularFile(file);
  }

  /**
   * Refuses early what {@link #write} would refuse.
   *
   * @throws lozengy.cli.process.Refusal if a file is there and may not be replaced, or cannot be
   *     written
   */
  void expect() {
    arrangement.ifPresent(files::expect);
    chart.ifPresent(files::expect);
  }

  /** Whether the arrangement goes to standard output, which then holds nothing else. */
  boolean isStandardOutput() {
    return arrangement.isEmpty();
  }

  /**
   * Writes the results: the files both or neither, as far as can be foreseen.
   *
   * @throws lozengy.cli.process.Overtaken if another has changed one since it was expected
   * @throws lozengy.cli.process.Refusal if one cannot be written
   */
  void write(Terminal terminal, byte[] answer, Supplier<String> drawing) {
    if (arrangement.isEmpty()) {
      terminal.write(answer);
      return;
    }
    Map<Path, byte[]> contents = new LinkedHashMap<>();
    contents.put(arrangement.get(), answer);
    chart.ifPresent(file -> contents.put(file, drawing.get().getBytes(StandardCharsets.UTF_8)));
    files.write(contents);
  }
}
