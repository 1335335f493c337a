package lozengy.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.report.Figures;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/**
 * The table of yarns below a chart: swatch, code, name, tone and metres, the darks first, in as
 * many columns as fit, filled downwards. All measures are mm of the page.
 */
final class Legend {

  /** Font size of the entries. */
  static final double FONT = 2.8;

  /** Height of a row. */
  static final double ROW = 4.5;

  /** Width of a swatch. */
  static final double SWATCH = 5;

  private static final double GAP = 1.6;
  private static final double COLUMN_GAP = 5;

  /** How much wider bold text is. */
  private static final double BOLD = 1.07;

  /** Room for fonts that run wider than the usual ones. */
  private static final double ROOMY = 1.04;

  /** Names longer than this many font sizes are cut; the entry's title holds the full name. */
  private static final double LONGEST_NAME = 14;

  /**
   * A yarn's entry.
   *
   * @param yarn index of the yarn
   * @param letter the letter that stands for it on the chart
   * @param code its code
   * @param name its name, cut if it is long
   * @param tone its tone, in a word
   * @param metres what the blanket takes of it, in words
   * @param title all of that without cuts
   */
  record Entry(
      int yarn,
      String letter,
      String code,
      String name,
      String tone,
      String metres,
      String title) {}

  /**
   * Where the cells of a column stand.
   *
   * @param swatchLeft left of the swatches
   * @param codeLeft left of the codes
   * @param nameLeft left of the names
   * @param toneLeft left of the tones
   * @param metresRight right of the metres, and so of the column
   */
  record Column(
      double swatchLeft, double codeLeft, double nameLeft, double toneLeft, double metresRight) {}

  private final List<Entry> entries = new ArrayList<>();
  private final List<Integer> unused = new ArrayList<>();
  private final List<Column> columns;

  /** Lays out the legend of an arrangement within a width. */
  Legend(Arrangement arrangement, double width) {
    Blanket blanket = arrangement.blanket();
    long[] used = blanket.usedMillimetres(arrangement.sequences());
    YarnLetters letters = YarnLetters.of(blanket);
    for (int yarn = 0; yarn < used.length; yarn++) {
      if (used[yarn] == 0) {
        unused.add(yarn);
        continue;
      }
      String code = PlainText.oneLine(blanket.yarn(yarn).code());
      String name = PlainText.oneLine(blanket.yarn(yarn).name());
      String tone = blanket.yarns().tone(yarn).word();
      String metres = Figures.metres(used[yarn]) + " m";
      String title = String.join(", ", code, name, tone, metres);
      String shownCode = TextWidth.fit(code, LONGEST_NAME);
      String shownName = TextWidth.fit(name, LONGEST_NAME);
      entries.add(new Entry(yarn, letters.of(yarn), shownCode, shownName, tone, metres, title));
    }
    entries.sort(Comparator.comparing(entry -> blanket.yarns().tone(entry.yarn())));
    columns = columns(width);
  }

  /** As many columns as fit, at least one. */
  private List<Column> columns(double width) {
    for (int count = entries.size(); count > 1; count--) {
      List<Column> fitting = columns(count);
      if (fitting.get(fitting.size() - 1).metresRight() <= width) {
        return fitting;
      }
    }
    return entries.isEmpty() ? List.of() : columns(1);
  }

  private List<Column> columns(int count) {
    int rows = (entries.size() + count - 1) / count;
    List<Column> made = new ArrayList<>();
    double left = 0;
    for (int first = 0; first < entries.size(); first += rows) {
      List<Entry> column = entries.subList(first, Math.min(first + rows, entries.size()));
      double code = left + SWATCH + GAP;
      double name = code + BOLD * widest(column, Entry::code) + GAP;
      double tone = name + widest(column, Entry::name) + GAP;
      double right = tone + widest(column, Entry::tone) + GAP + widest(column, Entry::metres);
      made.add(new Column(left, code, name, tone, right));
      left = right + COLUMN_GAP;
    }
    return made;
  }

  private static double widest(List<Entry> column, Function<Entry, String> cell) {
    return FONT * ROOMY * column.stream().map(cell).mapToDouble(TextWidth::ems).max().orElseThrow();
  }

  List<Entry> entries() {
    return entries;
  }

  /** Yarns that the blanket does not take; they have no entry. */
  List<Integer> unused() {
    return unused;
  }

  /** The column of an entry. */
  Column column(int entry) {
    return columns.get(entry / rows());
  }

  /** Top of an entry's row, from the top of the legend. */
  double top(int entry) {
    return entry % rows() * ROW;
  }

  /** Height of all rows. */
  double height() {
    return rows() * ROW;
  }

  private int rows() {
    return columns.isEmpty() ? 0 : (entries.size() + columns.size() - 1) / columns.size();
  }
}
