package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The worst seed beside the best of each brief, and how many seeds found nothing. */
final class SeedsTable {

  private SeedsTable() {}

  static String of(Results results) {
    Map<String, List<Map<String, String>>> briefs = new LinkedHashMap<>();
    results
        .rows()
        .forEach(row -> briefs.computeIfAbsent(row.get("brief"), k -> new ArrayList<>()).add(row));
    MarkdownTable table =
        new MarkdownTable(
            List.of(
                "brief",
                "pieces",
                "borders",
                "slack",
                "seeds",
                "none found",
                "worst seed",
                "median",
                "best seed",
                "best - worst",
                "bound"));
    briefs.forEach((name, rows) -> table.row(cells(name, rows)));
    return table.text();
  }

  private static List<String> cells(String name, List<Map<String, String>> rows) {
    List<Double> scores =
        rows.stream()
            .filter(row -> row.get("valid").equals("yes"))
            .map(row -> Double.parseDouble(row.get("score")))
            .sorted()
            .toList();
    List<String> bounds =
        rows.stream().map(row -> row.get("bound")).filter(cell -> !cell.isEmpty()).toList();
    int none = rows.size() - scores.size();
    boolean all = none == 0;
    Map<String, String> first = rows.get(0);
    double bound = bounds.stream().mapToDouble(Double::parseDouble).min().orElse(Double.NaN);
    return List.of(
        name,
        first.get("pieces"),
        first.get("border_yarns"),
        Figures.plain(Double.parseDouble(first.get("slack_percent"))) + " %",
        Integer.toString(rows.size()),
        Integer.toString(none),
        all ? Figures.number(scores.get(0), 2) : Figures.NONE,
        Figures.medianOf(scores, rows.size(), 2),
        scores.isEmpty() ? Figures.NONE : Figures.number(scores.get(scores.size() - 1), 2),
        all ? Figures.number(scores.get(scores.size() - 1) - scores.get(0), 2) : Figures.NONE,
        bounds.isEmpty() ? Figures.NONE : Figures.number(bound, 2));
  }
}
