package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The table of growth: each stage's median seconds by the number of pieces, and by what they are
 * multiplied for ten times as many pieces; 10 is proportional growth, 100 quadratic.
 */
final class GrowthTable {

  private static final String TRIED = "climb";
  private static final String REACHED = "reached";

  private final Map<String, Integer> pieces = new LinkedHashMap<>();
  private final Set<String> stages = new LinkedHashSet<>();
  private final Map<List<String>, List<Map<String, String>>> rows = new LinkedHashMap<>();

  private GrowthTable(Results results) {
    for (Map<String, String> row : results.rows()) {
      pieces.put(row.get("brief"), Integer.valueOf(row.get("pieces")));
      stages.add(row.get("stage"));
      rows.computeIfAbsent(List.of(row.get("stage"), row.get("brief")), key -> new ArrayList<>())
          .add(row);
    }
    stages.remove(TRIED);
  }

  static String of(Results results) {
    return new GrowthTable(results).text();
  }

  private String text() {
    List<String> briefs = List.copyOf(pieces.keySet());
    List<String> headings = new ArrayList<>(List.of("median s"));
    briefs.forEach(brief -> headings.add(pieces.get(brief) + " pieces"));
    for (int i = 1; i < briefs.size(); i++) {
      headings.add("tenfold, to " + pieces.get(briefs.get(i)));
    }
    MarkdownTable table = new MarkdownTable(headings);
    for (String stage : stages) {
      List<String> cells = new ArrayList<>(List.of(stage));
      briefs.forEach(brief -> cells.add(shown(median(stage, brief, "seconds"), 3)));
      for (int i = 1; i < briefs.size(); i++) {
        cells.add(shown(tenfold(stage, briefs.get(i - 1), briefs.get(i)), 1));
      }
      table.row(cells);
    }
    if (stages.contains(REACHED)) {
      List<String> cells = new ArrayList<>(List.of("score " + REACHED));
      briefs.forEach(brief -> cells.add(shown(median(REACHED, brief, "score"), 2)));
      briefs.stream().skip(1).forEach(brief -> cells.add(""));
      table.row(cells);
    }
    return table.text();
  }

  private static String shown(double value, int decimals) {
    return Double.isNaN(value) ? Figures.NONE : Figures.number(value, decimals);
  }

  /** NaN where there is none. */
  private double median(String stage, String brief, String column) {
    List<Double> values =
        rows.getOrDefault(List.of(stage, brief), List.of()).stream()
            .map(row -> row.get(column))
            .filter(cell -> !cell.isEmpty())
            .map(Double::parseDouble)
            .toList();
    return values.isEmpty() ? Double.NaN : Figures.median(values);
  }

  private double tenfold(String stage, String from, String to) {
    double decades = Math.log10((double) pieces.get(to) / pieces.get(from));
    double ratio = median(stage, to, "seconds") / median(stage, from, "seconds");
    return Double.isInfinite(ratio) ? Double.NaN : Math.pow(ratio, 1 / decades);
  }
}
