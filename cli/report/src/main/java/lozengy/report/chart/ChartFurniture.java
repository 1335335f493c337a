package lozengy.report.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/** Writes what stands around the blanket: title, figures, scale bar, key of the states, legend. */
final class ChartFurniture {

  static final String QUIET = "#555555";
  private static final double TITLE_FONT = 5.4;
  static final double SMALL_FONT = 2.6;

  /** Height of a line of notes. */
  static final double NOTE = 3.6;

  private static final double LONGEST_BAR = 40;
  private static final double SWATCH_LINE = 0.2;
  private static final int[] BAR_STEPS = {5, 2, 1};

  private final Markup svg;
  private final ChartPage page;
  private final Blanket blanket;

  ChartFurniture(Markup svg, ChartPage page, Blanket blanket) {
    this.svg = svg;
    this.page = page;
    this.blanket = blanket;
  }

  /** The title, and the figures below it. */
  void head() {
    double left = ChartPage.MARGIN;
    double widest = ChartPage.CONTENT_WIDTH / TITLE_FONT;
    String title = TextWidth.fit(PlainText.oneLine(blanket.brief().title()), widest);
    text(title, left, left + 4.5, TITLE_FONT, "fill", Ink.DARK, "font-weight", "bold");
    text(BlanketWords.size(blanket), left, left + 10, Legend.FONT, "fill", QUIET);
    String figures = BlanketWords.pieces(blanket) + ". Scale 1:" + page.scale() + ".";
    text(figures, left, left + 13.8, Legend.FONT, "fill", QUIET);
  }

  /** A bar of a round length, below the blanket's left. */
  void scaleBar(Drawing drawing) {
    double longestCm = Math.min(page.onBlanketCm(LONGEST_BAR), drawing.widthCm());
    double power = Math.pow(10, Math.floor(Math.log10(longestCm)));
    double cm =
        IntStream.of(BAR_STEPS)
            .mapToDouble(step -> step * power)
            .filter(length -> length <= longestCm)
            .findFirst()
            .orElse(power);
    double left = page.left();
    double right = left + page.onPage(cm);
    double y = page.bottom() + 4;
    String path =
        "M"
            + corner(left, y - 1)
            + "V"
            + Markup.number(y)
            + "H"
            + Markup.number(right)
            + "V"
            + Markup.number(y - 1);
    svg.empty("path", "d", path, "fill", "none", "stroke", QUIET, "stroke-width", 0.3);
    String length = Figures.fixed(cm, cm < 1 ? 2 : 0) + " cm";
    text(length, right + 1.5, y, SMALL_FONT, "fill", QUIET);
  }

  private static String corner(double x, double y) {
    return Markup.number(x) + " " + Markup.number(y);
  }

  /** How the states of pieces are drawn, below the blanket's right. */
  void states(Drawing drawing, Optional<String> changed) {
    double right = page.width() - Math.min(page.left(), ChartPage.MARGIN);
    new StateKey(svg).write(List.of(drawing), changed, right, page.bottom() + 4);
  }

  /** The table of yarns. */
  void legend(Legend legend) {
    svg.open("g", "id", "legend", "font-size", Legend.FONT, "fill", Ink.DARK);
    for (int i = 0; i < legend.entries().size(); i++) {
      entry(legend.entries().get(i), legend.column(i), page.legendTop() + legend.top(i));
    }
    svg.close();
  }

  /** Notes, a line each, at the foot of the page. */
  void notes(List<String> notes) {
    for (int i = 0; i < notes.size(); i++) {
      double y = page.height() - ChartPage.MARGIN - (notes.size() - 1 - i) * NOTE;
      text(notes.get(i), ChartPage.MARGIN, y, SMALL_FONT, "fill", QUIET);
    }
  }

  private void entry(Legend.Entry entry, Legend.Column column, double top) {
    double left = ChartPage.MARGIN;
    double base = top + Legend.ROW / 2 + Legend.FONT * Label.CAP_HEIGHT / 2;
    svg.open("g");
    svg.text("title", entry.title());
    svg.empty(
        "rect",
        "x",
        left + column.swatchLeft(),
        "y",
        top + 0.5,
        "width",
        Legend.SWATCH,
        "height",
        Legend.ROW - 1,
        "fill",
        blanket.yarn(entry.yarn()).colour().hex(),
        "stroke",
        QUIET,
        "stroke-width",
        SWATCH_LINE);
    cell(
        entry.letter(),
        left + column.swatchLeft() + Legend.SWATCH / 2,
        base,
        "text-anchor",
        "middle",
        "font-weight",
        "bold",
        "fill",
        Ink.on(blanket.yarn(entry.yarn()).colour()));
    cell(entry.code(), left + column.codeLeft(), base, "font-weight", "bold");
    cell(entry.name(), left + column.nameLeft(), base);
    cell(entry.tone(), left + column.toneLeft(), base, "fill", QUIET);
    cell(entry.metres(), left + column.metresRight(), base, "text-anchor", "end");
    svg.close();
  }

  private void cell(String content, double x, double y, Object... attributes) {
    svg.text("text", content, Markup.with(attributes, "x", x, "y", y));
  }

  private void text(String content, double x, double y, double size, Object... attributes) {
    svg.text("text", content, Markup.with(attributes, "x", x, "y", y, "font-size", size));
  }
}
