package lozengy.report.chart;

import java.util.List;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.card.ScoreCard;
import lozengy.model.layout.Strips;
import lozengy.model.score.WeakSpot;
import lozengy.model.score.WeakSpots;
import lozengy.report.BlanketWords;
import lozengy.report.Markup;

/**
 * The chart to lay out by, as one SVG document: the blanket to scale with every round in its yarn's
 * colour, and a legend that names every yarn. The same arrangement and options give the same text.
 */
public final class Chart {

  /** Without blanks: not every reader of SVG takes them off. */
  static final String FONTS = "Liberation Sans,Helvetica,Arial,sans-serif";

  /** How far white covers what is not joined yet. */
  private static final double FAINT = 0.72;

  private Chart() {}

  /**
   * Draws an arrangement.
   *
   * @param arrangement the arrangement; rounds that are open stay white
   * @param options what to show
   * @return an SVG document
   */
  public static String svg(Arrangement arrangement, ChartOptions options) {
    return svg(arrangement, options, OptionalDouble.empty());
  }

  /**
   * Draws an arrangement at a stated width.
   *
   * @param arrangement the arrangement; rounds that are open stay white
   * @param options what to show
   * @param widthMm width in mm at which viewers show it, above 0; if empty, that of the page
   * @return an SVG document
   */
  public static String svg(Arrangement arrangement, ChartOptions options, OptionalDouble widthMm) {
    Blanket blanket = arrangement.blanket();
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    Legend legend = new Legend(arrangement, ChartPage.CONTENT_WIDTH);
    List<WeakSpot> weak = options.weak() ? weakSpots(arrangement) : List.of();
    ChartPage page = ChartPage.of(drawing, legend.height() + WeakMarks.height(weak), options);
    Markup svg = document(page, widthMm, "role", "img", "aria-labelledby", "title description");
    svg.text("title", blanket.brief().title(), "id", "title");
    svg.text("desc", description(blanket, drawing), "id", "description");
    svg.empty("rect", "width", "100%", "height", "100%", "fill", Ink.LIGHT);
    ChartFurniture furniture = new ChartFurniture(svg, page, blanket);
    furniture.head(drawing);
    new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket)).write(options);
    furniture.scaleBar(drawing);
    furniture.marks(drawing);
    furniture.legend(legend);
    if (options.weak()) {
      WeakMarks marks = new WeakMarks(svg, page, weak);
      marks.onBlanket(drawing);
      marks.words(page.legendTop() + legend.height());
    }
    return svg.finish();
  }

  private static List<WeakSpot> weakSpots(Arrangement arrangement) {
    return WeakSpots.of(arrangement.blanket(), arrangement.sequences(), ScoreCard.WEAK_SPOTS);
  }

  /**
   * Draws the blanket alone, to stand within another document.
   *
   * @param arrangement the arrangement
   * @param options what to show
   * @param page how large it is drawn
   * @return an SVG document
   */
  public static String bare(Arrangement arrangement, ChartOptions options, ChartPage page) {
    Blanket blanket = arrangement.blanket();
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    Markup svg = document(page);
    new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket)).write(options);
    return svg.finish();
  }

  /**
   * Draws the strips: the blanket, what is not joined yet faintly, with a numbered line through the
   * pieces of each strip.
   *
   * @param arrangement the arrangement
   * @param page how large it is drawn, with room around it for the numbers
   * @return an SVG document
   */
  public static String strips(Arrangement arrangement, ChartPage page) {
    Blanket blanket = arrangement.blanket();
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    Markup svg = document(page);
    PiecesSvg pieces = new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket));
    pieces.pieces();
    pieces.veil(piece -> piece.state() != PieceState.JOINED, FAINT);
    pieces.lines();
    new StripLines(svg, drawing, page).write(Strips.of(blanket.layout()));
    pieces.names(ChartOptions.Signs.NONE);
    return svg.finish();
  }

  /**
   * Draws one piece alone, as large as fits a square.
   *
   * @param arrangement the arrangement
   * @param piece the piece as drawn among the others
   * @param sideMm side of the square
   * @return an SVG document
   */
  public static String piece(Arrangement arrangement, PieceDrawing piece, double sideMm) {
    ChartPage page = ChartPage.around(piece, sideMm);
    Markup svg = document(page);
    Blanket blanket = arrangement.blanket();
    Drawing alone = new Drawing(0, 0, List.of(piece));
    PiecesSvg pieces = new PiecesSvg(svg, blanket, alone, page, new Coloured(blanket));
    pieces.pieces();
    pieces.lines();
    pieces.letters();
    return svg.finish();
  }

  private static Markup document(ChartPage page, Object... attributes) {
    return document(page, OptionalDouble.empty(), attributes);
  }

  private static Markup document(ChartPage page, OptionalDouble widthMm, Object... attributes) {
    double width = widthMm.orElse(page.width());
    double height = page.height() * width / page.width();
    return Markup.svg(
        Markup.with(
            new Object[] {
              "width",
              Markup.number(width) + "mm",
              "height",
              Markup.number(height) + "mm",
              "viewBox",
              page.viewBox()
            },
            Markup.with(attributes, "font-family", FONTS)));
  }

  private static String description(Blanket blanket, Drawing drawing) {
    return "Chart of a blanket set "
        + BlanketWords.setting(blanket)
        + ": "
        + BlanketWords.pieces(blanket)
        + "; "
        + BlanketWords.size(blanket)
        + ". Every piece shows its rounds from the centre to the border and is titled with its"
        + " name and the codes of its yarns; the legend lists the yarns and their letters.";
  }
}
