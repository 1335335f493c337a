package lozengy.report.chart;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/** Writes what stands around the blanket: title, figures, scale bar, key of the marks, legend. */
final class ChartFurniture {

  /** A sample of the line around what is begun, in mm. */
  private static final double BEGUN_SAMPLE = 5;

  private static final double BEGUN_SAMPLE_LINE = 0.25;

  private static final String QUIET = "#555555";
  private static final double TITLE_FONT = 5.4;
  private static final double SMALL_FONT = 2.6;
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
  void head(Drawing drawing) {
    double left = ChartPage.MARGIN;
    double widest = ChartPage.CONTENT_WIDTH / TITLE_FONT;
    String title = TextWidth.fit(PlainText.oneLine(blanket.brief().title()), widest);
    text(title, left, left + 4.5, TITLE_FONT, "fill", Ink.DARK, "font-weight", "bold");
    String figures =
        BlanketWords.size(blanket)
            + ", "
            + BlanketWords.pieces(blanket)
            + ". Scale 1:"
            + page.scale()
            + ".";
    text(figures, left, left + 10.5, Legend.FONT, "fill", QUIET);
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

  /** What the marks on pieces mean, below the blanket's right; nothing where none is begun. */
  void marks(Drawing drawing) {
    double right = page.width() - page.left();
    double y = page.bottom() + 4;
    for (PieceState state : new PieceState[] {PieceState.JOINED, PieceState.MADE}) {
      long count = drawing.pieces().stream().filter(piece -> piece.state() == state).count();
      if (count > 0) {
        String words = state.word() + " (" + count + ")";
        text(words, right, y, SMALL_FONT, "fill", QUIET, "text-anchor", "end");
        right -= TextWidth.ems(words) * SMALL_FONT + 2;
        PiecesSvg.mark(
            svg,
            state,
            new Point(right, y - SMALL_FONT * Label.CAP_HEIGHT / 2),
            PiecesSvg.MARK_RADIUS);
        right -= 4;
      }
    }
    long begun = drawing.pieces().stream().filter(PieceDrawing::begun).count();
    if (begun > 0) {
      String words = "worked to the line (" + begun + ")";
      text(words, right, y, SMALL_FONT, "fill", QUIET, "text-anchor", "end");
      right -= TextWidth.ems(words) * SMALL_FONT + 1;
      double middle = y - SMALL_FONT * Label.CAP_HEIGHT / 2;
      String line =
          Markup.number(right - BEGUN_SAMPLE)
              + ","
              + Markup.number(middle)
              + " "
              + Markup.number(right)
              + ","
              + Markup.number(middle);
      PiecesSvg.begun(svg, line, BEGUN_SAMPLE_LINE);
    }
  }

  /** The table of yarns, and a note. */
  void legend(Legend legend) {
    svg.open("g", "id", "legend", "font-size", Legend.FONT, "fill", Ink.DARK);
    for (int i = 0; i < legend.entries().size(); i++) {
      entry(legend.entries().get(i), legend.column(i), page.legendTop() + legend.top(i));
    }
    svg.close();
    String uses =
        blanket.brief().joining().isPresent() || blanket.brief().edging().isPresent()
            ? ", joining and edging included"
            : "";
    String unused =
        legend.unused().stream()
            .map(yarn -> PlainText.oneLine(blanket.yarn(yarn).name()))
            .collect(Collectors.joining(", "));
    String note =
        "Metres are what the blanket takes"
            + uses
            + ". Screen and paper show yarn colours only roughly."
            + (unused.isEmpty() ? "" : " Not used: " + unused + ".");
    note = TextWidth.fit(note, (page.width() - 2 * ChartPage.MARGIN) / SMALL_FONT);
    text(note, ChartPage.MARGIN, page.height() - ChartPage.MARGIN, SMALL_FONT, "fill", QUIET);
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
