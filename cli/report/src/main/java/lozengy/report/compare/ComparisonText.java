package lozengy.report.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import lozengy.model.brief.Part;
import lozengy.model.compare.Compared;
import lozengy.model.compare.Comparison;
import lozengy.report.Figures;
import lozengy.report.PlainText;
import lozengy.report.TextTable;

/** Writes a comparison as tables, with a column for each arrangement. */
public final class ComparisonText {

  private static final int WIDEST_LABEL = 60;
  private static final int ROOM_FOR_LABELS = 90;

  private final Comparison comparison;
  private final List<Compared> all;

  private ComparisonText(Comparison comparison) {
    this.comparison = comparison;
    this.all = comparison.all();
  }

  /** The tables, line by line. */
  public static List<String> lines(Comparison comparison) {
    return new ComparisonText(comparison).write();
  }

  private List<String> write() {
    List<String> lines = new ArrayList<>();
    TextTable table = new TextTable(1, WIDEST_LABEL);
    if (all.stream().mapToInt(each -> PlainText.columns(each.label())).sum() <= ROOM_FOR_LABELS) {
      row(table, "", i -> (i + 1) + " " + all.get(i).label());
    } else {
      for (int i = 0; i < all.size(); i++) {
        lines.add((i + 1) + "  " + PlainText.oneLine(all.get(i).label()));
      }
      lines.add("");
      row(table, "", i -> Integer.toString(i + 1));
    }
    row(table, "total", i -> figure(all.get(i).score().total()));
    Part.OF_TOTAL.forEach(part -> rows(table, part));
    rows(table, Part.KEEP);
    row(table, "least left, m", i -> Figures.metres(all.get(i).leastLeftMillimetres()));
    row(table, "faults", i -> Integer.toString(all.get(i).faults()));
    row(table, "beaten by", this::beatenBy);
    lines.addAll(table.lines());
    lines.add("");
    lines.add("beaten by: as good in every part that all have, and better in one; one with faults");
    lines.add("  beats none without");
    if (all.stream().anyMatch(each -> each.score().parts().containsKey(Part.KEEP))) {
      lines.add("keep: what stands as planned before; it is no part of the total");
    }
    if (all.size() > 1) {
      lines.add("");
      Optional<Integer> shared = comparison.sharedByAll();
      lines.add(
          "Rounds in another yarn, of "
              + shared.map(each -> "the " + each).orElse("those")
              + " that both have");
      TextTable changed = new TextTable(1, WIDEST_LABEL);
      row(changed, "", i -> Integer.toString(i + 1));
      for (int i = 0; i < all.size(); i++) {
        int one = i;
        row(changed, Integer.toString(i + 1), other -> changed(one, other, shared.isPresent()));
      }
      lines.addAll(changed.lines());
      if (changed.lines().stream().anyMatch(line -> line.matches(".* -( .*|$)"))) {
        lines.add("-: not compared, as they share no piece or are planned in other yarns");
      }
    }
    lines.add("");
    lines.add("Yarn left, m");
    TextTable left = new TextTable(1, WIDEST_LABEL);
    row(left, "", i -> Integer.toString(i + 1));
    for (String code : comparison.yarns()) {
      row(left, code, i -> left(all.get(i), code));
    }
    lines.addAll(left.lines());
    return lines;
  }

  private void rows(TextTable table, Part part) {
    if (all.stream().anyMatch(each -> each.score().parts().containsKey(part))) {
      row(table, part.word(), i -> figure(all.get(i).score().parts().get(part)));
      if (all.stream().map(each -> weight(each, part)).distinct().count() > 1) {
        row(table, "- its weight", i -> weight(all.get(i), part));
      }
    }
  }

  private void row(TextTable table, String name, IntFunction<String> cell) {
    List<String> cells = new ArrayList<>(List.of(name));
    for (int i = 0; i < all.size(); i++) {
      cells.add(cell.apply(i));
    }
    table.row(cells.toArray(String[]::new));
  }

  private static String weight(Compared one, Part part) {
    return one.score().parts().containsKey(part)
        ? Figures.shortest(one.arrangement().blanket().brief().prefer().weight(part), 2)
        : "-";
  }

  private String beatenBy(int index) {
    List<Integer> better = comparison.beatenBy(index);
    return better.isEmpty()
        ? "none"
        : better.stream().map(i -> Integer.toString(i + 1)).collect(Collectors.joining(" "));
  }

  private String changed(int one, int other, boolean sharedTold) {
    if (one == other) {
      return "";
    }
    return comparison
        .changed(one, other)
        .map(each -> each.changed() + (sharedTold ? "" : " of " + each.shared()))
        .orElse("-");
  }

  private static String left(Compared one, String code) {
    Long left = one.leftMillimetres().get(code);
    return left == null ? "-" : Figures.metres(left);
  }

  private static String figure(Double value) {
    return value == null ? "-" : Figures.fixed(value, 2);
  }
}
