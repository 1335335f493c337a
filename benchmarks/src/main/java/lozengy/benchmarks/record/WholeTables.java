package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lozengy.benchmarks.record.WholeRuns.Run;

/** Tables of whole solves: the score by when, the first valid arrangement, and bounds. */
final class WholeTables {

  /** When the peers are looked at, in seconds, as far as their limit goes. */
  private static final List<Double> MARKS = List.of(0.3, 1.0, 3.0, 10.0, 60.0, 120.0);

  private final WholeRuns runs;

  private WholeTables(WholeRuns runs) {
    this.runs = runs;
  }

  static String of(Results results) {
    WholeRuns runs = new WholeRuns(results);
    WholeTables tables = new WholeTables(runs);
    return TargetsTable.of(runs)
        + "\n"
        + tables.scores()
        + "\n"
        + tables.first()
        + "\n"
        + tables.bounds();
  }

  /** By when a peer is looked at: the marks that some of its runs lasted for. */
  private List<Double> marks(String peer) {
    return MARKS.stream().filter(mark -> mark <= runs.longest(peer)).toList();
  }

  private String scores() {
    List<String> headings = new ArrayList<>(List.of("score by", "pieces", "borders", "slack"));
    runs.limits("lozengy")
        .forEach(
            limit ->
                headings.addAll(
                    List.of(
                        "lozengy " + Figures.plain(limit) + " s",
                        "worst at " + Figures.plain(limit) + " s")));
    for (String peer : runs.peers()) {
      marks(peer).forEach(mark -> headings.add(peer + " " + Figures.plain(mark) + " s"));
    }
    MarkdownTable table = new MarkdownTable(headings);
    runs.briefs()
        .forEach(
            (brief, row) -> {
              List<String> cells = new ArrayList<>();
              cells.add(brief);
              cells.add(row.get("pieces"));
              cells.add(row.get("border_yarns"));
              cells.add(Figures.plain(Double.parseDouble(row.get("slack_percent"))) + " %");
              for (double limit : runs.limits("lozengy")) {
                List<Run> ours = runs.of(brief, "lozengy", limit);
                cells.add(median(ours, Double.POSITIVE_INFINITY));
                cells.add(worst(ours));
              }
              for (String peer : runs.peers()) {
                marks(peer).forEach(mark -> cells.add(median(runs.of(brief, peer), mark)));
              }
              table.row(cells);
            });
    return table.text();
  }

  private static String median(List<Run> runs, double seconds) {
    List<Double> scores =
        WholeRuns.present(runs.stream().map(run -> run.scoreBy(seconds)).toList());
    return Figures.medianOf(scores, runs.size(), 2);
  }

  /** The least of all runs' scores; none where one brought nothing valid. */
  private static String worst(List<Run> runs) {
    List<Double> scores = WholeRuns.present(runs.stream().map(Run::score).toList());
    return scores.isEmpty() || scores.size() < runs.size()
        ? Figures.NONE
        : Figures.number(Collections.min(scores), 2);
  }

  private String first() {
    List<String> with = new ArrayList<>();
    if (runs.solvers().contains("lozengy-first")) {
      with.add("lozengy-first");
    }
    with.addAll(runs.peers());
    List<String> headings = new ArrayList<>(List.of("first valid, s"));
    for (String solver : with) {
      headings.add(solver + " median");
      headings.add(solver + " last");
    }
    MarkdownTable table = new MarkdownTable(headings);
    for (String brief : runs.briefs().keySet()) {
      List<String> cells = new ArrayList<>(List.of(brief));
      for (String solver : with) {
        List<Run> all = runs.of(brief, solver);
        List<Double> times = WholeRuns.present(all.stream().map(Run::firstValid).toList());
        cells.add(Figures.medianOf(times, all.size(), 2));
        cells.add(
            times.stream()
                .max(Double::compare)
                .map(most -> Figures.number(most, 2))
                .orElse(Figures.NONE));
      }
      table.row(cells);
    }
    return table.text();
  }

  private String bounds() {
    List<String> with = new ArrayList<>(runs.solvers());
    with.remove("lozengy-first");
    List<String> headings = new ArrayList<>(List.of("bound"));
    for (String solver : with) {
      headings.add(solver + " score");
      headings.add(solver + " bound");
      headings.add(solver + " proof");
    }
    MarkdownTable table = new MarkdownTable(headings);
    for (String brief : runs.briefs().keySet()) {
      List<String> cells = new ArrayList<>(List.of(brief));
      for (String solver : with) {
        List<Run> all = runs.of(brief, solver, runs.longest(solver));
        cells.add(median(all, Double.POSITIVE_INFINITY));
        List<Double> bounds = WholeRuns.present(all.stream().map(Run::bound).toList());
        cells.add(Figures.medianOf(bounds, all.size(), 2));
        Set<String> proofs = new LinkedHashSet<>();
        all.forEach(run -> proofs.add(run.proof()));
        cells.add(String.join(", ", proofs));
      }
      table.row(cells);
    }
    return table.text();
  }
}
