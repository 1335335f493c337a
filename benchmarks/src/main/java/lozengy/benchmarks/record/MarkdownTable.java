package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.List;

/** A table in Markdown, its first column to the left, the others to the right. */
final class MarkdownTable {

  private final int columns;
  private final List<String> lines = new ArrayList<>();

  /** Begins a table with a heading for each column. */
  MarkdownTable(List<String> headings) {
    columns = headings.size();
    lines.add(line(headings));
    lines.add("|---" + "|--:".repeat(columns - 1) + "|");
  }

  /** Adds a row. */
  void row(List<String> cells) {
    if (cells.size() != columns) {
      throw new IllegalArgumentException("%d cells, %d columns".formatted(cells.size(), columns));
    }
    lines.add(line(cells));
  }

  private static String line(List<String> cells) {
    return "| " + String.join(" | ", cells) + " |";
  }

  /** The text, with a line break at its end. */
  String text() {
    return String.join("\n", lines) + "\n";
  }
}
