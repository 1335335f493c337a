package lozengy.cli.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import lozengy.cli.Json;
import lozengy.cli.report.TextTable;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.check.Check;
import lozengy.model.score.Part;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * One of several arrangements that are set side by side.
 *
 * @param label what it is called
 * @param score its score, computed from scratch
 * @param faults how many faults it has
 * @param leastLeftMillimetres what is left of the yarn that comes out shortest, in mm; below 0 if
 *     it runs out
 */
record Compared(String label, Score score, int faults, long leastLeftMillimetres) {

  private static final int WIDEST_LABEL = 40;
  private static final int JSON_DECIMALS = 6;

  /** Judges an arrangement from scratch. */
  static Compared of(String label, Arrangement arrangement) {
    long[] used = arrangement.blanket().usedMillimetres(arrangement.sequences());
    long least = Long.MAX_VALUE;
    for (int yarn = 0; yarn < used.length; yarn++) {
      least = Math.min(least, arrangement.blanket().stockMillimetres(yarn) - used[yarn]);
    }
    return new Compared(
        label,
        Scorer.score(arrangement.blanket(), arrangement.sequences(), arrangement.earlier()),
        Check.faults(arrangement.blanket(), arrangement.sequences()).size(),
        least);
  }

  /** A table with a column for each arrangement. */
  static List<String> lines(List<Compared> compared) {
    TextTable table = new TextTable(1, WIDEST_LABEL);
    row(table, "", compared, Compared::label);
    row(table, "total", compared, each -> figure(each.score.total()));
    for (Part part : Part.values()) {
      if (compared.stream().anyMatch(each -> each.score.parts().containsKey(part))) {
        row(table, part.word(), compared, each -> figure(each.score.parts().get(part)));
      }
    }
    row(
        table,
        "least left, m",
        compared,
        each -> String.format(Locale.ROOT, "%.1f", each.leastLeftMillimetres / 1000.0));
    row(table, "faults", compared, each -> Integer.toString(each.faults));
    return table.lines();
  }

  /** The same for programs. */
  static Map<String, Object> json(List<Compared> compared) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (Compared each : compared) {
      Map<String, Object> parts = new LinkedHashMap<>();
      Arrays.stream(Part.values())
          .filter(each.score.parts()::containsKey)
          .forEach(part -> parts.put(part.word(), decimal(each.score.parts().get(part))));
      all.add(
          Json.object(
              "file",
              each.label,
              "total",
              decimal(each.score.total()),
              "parts",
              parts,
              "least_left_m",
              BigDecimal.valueOf(each.leastLeftMillimetres, 3),
              "faults",
              each.faults));
    }
    return Json.object("arrangements", all);
  }

  private static void row(
      TextTable table, String name, List<Compared> compared, Function<Compared, String> cell) {
    List<String> cells = new ArrayList<>();
    cells.add(name);
    compared.forEach(each -> cells.add(cell.apply(each)));
    table.row(cells.toArray(String[]::new));
  }

  private static String figure(Double value) {
    return value == null ? "-" : String.format(Locale.ROOT, "%.2f", value);
  }

  private static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value).setScale(JSON_DECIMALS, RoundingMode.HALF_UP);
  }
}
