package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Rows of words and figures in columns: the first column to the left, the others to the right. */
final class TextTable {

  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a row; all rows must have the same number of cells. */
  TextTable row(List<String> cells) {
    rows.add(List.copyOf(cells));
    return this;
  }

  /** Adds a row. */
  TextTable row(String... cells) {
    return row(List.of(cells));
  }

  /** The rows as lines, without blanks at their ends. */
  List<String> lines() {
    if (rows.isEmpty()) {
      return List.of();
    }
    int[] widths =
        IntStream.range(0, rows.get(0).size())
            .map(column -> rows.stream().mapToInt(row -> width(row.get(column))).max().orElse(0))
            .toArray();
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private static String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < widths.length; column++) {
      String cell = row.get(column);
      String fill = " ".repeat(widths[column] - width(cell));
      line.append(column == 0 ? cell + fill : GAP + fill + cell);
    }
    return line.toString().stripTrailing();
  }

  private static int width(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
