package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.cli.file.FileNames;
import lozengy.cli.process.Overtaken;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.solve.SolveText;
import lozengy.solver.alternatives.Alternatives;

/**
 * Where the arrangements of a solve go: the first where a single one would, the others beside it
 * with a number in their names, each with its chart.
 *
 * @param first where the first goes
 * @param count how many are wanted, at least 1
 * @param withinPoints how far below the best each total may be
 */
record AlternativeFiles(SolveTargets first, int count, double withinPoints) {

  private static final int MOST = 100;
  private static final double WITHIN_POINTS = 1;

  /**
   * The places.
   *
   * @param count null if not said
   * @param within null if not said
   * @throws Refusal if a number is out of its range, or several would go to standard output
   */
  static AlternativeFiles of(SolveTargets first, Integer count, Double within) {
    List<Mistake> mistakes = new ArrayList<>();
    if (count != null && (count < 1 || count > MOST)) {
      mistakes.add(
          Mistake.ofWish(
              "--count",
              MistakeCode.OUT_OF_RANGE.about(count, 1, MOST),
              count.toString(),
              "Give a whole number from 1 to " + MOST));
    }
    if (within != null && !(within >= 0 && within <= 100)) {
      mistakes.add(
          Mistake.ofWish(
              "--within",
              MistakeCode.OUT_OF_RANGE.about(within, 0, 100),
              within.toString(),
              "Give a number of points from 0 to 100"));
    }
    if (within != null && count == null) {
      mistakes.add(
          Mistake.ofWish(
              "--within",
              MistakeCode.OPTION_MISSING.about("--count"),
              "It stands without --count",
              "Add --count N, or leave --within out"));
    }
    if (count != null && count > 1 && first.arrangement().isEmpty()) {
      mistakes.add(
          Mistake.ofWish(
              "--count",
              MistakeCode.OPTION_MISSING.about("-o"),
              "Several arrangements for standard output",
              "Name a file with -o"));
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    return new AlternativeFiles(
        first, count == null ? 1 : count, within == null ? WITHIN_POINTS : within);
  }

  /** The file of an arrangement, counted from 0. */
  Path file(int index) {
    Path named = first.arrangement().orElseThrow();
    return index == 0 ? named : FileNames.alternative(named, index + 1);
  }

  private Path chart(int index) {
    return FileNames.beside(file(index), ".svg");
  }

  /**
   * Refuses early what {@link #write} would refuse.
   *
   * @throws Refusal if a file is there and may not be replaced, or cannot be written
   */
  void expect() {
    first.expect();
    for (int i = 1; i < count; i++) {
      first.files().expect(file(i));
      first.files().expect(chart(i));
    }
  }

  /**
   * Writes what was found. What cannot go where it was meant to, because another has changed a file
   * there in the meantime, goes to the next free names instead.
   *
   * @throws Refusal if a file cannot be written; also where it went elsewhere, which it tells
   */
  void write(Terminal terminal, Optional<Alternatives> found, Arrangement best) {
    List<Arrangement> all = found.map(Alternatives::found).orElse(List.of(best));
    try {
      first.write(terminal, text(best), () -> chart(best));
      Map<Path, byte[]> contents = new LinkedHashMap<>();
      for (int i = 1; i < all.size(); i++) {
        contents.put(file(i), text(all.get(i)));
        contents.put(chart(i), chart(all.get(i)).getBytes(StandardCharsets.UTF_8));
      }
      first.files().write(contents);
    } catch (Overtaken e) {
      List<String> written = all.stream().map(each -> writeElsewhere(terminal, each)).toList();
      throw Refusal.of(
          e.place(),
          MistakeCode.OVERTAKEN.about(e.place()),
          "Another has changed it in the meantime, so it was left alone; what was found is in "
              + String.join(", ", written),
          "Look at both and keep one");
    }
  }

  private String writeElsewhere(Terminal terminal, Arrangement arrangement) {
    SolveTargets free = first.elsewhere();
    free.write(terminal, text(arrangement), () -> chart(arrangement));
    return free.arrangement().orElseThrow().toString();
  }

  /**
   * Where everything is now.
   *
   * @param found how many arrangements were found
   */
  SolveText.Files written(int found) {
    return new SolveText.Files(
        first.arrangement(),
        first.chart(),
        files(1, found).toList(),
        files(found, count).filter(Files::exists).toList());
  }

  private Stream<Path> files(int from, int to) {
    return IntStream.range(from, to).mapToObj(this::file);
  }

  private static String chart(Arrangement arrangement) {
    return Chart.svg(arrangement, ChartOptions.PLAIN);
  }

  private static byte[] text(Arrangement arrangement) {
    return ArrangementWriter.text(arrangement).getBytes(StandardCharsets.UTF_8);
  }
}
