package lozengy.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Score;
import lozengy.report.GraphMl;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.page.Page;
import lozengy.report.tables.Tables;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;

/**
 * Plans a cushion with the library alone: builds a brief in code, solves it with a budget and a
 * listener, checks and scores the answer, locks one border to another yarn, solves again close to
 * the first answer, compares the two, and writes the second for people and for other programs.
 */
public final class PlanInCode {

  private static final long SEED = 7;
  private static final long MOVES = 200_000;
  private static final String LOCKED_PIECE = "r3c2";

  private final PrintStream out;
  private double lastTold = Double.NEGATIVE_INFINITY;

  /**
   * Makes the program.
   *
   * @param out where it prints
   */
  public PlanInCode(PrintStream out) {
    this.out = out;
  }

  /**
   * Runs the program on standard output.
   *
   * @param args the folder to write to, if the answer is to be written
   */
  public static void main(String[] args) throws IOException {
    PlanInCode program = new PlanInCode(System.out);
    List<Arrangement> both = program.run();
    if (args.length > 0) {
      program.export(both.get(1), Path.of(args[0]));
    }
  }

  /**
   * Plans the cushion twice.
   *
   * @return the first arrangement and the one with the lock
   */
  public List<Arrangement> run() {
    Blanket blanket = Blanket.of(CushionBrief.with(List.of()));
    Arrangement first = solve(blanket, Optional.empty());
    tell("First", first);

    Blanket withLock = Blanket.of(CushionBrief.with(List.of(otherBorder(first))));
    Arrangement second = solve(withLock, Optional.of(first.sequences()));
    tell("With the lock", second);
    compare(first, second);
    return List.of(first, second);
  }

  /**
   * Writes an arrangement: as its own file, which every command reads; as a chart and a page to
   * look at; and as tables and a graph for other programs.
   *
   * @param arrangement the arrangement
   * @param folder a folder that is there
   * @throws IOException if a file cannot be written
   */
  public void export(Arrangement arrangement, Path folder) throws IOException {
    String file = "cushion.arrangement.json";
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put(file, utf8(ArrangementWriter.text(arrangement)));
    files.put("cushion.svg", utf8(Chart.svg(arrangement, ChartOptions.PLAIN)));
    files.put("cushion.html", utf8(Page.html(arrangement, file)));
    files.put("cushion.graphml", utf8(GraphMl.text(arrangement)));
    files.putAll(Tables.files(arrangement));
    for (Map.Entry<String, byte[]> each : files.entrySet()) {
      Files.write(folder.resolve(each.getKey()), each.getValue());
    }
    out.println("Wrote " + String.join(", ", files.keySet()));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Tells how many rounds differ, and how the parts of the score moved. */
  private void compare(Arrangement before, Arrangement after) {
    int changed = 0;
    int rounds = 0;
    for (int piece = 0; piece < after.sequences().pieces(); piece++) {
      int[] was = before.sequences().of(piece);
      int[] is = after.sequences().of(piece);
      rounds += is.length;
      for (int round = 0; round < is.length; round++) {
        changed += was[round] == is[round] ? 0 : 1;
      }
    }
    out.printf(Locale.ROOT, "Compared: %d of %d rounds changed%n", changed, rounds);
    for (Part part : Part.values()) {
      Double was = before.score().parts().get(part);
      Double is = after.score().parts().get(part);
      if (was != null && is != null) {
        out.printf(Locale.ROOT, "  %-9s %+.2f%n", part.word(), is - was);
      }
    }
  }

  private Arrangement solve(Blanket blanket, Optional<Sequences> earlier) {
    lastTold = Double.NEGATIVE_INFINITY;
    // A seed and a number of moves, and no time limit: the answer is the same on every machine.
    SolveOptions options =
        SolveOptions.defaults()
            .withSeed(SEED)
            .withMoves(MOVES)
            .withThreads(1)
            .withListener(progress -> tellIfBetter(progress.moves(), progress.score()));
    SolveResult result = Solver.solve(blanket, earlier, options);
    if (result instanceof SolveResult.Found found) {
      return found.arrangement();
    }
    throw new IllegalStateException("no arrangement: " + result);
  }

  private void tellIfBetter(long moves, double score) {
    if (score > lastTold) {
      lastTold = score;
      out.printf(Locale.ROOT, "  %,d moves: %.2f%n", moves, score);
    }
  }

  /** A lock that holds the middle square's border in another dark than it has. */
  private static PieceNote otherBorder(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    int piece = blanket.layout().find(LOCKED_PIECE).orElseThrow().index();
    int border = blanket.roundCount(piece) - 1;
    int now = arrangement.sequences().border(piece);
    int other =
        IntStream.range(0, blanket.yarnCount())
            .filter(
                yarn ->
                    blanket.motifs().toneAllows(blanket.kind(piece), border, yarn) && yarn != now)
            .findFirst()
            .orElseThrow();
    List<Optional<String>> rounds =
        IntStream.rangeClosed(0, border)
            .mapToObj(
                round ->
                    round == border
                        ? Optional.of(blanket.yarn(other).code())
                        : Optional.<String>empty())
            .toList();
    return new PieceNote(List.of(LOCKED_PIECE), rounds, PieceState.PLANNED, Set.of());
  }

  private void tell(String which, Arrangement arrangement) {
    List<Fault> faults = Check.faults(arrangement.blanket(), arrangement.sequences());
    Score score = arrangement.score();
    out.printf(Locale.ROOT, "%s: total %.2f, faults %d%n", which, score.total(), faults.size());
    score.parts().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            part ->
                out.printf(Locale.ROOT, "  %-9s %6.2f%n", part.getKey().word(), part.getValue()));
    int piece = arrangement.blanket().layout().find(LOCKED_PIECE).orElseThrow().index();
    String codes =
        IntStream.of(arrangement.sequences().of(piece))
            .mapToObj(yarn -> arrangement.blanket().yarn(yarn).code())
            .collect(Collectors.joining(" "));
    out.println("  " + LOCKED_PIECE + ": " + codes);
  }
}
