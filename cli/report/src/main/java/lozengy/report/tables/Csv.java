package lozengy.report.tables;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import lozengy.report.PlainText;

/** Writes a table as CSV after RFC 4180, with a header. */
final class Csv {

  /** Text that begins with one of these may be taken for a formula, in wide forms too. */
  private static final String FORMULA_STARTS = "=+-@\uff1d\uff0b\uff0d\uff20";

  /**
   * Of such text, what runs nothing: a hyphen and letters, digits, hyphens, underscores and blanks
   * call no function and name no program. All codes are like that, so that keys stay as they are.
   */
  private static final Pattern HARMLESS = Pattern.compile("-[\\p{L}\\p{Nd}_ -]*");

  private static final String SHIELD = "'";

  private Csv() {}

  static String text(Table table) {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
      csv.writeRecord(table.columns().stream().map(Column::name).toList());
      for (List<Object> row : table.rows()) {
        csv.writeRecord(row.stream().map(Csv::cell).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    return text.toString();
  }

  private static String cell(Object cell) {
    if (cell == null) {
      return "";
    }
    if (cell instanceof String words) {
      return safe(PlainText.oneLine(words));
    }
    return cell instanceof BigDecimal number ? number.toPlainString() : cell.toString();
  }

  /**
   * Keeps a spreadsheet from running text: after an apostrophe, which it shows or hides, nothing is
   * taken for a formula. Text that has one already gets another, so that the original can be had
   * back by taking one away.
   */
  static String safe(String words) {
    int unshielded = 0;
    while (words.startsWith(SHIELD, unshielded)) {
      unshielded++;
    }
    boolean risky =
        unshielded < words.length()
            && FORMULA_STARTS.indexOf(words.charAt(unshielded)) >= 0
            && !HARMLESS.matcher(words.substring(unshielded)).matches();
    return risky ? SHIELD + words : words;
  }
}
