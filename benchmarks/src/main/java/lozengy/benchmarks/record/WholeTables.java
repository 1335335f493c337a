package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Tables of whole solves: the score by when, the first valid arrangement, and bounds. */
final class WholeTables {

  /** When the peers are looked at, in seconds, as far as their limit goes. */
  private static final List<Double> MARKS = List.of(0.3, 1.0, 3.0, 10.0, 60.0, 120.0);

  /** One run: its rows, in order. */
  private record Run(
      String brief, String solver, String seed, double limit, List<Map<String, String>> rows) {

    /** The best valid score by a time, or NaN. */
    double scoreBy(double seconds) {
      return rows.stream()
          .filter(row -> row.get("event").equals("found") && row.get("valid").equals("yes"))
          .filter(row -> Double.parseDouble(row.get("seconds")) <= seconds)
          .mapToDouble(row -> Double.parseDouble(row.get("score")))
          .max()
          .orElse(Double.NaN);
    }

    double firstValid() {
      return rows.stream()
          .filter(row -> row.get("event").equals("found") && row.get("valid").equals("yes"))
          .mapToDouble(row -> Double.parseDouble(row.get("seconds")))
          .min()
          .orElse(Double.NaN);
    }

    Map<String, String> end() {
      return rows.get(rows.size() - 1);
    }
  }

  private final List<Run> runs = new ArrayList<>();
  private final Map<String, Map<String, String>> briefs = new LinkedHashMap<>();

  private WholeTables(Results results) {
    Map<List<String>, Run> byKey = new LinkedHashMap<>();
    for (Map<String, String> row : results.rows()) {
      briefs.putIfAbsent(row.get("brief"), row);
      List<String> key =
          List.of(row.get("brief"), row.get("solver"), row.get("seed"), row.get("limit_s"));
      Run run =
          byKey.computeIfAbsent(
              key,
              k ->
                  new Run(
                      k.get(0),
                      k.get(1),
                      k.get(2),
                      Double.parseDouble(k.get(3)),
                      new ArrayList<>()));
      if (row.get("event").equals("stated")) {
        // begun once more, after it was cut short
        run.rows().clear();
      }
      run.rows().add(row);
    }
    runs.addAll(byKey.values());
  }

  static String of(Results results) {
    WholeTables tables = new WholeTables(results);
    return tables.scores() + "\n" + tables.first() + "\n" + tables.bounds();
  }

  private List<Run> runs(String brief, String solver) {
    return runs.stream()
        .filter(run -> run.brief().equals(brief) && run.solver().equals(solver))
        .toList();
  }

  private Set<String> solvers() {
    Set<String> solvers = new LinkedHashSet<>();
    runs.forEach(run -> solvers.add(run.solver()));
    return solvers;
  }

  private List<String> peers() {
    return solvers().stream().filter(solver -> !solver.startsWith("lozengy")).toList();
  }

  private Set<Double> limits(String solver) {
    Set<Double> limits = new TreeSet<>();
    runs.stream().filter(run -> run.solver().equals(solver)).forEach(r -> limits.add(r.limit()));
    return limits;
  }

  /** By when a peer is looked at: the marks that some of its runs lasted for. */
  private List<Double> marks(String peer) {
    double longest = limits(peer).stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return MARKS.stream().filter(mark -> mark <= longest).toList();
  }

  private String scores() {
    List<String> headings = new ArrayList<>(List.of("score by", "pieces", "borders", "slack"));
    limits("lozengy").forEach(limit -> headings.add("lozengy " + plain(limit) + " s"));
    for (String peer : peers()) {
      marks(peer).forEach(mark -> headings.add(peer + " " + plain(mark) + " s"));
    }
    MarkdownTable table = new MarkdownTable(headings);
    briefs.forEach(
        (brief, row) -> {
          List<String> cells = new ArrayList<>();
          cells.add(brief);
          cells.add(row.get("pieces"));
          cells.add(row.get("border_yarns"));
          cells.add(plain(Double.parseDouble(row.get("slack_percent"))) + " %");
          for (double limit : limits("lozengy")) {
            List<Run> ours =
                runs(brief, "lozengy").stream().filter(run -> run.limit() == limit).toList();
            cells.add(median(ours, Double.POSITIVE_INFINITY));
          }
          for (String peer : peers()) {
            marks(peer).forEach(mark -> cells.add(median(runs(brief, peer), mark)));
          }
          table.row(cells);
        });
    return table.text();
  }

  private static String median(List<Run> runs, double seconds) {
    List<Double> scores =
        runs.stream().map(run -> run.scoreBy(seconds)).filter(score -> !score.isNaN()).toList();
    return Figures.medianOf(scores, runs.size(), 2);
  }

  private String first() {
    List<String> with = new ArrayList<>();
    if (solvers().contains("lozengy-first")) {
      with.add("lozengy-first");
    }
    with.addAll(peers());
    List<String> headings = new ArrayList<>(List.of("first valid, s"));
    for (String solver : with) {
      headings.add(solver + " median");
      headings.add(solver + " last");
    }
    MarkdownTable table = new MarkdownTable(headings);
    for (String brief : briefs.keySet()) {
      List<String> cells = new ArrayList<>(List.of(brief));
      for (String solver : with) {
        List<Run> all = runs(brief, solver);
        List<Double> times =
            all.stream().map(Run::firstValid).filter(time -> !time.isNaN()).toList();
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
    List<String> with = new ArrayList<>(solvers());
    with.remove("lozengy-first");
    List<String> headings = new ArrayList<>(List.of("bound"));
    for (String solver : with) {
      headings.add(solver + " score");
      headings.add(solver + " bound");
      headings.add(solver + " proof");
    }
    MarkdownTable table = new MarkdownTable(headings);
    for (String brief : briefs.keySet()) {
      List<String> cells = new ArrayList<>(List.of(brief));
      for (String solver : with) {
        double longest = limits(solver).stream().mapToDouble(Double::doubleValue).max().orElse(0);
        List<Run> all = runs(brief, solver).stream().filter(run -> run.limit() == longest).toList();
        cells.add(median(all, Double.POSITIVE_INFINITY));
        List<Double> bounds =
            all.stream()
                .map(run -> run.end().get("bound"))
                .filter(bound -> !bound.isEmpty())
                .map(Double::parseDouble)
                .toList();
        cells.add(Figures.medianOf(bounds, all.size(), 2));
        Set<String> proofs = new LinkedHashSet<>();
        all.forEach(run -> proofs.add(run.end().get("proof")));
        cells.add(String.join(", ", proofs));
      }
      table.row(cells);
    }
    return table.text();
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
