package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Median scores by the number of walkers, at equal moves each and at equal moves in all, and the
 * processor's time of the most walkers: as it was, and what it leaves on as many cores as walkers,
 * worked out.
 */
final class WalkersTable {

  private WalkersTable() {}

  static String of(Results results) {
    List<String> walkers =
        results.rows().stream()
            .map(row -> row.get("walkers"))
            .distinct()
            .sorted(Comparator.comparingInt(Integer::parseInt))
            .toList();
    List<String> head = new ArrayList<>(List.of("brief", "pieces", "moves"));
    walkers.forEach(count -> head.add("score, " + count));
    String most = walkers.get(walkers.size() - 1);
    head.add("CPU s, " + walkers.get(0));
    head.add("CPU s, " + most);
    head.add("on 2 cores, s");
    head.add("on " + most + " cores, s");
    MarkdownTable table = new MarkdownTable(head);
    Map<String, List<Map<String, String>>> groups = new LinkedHashMap<>();
    for (Map<String, String> row : results.rows()) {
      String key = row.get("brief") + " " + row.get("shared");
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
    }
    groups.values().forEach(rows -> table.row(cells(rows, walkers)));
    return table.text();
  }

  private static List<String> cells(List<Map<String, String>> rows, List<String> walkers) {
    Map<String, String> first = rows.get(0);
    boolean shared = first.get("shared").equals("yes");
    long moves = Long.parseLong(first.get("moves"));
    long told = shared ? moves : moves / Long.parseLong(first.get("walkers"));
    List<String> cells = new ArrayList<>();
    cells.add(first.get("brief"));
    cells.add(first.get("pieces"));
    cells.add(Figures.plain(told / 1e6) + " million " + (shared ? "in all" : "each"));
    for (String count : walkers) {
      List<Map<String, String>> of = of(rows, count);
      List<Double> scores =
          of.stream()
              .filter(row -> row.get("valid").equals("yes"))
              .map(row -> Double.parseDouble(row.get("score")))
              .sorted()
              .toList();
      cells.add(Figures.medianOf(scores, of.size(), 2));
    }
    String most = walkers.get(walkers.size() - 1);
    double busy = busy(rows, most);
    cells.add(Figures.number(busy(rows, walkers.get(0)), 2));
    cells.add(Figures.number(busy, 2));
    cells.add(Figures.number(busy / 2, 2));
    cells.add(Figures.number(busy / Integer.parseInt(most), 2));
    return cells;
  }

  private static double busy(List<Map<String, String>> rows, String count) {
    return Figures.median(
        of(rows, count).stream()
            .map(row -> Double.parseDouble(row.get("cpu_s")))
            .sorted()
            .toList());
  }

  private static List<Map<String, String>> of(List<Map<String, String>> rows, String count) {
    return rows.stream().filter(row -> row.get("walkers").equals(count)).toList();
  }
}
