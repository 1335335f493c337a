package lozengy.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.input.MistakeCode;

/** Reads lists of pieces: from the command line, or as CSV from standard input. */
final class PieceLists {

  private static final String STANDARD_INPUT = "-";
  private static final String AT = "at";
  private static final int MOST_BYTES = 8 << 20;

  private PieceLists() {}

  /** The selectors or codes of a list, apart by commas, semicolons or blanks. */
  static List<String> selectors(String list) {
    return Arrays.stream(list.strip().split("[,;\\s]+", -1)).toList();
  }

  /** Whether a list is to come from standard input. */
  static boolean isStandardInput(String list) {
    return list.strip().equals(STANDARD_INPUT);
  }

  /**
   * The selectors of a list, which may stand on standard input.
   *
   * @throws Refusal if standard input cannot be read or names no piece
   */
  static List<String> read(String list, Terminal terminal) {
    if (!isStandardInput(list)) {
      return selectors(list);
    }
    try {
      byte[] bytes = terminal.in().readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw Refusal.of(
            "standard input",
            MistakeCode.TOO_LARGE.about("bytes", MOST_BYTES),
            "It is larger than " + (MOST_BYTES >> 20) + " MiB",
            "Name fewer");
      }
      List<String> selectors = csv(new String(bytes, StandardCharsets.UTF_8));
      if (selectors.isEmpty()) {
        throw Refusal.of(
            "standard input",
            MistakeCode.WRONG_COUNT.about("pieces", 0, 1),
            "No piece is named",
            "Name at least one");
      }
      return selectors;
    } catch (IOException e) {
      throw Refusal.of(
          "standard input",
          MistakeCode.UNREADABLE.about(e.getMessage()),
          "It cannot be read: " + e.getMessage(),
          "Name the pieces, or try again");
    }
  }

  /**
   * The selectors of a table: those of its column {@code at} if its first line names one, or else
   * of all its cells.
   */
  static List<String> csv(String text) {
    List<String> selectors = new ArrayList<>();
    int column = -1;
    boolean first = true;
    for (String line : text.replace("\uFEFF", "").split("\\R")) {
      List<String> cells = cells(line);
      if (first && cells.stream().anyMatch(cell -> !cell.isEmpty())) {
        first = false;
        column = cells.indexOf(AT);
        if (column >= 0) {
          continue;
        }
      }
      if (column < 0) {
        cells.stream().filter(cell -> !cell.isEmpty()).forEach(selectors::add);
      } else if (column < cells.size() && !cells.get(column).isEmpty()) {
        selectors.add(cells.get(column));
      }
    }
    return selectors;
  }

  /** The cells of a line, apart by commas, semicolons or tabs outside quotes. */
  static List<String> cells(String line) {
    List<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && ",;\t".indexOf(c) >= 0) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString().strip());
    return cells;
  }
}
