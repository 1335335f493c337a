package lozengy.report.solve;

import static lozengy.report.Decimals.toSix;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Part;
import lozengy.model.input.Words;
import lozengy.model.score.Score;
import lozengy.report.Decimals;
import lozengy.report.Figures;
import lozengy.report.Json;
import lozengy.report.TextTable;
import lozengy.solver.alternatives.AlternativeSearch;
import lozengy.solver.alternatives.Alternatives;

/**
 * Several arrangements to choose from, as they are told.
 *
 * @param found the arrangements
 * @param wanted how many were wanted
 * @param withinPoints how far below the best each total may be
 */
public record ChoiceText(Alternatives found, int wanted, double withinPoints) {

  private static final int WIDEST = 40;

  /** For a person: scores, and how far each two are apart. */
  public List<String> lines() {
    List<Arrangement> all = found.found();
    List<String> lines = new ArrayList<>();
    String within =
        "within "
            + Figures.shortest(withinPoints, 2)
            + " "
            + Words.plural(withinPoints, "point")
            + " of the best";
    if (all.size() == wanted) {
      lines.add(Figures.count(all.size(), "arrangement") + " " + within);
    } else {
      lines.add(
          "Only "
              + Figures.count(all.size(), "arrangement")
              + " of the "
              + wanted
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

  /**
   * For programs.
   *
   * @param files where they went, in their order
   */
  public Map<String, Object> data(List<Path> files) {
    List<Map<String, Object>> all = new ArrayList<>();
    for (int i = 0; i < found.found().size(); i++) {
      Map<String, Object> parts = new LinkedHashMap<>();
      Score score = found.found().get(i).score();
      parts().forEach(part -> parts.put(part.word(), toSix(score.parts().get(part))));
      List<Object> apart = new ArrayList<>();
      for (double distance : found.distances()[i]) {
        apart.add(toSix(distance));
      }
      all.add(
          Json.object(
              "arrangement",
              files.get(i).toString(),
              "total",
              toSix(score.total()),
              "parts",
              parts,
              "keep",
              Optional.ofNullable(score.parts().get(Part.KEEP)).map(Decimals::toSix),
              "objective",
              toSix(score.objective()),
              "distances",
              apart));
    }
    return Json.object("wanted", wanted, "within_points", toSix(withinPoints), "found", all);
  }
}
