package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** A table in plain text: columns of equal width, two spaces apart, numbers to the right. */
public final class TextTable {

  /** What stands in a cell where there is nothing to tell. */
  public static final String NONE = "-";

  private static final String GAP = "  ";
  private static final String CUT = "...";

  private final List<List<String>> rows = new ArrayList<>();
  private final int textColumns;
  private final int widestText;

  /**
   * Makes an empty table.
   *
   * @param textColumns how many columns, from the left, hold text; those after them hold numbers
   * @param widestText terminal columns after which text is cut, more than 3
   */
  public TextTable(int textColumns, int widestText) {
    this.textColumns = textColumns;
    this.widestText = widestText;
  }

  /** A count, or {@link #NONE} without one. */
  public static String count(OptionalLong count) {
    return count.isPresent() ? Long.toString(count.getAsLong()) : NONE;
  }

  /** Adds a row; texts are made safe to show. */
  public void row(String... cells) {
    List<String> row = new ArrayList<>();
    for (String cell : cells) {
      row.add(cut(PlainText.oneLine(cell)));
    }
    rows.add(row);
  }

  private String cut(String cell) {
    int columns = 0;
    int fitting = 0;
    for (int end = 0; end < cell.length(); ) {
      int codePoint = cell.codePointAt(end);
      columns += PlainText.columns(codePoint);
      end += Character.charCount(codePoint);
      fitting = columns <= widestText - CUT.length() ? end : fitting;
      if (columns > widestText) {
        return cell.substring(0, fitting) + CUT;
      }
    }
    return cell;
  }

  /** The rows as lines, without spaces at their ends. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < row.size(); column++) {
        String cell = row.get(column);
        String pad = " ".repeat(width(column) - PlainText.columns(cell));
        line.append(column == 0 ? "" : GAP).append(column < textColumns ? cell + pad : pad + cell);
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private int width(int column) {
    return rows.stream()
        .filter(row -> column < row.size())
        .mapToInt(row -> PlainText.columns(row.get(column)))
        .max()
        .orElse(0);
  }
}
