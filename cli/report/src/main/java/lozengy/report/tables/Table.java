package lozengy.report.tables;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A table: its columns, and rows of cells that fit them. */
final class Table {

  /**
   * Columns whose cells are a key of another table.
   *
   * @param columns columns of this table
   * @param table the other table
   * @param columnsThere its columns, in the same order
   */
  record Reference(List<String> columns, String table, List<String> columnsThere) {}

  private final String name;
  private final String title;
  private final List<Column> columns;
  private final List<String> key;
  private final List<Reference> references = new ArrayList<>();
  private final List<List<Object>> rows = new ArrayList<>();

  /**
   * Makes a table without rows.
   *
   * @param name its name, and its file's without the ending
   * @param title what it holds, in a few words
   * @param key names of the columns that tell its rows apart
   * @param columns its columns
   */
  Table(String name, String title, List<String> key, Column... columns) {
    this.name = name;
    this.title = title;
    this.key = List.copyOf(key);
    this.columns = List.of(columns);
  }

  /** Says that a column holds keys of another table. */
  Table refers(String column, String table, String columnThere) {
    references.add(new Reference(List.of(column), table, List.of(columnThere)));
    return this;
  }

  /**
   * Adds a row.
   *
   * @param cells a cell for each column; null is an empty one
   * @throws IllegalArgumentException if they do not fit the columns
   */
  void row(Object... cells) {
    if (cells.length != columns.size()) {
      throw new IllegalArgumentException(
          name + ": " + cells.length + " cells for " + columns.size() + " columns");
    }
    for (int i = 0; i < cells.length; i++) {
      if (!columns.get(i).takes(cells[i])) {
        throw new IllegalArgumentException(
            name + ": " + columns.get(i).name() + " takes no " + cells[i]);
      }
    }
    rows.add(Collections.unmodifiableList(new ArrayList<>(Arrays.asList(cells))));
  }

  String name() {
    return name;
  }

  String title() {
    return title;
  }

  String file() {
    return name + ".csv";
  }

  List<Column> columns() {
    return columns;
  }

  List<String> key() {
    return key;
  }

  List<Reference> references() {
    return references;
  }

  List<List<Object>> rows() {
    return rows;
  }
}
