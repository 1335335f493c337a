package lozengy.benchmarks;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.card.ScoreCard;
import lozengy.model.check.Check;
import lozengy.model.making.WorkOrder;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.model.score.WeakSpots;
import lozengy.report.GraphMl;
import lozengy.report.Summary;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.page.Page;
import lozengy.report.print.Booklet;
import lozengy.report.print.Paper;
import lozengy.report.tables.Tables;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.Bounds;
import lozengy.solver.problem.ProblemCompiler;

/**
 * All that a command does but search, a stage at a time, on the arrangement that a brief was
 * planted with: from the brief's file to the arrangement's and every report.
 */
final class Stages {

  /** What stands behind the name of a stage that the heap did not suffice for. */
  private static final String NO_MEMORY = " (out of memory)";

  /** Pieces up to which the booklet is made: it has a card for every piece. */
  private static final int MOST_FOR_BOOKLET = 2_000;

  private final Path folder;
  private final boolean booklet;
  private final BiConsumer<String, Double> told;

  /**
   * Makes it.
   *
   * @param folder for its files
   * @param booklet whether to make the booklet too, which takes longer than all else together
   * @param told takes each stage's name and its seconds; where the heap did not suffice, the name
   *     says so
   */
  Stages(Path folder, boolean booklet, BiConsumer<String, Double> told) {
    this.folder = folder;
    this.booklet = booklet;
    this.told = told;
  }

  /** Runs all stages once. */
  void run(PlantedBrief made) throws IOException {
    Path file = DumpBriefs.write(folder, made);
    Brief brief = stage("read", () -> BriefReader.read(file));
    Files.delete(file);
    Blanket blanket = stage("make-ready", () -> Blanket.of(brief));
    Sequences sequences = made.planted();
    stage("compile", () -> ProblemCompiler.compile(blanket, Optional.empty()));
    stage("bound", () -> Bounds.of(blanket, new BoundLimits(0), () -> false));
    boolean valid = stage("check", () -> Check.faults(blanket, sequences)).isEmpty();
    if (!valid) {
      throw new IllegalStateException(
          "the planted arrangement of " + brief.title() + " has faults");
    }
    Score score = stage("score", () -> Scorer.score(blanket, sequences, Optional.empty()));
    Arrangement arrangement =
        new Arrangement(
            blanket, sequences, Optional.empty(), score, Optional.empty(), Optional.empty());
    writeAndRead(arrangement);
    stage("weak spots", () -> WeakSpots.of(blanket, sequences, 10));
    reports(arrangement).forEach(this::stage);
    if (booklet && blanket.pieceCount() <= MOST_FOR_BOOKLET) {
      stage("booklet", () -> Booklet.pdf(arrangement, Paper.A4, WorkOrder.BALL, Optional.empty()));
    }
  }

  private void writeAndRead(Arrangement arrangement) throws IOException {
    Path file = folder.resolve("arrangement.json");
    stage(
        "write",
        () -> {
          try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            ArrangementWriter.write(out, arrangement);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
          return file;
        });
    Sequences read = stage("read back", () -> ArrangementReader.read(file).sequences());
    Files.delete(file);
    if (!arrangement.sequences().equals(read)) {
      throw new IllegalStateException("what was written reads back otherwise");
    }
  }

  private static Map<String, Supplier<Object>> reports(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Map<String, Supplier<Object>> reports = new LinkedHashMap<>();
    reports.put("summary", () -> Summary.text(arrangement, Optional.empty()));
    reports.put(
        "score card", () -> ScoreCard.of(blanket, arrangement.sequences(), Optional.empty()));
    reports.put("chart", () -> Chart.svg(arrangement, ChartOptions.PLAIN));
    reports.put("page", () -> Page.html(arrangement, "FILE"));
    reports.put("tables", () -> Tables.files(arrangement));
    reports.put("graphml", () -> GraphMl.text(arrangement));
    return reports;
  }

  /** Times a stage; one that the heap does not suffice for is told so, and brings nothing. */
  private <T> T stage(String name, Supplier<T> work) {
    System.gc();
    Stopwatch watch = new Stopwatch();
    try {
      T result = work.get();
      told.accept(name, watch.seconds());
      return result;
    } catch (OutOfMemoryError e) {
      told.accept(name + NO_MEMORY, watch.seconds());
      return null;
    }
  }
}
