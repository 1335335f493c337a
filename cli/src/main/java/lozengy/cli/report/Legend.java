package lozengy.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;

/**
 * The table of yarns below a chart: swatch, code, name, tone and metres, in as many columns as fit,
 * filled downwards. All measures are mm of the page.
 */
final class Legend {

  /** Font size of the entries. */
  static final double FONT = 2.8;

  /** Height of a row. */
  static final double ROW = 5;

  /** Width of a swatch. */
  static final double SWATCH = 5;

  private static final double GAP = 1.6;
  private static final double COLUMN_GAP = 6;

  /** How much wider bold text is. */
  private static final double BOLD = 1.07;

  /** Names longer than this many font sizes are cut; the entry's title holds the full name. */
  private static final double LONGEST_NAME = 14;

  /**
   * A yarn's entry.
   *
   * @param yarn index of the yarn
   * @param code its code
   * @param name its name, cut if it is long
   * @param tone its tone, in a word
   * @param metres what the blanket takes of it, in words
   * @param title all of that without cuts
   */
  record Entry(int yarn, String code, String name, String tone, String metres, String title) {}

  private final List<Entry> entries = new ArrayList<>();
  private final double codeWidth;
  private final double nameWidth;
  private final double toneWidth;
  private final double metresWidth;
  private final int columns;

  /** Lays out the legend of an arrangement within a width. */
  Legend(Arrangement arrangement, double width) {
    Blanket blanket = arrangement.blanket();
    long[] used = blanket.usedMillimetres(arrangement.sequences());
    for (int yarn = 0; yarn < used.length; yarn++) {
      String code = PlainText.oneLine(blanket.yarn(yarn).code());
      String name = PlainText.oneLine(blanket.yarn(yarn).name());
      String tone = blanket.tone(yarn).word();
      String metres = Figures.metres(used[yarn]) + " m";
      String title = String.join(", ", code, name, tone, metres);
      String shownCode = TextWidth.fit(code, LONGEST_NAME);
      String shownName = TextWidth.fit(name, LONGEST_NAME);
      entries.add(new Entry(yarn, shownCode, shownName, tone, metres, title));
    }
    codeWidth = BOLD * widest(Entry::code);
    nameWidth = widest(Entry::name);
    toneWidth = widest(Entry::tone);
    metresWidth = widest(Entry::metres);
    int fitting = (int) Math.floor((width + COLUMN_GAP) / (columnWidth() + COLUMN_GAP));
    columns = Math.max(1, Math.min(fitting, entries.size()));
  }

  private double widest(Function<Entry, String> cell) {
    return FONT * entries.stream().map(cell).mapToDouble(TextWidth::ems).max().orElse(0);
  }

  List<Entry> entries() {
    return entries;
  }

  /** Width of one column. */
  double columnWidth() {
    return metresRight();
  }

  /** Where the code starts within a column. */
  double codeLeft() {
    return SWATCH + GAP;
  }

  /** Where the name starts within a column. */
  double nameLeft() {
    return codeLeft() + codeWidth + GAP;
  }

  /** Where the tone starts within a column. */
  double toneLeft() {
    return nameLeft() + nameWidth + GAP;
  }

  /** Where the metres end within a column. */
  double metresRight() {
    return toneLeft() + toneWidth + GAP + metresWidth;
  }

  private int rows() {
    return (entries.size() + columns - 1) / columns;
  }

  /** Left of an entry's column. */
  double left(int entry) {
    return entry / rows() * (columnWidth() + COLUMN_GAP);
  }

  /** Top of an entry's row. */
  double top(int entry) {
    return entry % rows() * ROW;
  }

  /** Height of all rows. */
  double height() {
    return rows() * ROW;
  }
}
