package lozengy.cli.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Part;
import lozengy.model.score.Score;
import lozengy.report.Figures;
import lozengy.report.Json;
import lozengy.report.TextTable;
import lozengy.solver.alternatives.AlternativeSearch;
import lozengy.solver.alternatives.Alternatives;

/**
 * Tells of several arrangements to choose from.
 *
 * @param found the arrangements
 * @param files where they went
 */
record AlternativesReport(Alternatives found, AlternativeFiles files) {

  private static final int WIDEST = 40;
  private static final int DECIMALS = 6;

  /** For a person: scores, and how far each two are apart. */
  List<String> lines() {
    List<Arrangement> all = found.found();
    List<String> lines = new ArrayList<>();
    String within =
        "within "
            + Figures.shortest(files.withinPoints(), 2)
            + " "
            + lozengy.model.input.Words.plural(files.withinPoints(), "point")
            + " of the best";
    if (all.size() == files.count()) {
      lines.add(Figures.count(all.size(), "arrangement") + " " + within);
    } else {
      lines.add(
          "Only "
              + Figures.count(all.size(), "arrangement")
              + " of the "
              + files.count()
              + " asked for: none was found besides that is "
              + within);
      lines.add(
          "  and at least "
              + Figures.shortest(100 * AlternativeSearch.LEAST_APART, 0)
              + " % of rounds apart from those before it");
    }
    scores().lines().forEach(each -> lines.add("  " + each));
    if (all.size() > 1) {
      lines.add(
          "Rounds free to change that differ, in %, with one of the two turned, mirrored and");
      lines.add("  its yarns renamed within their tone so that as few as possible do");
      distances().lines().forEach(each -> lines.add("  " + each));
    }
    return lines;
  }

  private TextTable scores() {
    List<Arrangement> all = found.found();
    List<Part> parts = parts();
    TextTable table = new TextTable(1, WIDEST);
    List<String> head = new ArrayList<>(List.of("", "total"));
    parts.forEach(part -> head.add(part.word()));
    if (plannedAgain()) {
      head.addAll(List.of(Part.KEEP.word(), "with keep"));
    }
    table.row(head.toArray(String[]::new));
    for (int i = 0; i < all.size(); i++) {
      List<String> row = new ArrayList<>();
      row.add(Integer.toString(i + 1));
      row.add(Figures.fixed(all.get(i).score().total(), 2));
      for (Part part : parts) {
        row.add(Figures.fixed(all.get(i).score().parts().get(part), 1));
      }
      if (plannedAgain()) {
        row.add(Figures.fixed(all.get(i).score().parts().get(Part.KEEP), 1));
        row.add(Figures.fixed(all.get(i).score().objective(), 2));
      }
      table.row(row.toArray(String[]::new));
    }
    return table;
  }

  private List<Part> parts() {
    return Part.OF_TOTAL.stream()
        .filter(found.found().get(0).score().parts()::containsKey)
        .toList();
  }

  private boolean plannedAgain() {
    return found.found().get(0).score().parts().containsKey(Part.KEEP);
  }

  private TextTable distances() {
    TextTable table = new TextTable(1, WIDEST);
    for (int i = 0; i < found.distances().length; i++) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(i + 1)));
      for (int j = 0; j < i; j++) {
        row.add(Figures.fixed(100 * found.distances()[i][j], 1));
      }
      table.row(row.toArray(String[]::new));
    }
    return table;
  }

  /** For programs. */
  Map<String, Object> data() {
    List<Map<String, Object>> all = new ArrayList<>();
    for (int i = 0; i < found.found().size(); i++) {
      Map<String, Object> parts = new LinkedHashMap<>();
      Score score = found.found().get(i).score();
      parts().forEach(part -> parts.put(part.word(), decimal(score.parts().get(part))));
      List<Object> apart = new ArrayList<>();
      for (double distance : found.distances()[i]) {
        apart.add(decimal(distance));
      }
      all.add(
          Json.object(
              "arrangement",
              files.file(i).toString(),
              "total",
              decimal(score.total()),
              "parts",
              parts,
              "keep",
              Optional.ofNullable(score.parts().get(Part.KEEP)).map(AlternativesReport::decimal),
              "objective",
              decimal(score.objective()),
              "distances",
              apart));
    }
    return Json.object(
        "wanted", files.count(), "within_points", decimal(files.withinPoints()), "found", all);
  }

  private static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
