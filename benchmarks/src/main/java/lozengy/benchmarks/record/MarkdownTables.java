package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The tables that documents show, made from raw results. */
public final class MarkdownTables {

  private static final String BEGIN = "<!-- tables -->\n";
  private static final String END = "<!-- /tables -->";

  private MarkdownTables() {}

  /**
   * The tables of a results file, below a line that says where they come from.
   *
   * @param name the file's name
   * @param results what it holds
   * @throws IllegalArgumentException if it is of no kind that is known
   */
  public static String of(String name, Results results) {
    Map<String, String> about = results.about();
    String source =
        "From [%s](results/%s): `%s`%s, %s; Lozengy %s; OR-Tools %s, Choco %s; %s; %s, %s cores, %s.\n\n"
            .formatted(
                name,
                name,
                about.get("command"),
                results.parts() > 1 ? " (in " + results.parts() + " parts)" : "",
                about.get("date"),
                about.get("lozengy"),
                about.get("or-tools"),
                about.get("choco"),
                about.get("java"),
                about.get("processor"),
                about.get("cores"),
                about.get("memory"));
    if (results.rows().isEmpty()) {
      return source + "No rows.\n\n";
    }
    Set<String> columns = results.rows().get(0).keySet();
    String tables;
    if (columns.contains("event")) {
      tables = WholeTables.of(results);
    } else if (columns.contains("worked_altered")) {
      tables = midwork(results);
    } else if (columns.contains("what")) {
      tables = cold(results);
    } else if (columns.contains("stage")) {
      tables = GrowthTable.of(results);
    } else if (columns.contains("benchmark")
        || columns.contains("workers")
        || columns.contains("gain")) {
      tables = asItIs(results);
    } else if (columns.contains("walkers")) {
      tables = WalkersTable.of(results);
    } else if (columns.contains("of_seed")) {
      tables = SeedsTable.of(results);
    } else if (columns.contains("look")) {
      tables = LooksTable.of(results);
    } else {
      throw new IllegalArgumentException(
          name + " has columns that no table is made of: " + columns);
    }
    return source + tables + "\n";
  }

  /**
   * A document with other tables between its marks.
   *
   * @throws IllegalArgumentException if it has not the two marks, in order
   */
  public static String replace(String document, String tables) {
    int begin = document.indexOf(BEGIN);
    int end = document.indexOf(END);
    if (begin < 0 || end < begin) {
      throw new IllegalArgumentException("the document has no lines " + BEGIN.strip() + ", " + END);
    }
    return document.substring(0, begin + BEGIN.length()) + "\n" + tables + document.substring(end);
  }

  private static String cold(Results results) {
    Map<List<String>, List<Map<String, String>>> groups = new LinkedHashMap<>();
    for (Map<String, String> row : results.rows()) {
      List<String> key = List.of(row.get("what"), row.get("brief"), row.get("limit_s"));
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
    }
    MarkdownTable table =
        new MarkdownTable(
            List.of(
                "process",
                "brief",
                "limit, s",
                "runs",
                "median s",
                "last s",
                "to hello",
                "median score"));
    double hello =
        groups.entrySet().stream()
            .filter(group -> group.getKey().get(0).equals("hello"))
            .mapToDouble(group -> Figures.median(numbers(group.getValue(), "seconds")))
            .findFirst()
            .orElse(Double.NaN);
    groups.forEach(
        (key, rows) -> {
          List<Double> seconds = numbers(rows, "seconds");
          List<Double> scores =
              numbers(
                  rows.stream().filter(row -> row.get("valid").equals("yes")).toList(), "score");
          table.row(
              List.of(
                  key.get(0),
                  key.get(1),
                  key.get(2),
                  Integer.toString(rows.size()),
                  Figures.number(Figures.median(seconds), 3),
                  Figures.number(seconds.stream().max(Double::compare).orElseThrow(), 3),
                  Double.isNaN(hello)
                      ? Figures.NONE
                      : Figures.number(Figures.median(seconds) / hello, 2),
                  key.get(0).equals("solve") ? Figures.medianOf(scores, rows.size(), 2) : ""));
        });
    return table.text();
  }

  private static String midwork(Results results) {
    Map<String, List<Map<String, String>>> groups = new LinkedHashMap<>();
    results
        .rows()
        .forEach(row -> groups.computeIfAbsent(row.get("what"), k -> new ArrayList<>()).add(row));
    MarkdownTable table =
        new MarkdownTable(
            List.of(
                "solve",
                "limit, s",
                "runs",
                "valid",
                "worked pieces altered",
                "free rounds",
                "changed, least to most",
                "median score"));
    groups.forEach(
        (what, rows) -> {
          List<Double> changed = numbers(rows, "rounds_changed");
          table.row(
              List.of(
                  what,
                  rows.get(0).get("limit_s"),
                  Integer.toString(rows.size()),
                  Long.toString(
                      rows.stream().filter(row -> row.get("valid").equals("yes")).count()),
                  range(numbers(rows, "worked_altered")),
                  range(numbers(rows, "rounds_free")),
                  range(changed),
                  Figures.medianOf(numbers(rows, "score"), rows.size(), 2)));
        });
    return table.text();
  }

  private static String range(List<Double> values) {
    if (values.isEmpty()) {
      return Figures.NONE;
    }
    String least = Figures.plain(Collections.min(values));
    String most = Figures.plain(Collections.max(values));
    return least.equals(most) ? least : least + " to " + most;
  }

  private static String asItIs(Results results) {
    List<String> columns = List.copyOf(results.rows().get(0).keySet());
    MarkdownTable table = new MarkdownTable(columns);
    for (Map<String, String> row : results.rows()) {
      table.row(columns.stream().map(row::get).toList());
    }
    return table.text();
  }

  private static List<Double> numbers(List<Map<String, String>> rows, String column) {
    return rows.stream()
        .map(row -> row.get(column))
        .filter(cell -> !cell.isEmpty())
        .map(Double::parseDouble)
        .toList();
  }
}
