package lozengy.report.tables;

import java.util.List;
import java.util.Map;

/** What a brief takes in several sizes as CSV. */
public final class SizesTable {

  private static final Column[] COLUMNS = {
    Column.text("size", "Name of the size"),
    Column.whole("across", "Squares in the first row", 1),
    Column.whole("down", "Rows", 1),
    Column.whole("squares", "Squares", 1),
    Column.whole("pieces", "Pieces in all", 1),
    Column.number("width_cm", "Finished width without edging, in cm"),
    Column.number("height_cm", "Finished height without edging, in cm"),
    Column.number("needed_m", "Yarn that it takes, in m"),
    Column.number("needed_g", "What that weighs, in g; empty where a put-up is not stated")
        .optional(),
    Column.whole("balls", "Whole balls by share; empty where a put-up is not stated", 0).optional(),
    Column.number("price", "What the balls cost; empty where not stated").optional(),
    Column.text("currency", "Currency of the price").optional(),
    Column.number("minutes", "How long it takes, in minutes; empty where not told").optional()
  };

  private SizesTable() {}

  /**
   * A row for every size.
   *
   * @param sizes the sizes as data, with columns' names for fields
   */
  public static String csv(List<Map<String, Object>> sizes) {
    Table table =
        new Table("sizes", "What the brief takes in every size", List.of("size"), COLUMNS);
    for (Map<String, Object> size : sizes) {
      Object[] row = new Object[COLUMNS.length];
      for (int i = 0; i < row.length; i++) {
        Object value = size.get(COLUMNS[i].name());
        row[i] = value instanceof Integer whole ? Long.valueOf(whole) : value;
      }
      table.row(row);
    }
    return Csv.text(table);
  }
}
