package lozengy.benchmarks.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Raw results: lines {@code # name: value} on what was measured, a line of column names, then one
 * row a fact, comma-separated.
 *
 * @param about what was measured, with what and on what
 * @param rows the rows, by column
 */
public record Results(Map<String, String> about, List<Map<String, String>> rows) {

  /** What each part of a file tells for itself. */
  private static final List<String> OF_A_RUN =
      List.of(Environment.COMMAND, Environment.DATE, Environment.LOAD);

  /**
   * Reads a file of results.
   *
   * @throws IllegalArgumentException naming the line that has not as many cells as there are
   *     columns
   */
  public static Results read(Path file) {
    Map<String, String> about = new LinkedHashMap<>();
    List<Map<String, String>> rows = new ArrayList<>();
    String[] columns = null;
    try (BufferedReader lines = Files.newBufferedReader(file)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (line.startsWith("# ")) {
          String[] parts = line.substring(2).split(": ", 2);
          about.put(parts[0], parts.length > 1 ? parts[1] : "");
        } else if (columns == null) {
          columns = line.split(",");
        } else {
          rows.add(row(file, columns, line));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Results(about, rows);
  }

  /** How many commands made it: the first, and those that went on with it. */
  public long parts() {
    return about.keySet().stream().filter(name -> name.startsWith(Environment.COMMAND)).count();
  }

  private static Map<String, String> row(Path file, String[] columns, String line) {
    String[] cells = line.split(",", -1);
    if (cells.length != columns.length) {
      throw new IllegalArgumentException(
          "%s has %d columns, this line %d: %s"
              .formatted(file, columns.length, cells.length, line));
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      row.put(columns[i], cells[i]);
    }
    return row;
  }

  /** Writes results row by row, so that a run that is cut short leaves what it has. */
  public static final class Writer implements AutoCloseable {

    private final PrintWriter out;
    private final int columns;

    /**
     * Begins a file; its folder is made if need be.
     *
     * @param file the file
     * @param about what is measured, with what and on what
     * @param columns the columns' names
     */
    public Writer(Path file, Map<String, String> about, List<String> columns) {
      this.columns = columns.size();
      try {
        Files.createDirectories(file.toAbsolutePath().getParent());
        out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8), true);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      about.forEach((name, value) -> out.print("# " + name + ": " + value + "\n"));
      out.print(String.join(",", columns) + "\n");
      out.flush();
    }

    /**
     * Goes on with a file that an earlier run began. What was measured this time is told between
     * the rows, as a further part.
     *
     * @param file the file
     * @param about what is measured, with what and on what
     * @param columns the columns' names
     * @throws IllegalArgumentException naming what differs, if the file has other columns, or was
     *     made from another commit, with other versions or on another machine
     */
    public static Writer append(Path file, Map<String, String> about, List<String> columns) {
      Results before = Results.read(file);
      for (String name : about.keySet()) {
        String then = before.about().get(name);
        if (!OF_A_RUN.contains(name) && !about.get(name).equals(then)) {
          throw new IllegalArgumentException(
              "%s was made with %s: %s, this is %s".formatted(file, name, then, about.get(name)));
        }
      }
      if (!before.rows().isEmpty() && !List.copyOf(before.rows().get(0).keySet()).equals(columns)) {
        throw new IllegalArgumentException(
            "%s has the columns %s".formatted(file, before.rows().get(0).keySet()));
      }
      long part = 1 + before.parts();
      try {
        PrintWriter out =
            new PrintWriter(
                Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND),
                true);
        OF_A_RUN.forEach(
            name -> out.print("# " + name + ", part " + part + ": " + about.get(name) + "\n"));
        out.flush();
        return new Writer(out, columns.size());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    private Writer(PrintWriter out, int columns) {
      this.out = out;
      this.columns = columns;
    }

    /**
     * Writes a row.
     *
     * @param cells one for each column
     * @throws IllegalArgumentException if there are more or fewer cells than columns, or one holds
     *     a comma or a line break
     */
    public void row(List<String> cells) {
      if (cells.size() != columns) {
        throw new IllegalArgumentException(
            "%d cells for %d columns".formatted(cells.size(), columns));
      }
      for (String cell : cells) {
        if (cell.contains(",") || cell.contains("\n")) {
          throw new IllegalArgumentException("a cell holds a comma or a line break: " + cell);
        }
      }
      out.print(String.join(",", cells) + "\n");
      out.flush();
    }

    @Override
    public void close() {
      out.close();
    }
  }
}
