package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Moves a second with looks, beside the plain brief's and beside what a move has to touch. */
final class LooksTable {

  private LooksTable() {}

  static String of(Results results) {
    Map<List<String>, List<Map<String, String>>> groups = new LinkedHashMap<>();
    for (Map<String, String> row : results.rows()) {
      groups
          .computeIfAbsent(
              List.of(row.get("temperature"), row.get("look")), key -> new ArrayList<>())
          .add(row);
    }
    MarkdownTable table =
        new MarkdownTable(
            List.of(
                "look",
                "temperature",
                "runs",
                "free rounds",
                "pairs a round",
                "median moves/s",
                "worst",
                "time a move, to plain",
                "pairs, to plain"));
    Map<String, List<Map<String, String>>> plain = new LinkedHashMap<>();
    groups.forEach((key, rows) -> plain.putIfAbsent(key.get(0), rows));
    groups.forEach(
        (key, rows) -> {
          List<Map<String, String>> base = plain.get(key.get(0));
          double speed = median(rows, "moves_per_s");
          double pairs = median(rows, "pairs_per_round");
          table.row(
              List.of(
                  key.get(1),
                  key.get(0),
                  Integer.toString(rows.size()),
                  rows.get(0).get("free_rounds"),
                  Figures.number(pairs, 2),
                  Figures.number(speed, 0),
                  Figures.number(
                      rows.stream()
                          .mapToDouble(row -> Double.parseDouble(row.get("moves_per_s")))
                          .min()
                          .orElseThrow(),
                      0),
                  Figures.number(median(base, "moves_per_s") / speed, 2),
                  Figures.number(pairs / median(base, "pairs_per_round"), 2)));
        });
    return table.text();
  }

  private static double median(List<Map<String, String>> rows, String column) {
    return Figures.median(rows.stream().map(row -> Double.parseDouble(row.get(column))).toList());
  }
}
