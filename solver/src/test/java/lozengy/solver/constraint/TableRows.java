package lozengy.solver.constraint;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** Rows of a table among the resources of this package; lines with {@code #} tell its source. */
final class TableRows {

  private TableRows() {}

  /** The rows without the header, split at commas. */
  static Stream<String[]> of(String name) {
    try (InputStream in = TableRows.class.getResourceAsStream(name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("#")).skip(1).map(l -> l.split(","));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
