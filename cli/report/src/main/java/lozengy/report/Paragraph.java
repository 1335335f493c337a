package lozengy.report;

import java.util.ArrayList;
import java.util.List;

/** Words broken between lines where they are too long for a terminal. */
public final class Paragraph {

  private static final int COLUMNS = 79;

  private Paragraph() {}

  /**
   * Breaks words.
   *
   * @param first what stands before them on the first line
   * @param others what stands before them on the other lines
   * @param words the words; what could steer a terminal is taken out
   */
  public static List<String> lines(String first, String others, String words) {
    return lines(COLUMNS, first, others, words);
  }

  /**
   * Breaks words.
   *
   * @param columns columns of a line
   * @param first what stands before them on the first line
   * @param others what stands before them on the other lines
   * @param words the words; what could steer a terminal is taken out
   */
  public static List<String> lines(int columns, String first, String others, String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : PlainText.oneLine(words).split(" +")) {
      if (!empty && PlainText.columns(line + " " + word) > columns) {
        lines.add(line.toString());
        line = new StringBuilder(others);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
