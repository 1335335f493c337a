package lozengy.report.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
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
    if (options.bare()) {
      return picture(arrangement, drawing, options, widthMm);
    }
    Legend legend = new Legend(arrangement, ChartPage.CONTENT_WIDTH);
    List<WeakSpot> weak = options.weak() ? weakSpots(arrangement) : List.of();
    // how many lines of notes there are depends on the scale, and that on their height
    int most = ChartNotes.of(blanket, drawing, legend, 1, true).size();
    double foot = (most - 1) * ChartFurniture.NOTE;
    ChartPage page =
        ChartPage.of(drawing, legend.height() + WeakMarks.height(weak) + foot, options);
    Markup svg = document(page, widthMm, "role", "img", "aria-labelledby", "title description");
    svg.text("title", blanket.brief().title(), "id", "title");
    svg.text("desc", description(blanket), "id", "description");
    svg.empty("rect", "width", "100%", "height", "100%", "fill", Ink.LIGHT);
    ChartFurniture furniture = new ChartFurniture(svg, page, blanket);
    furniture.head();
    PiecesSvg pieces = new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket));
    pieces.write(options);
    Set<Integer> changed = ChangedPieces.since(arrangement);
    ChangedMarks.write(svg, page, drawing, changed);
    new MarginNumbers(svg, drawing, page).write();
    furniture.scaleBar(drawing);
    Optional<String> told = Optional.of("changed (" + changed.size() + ")");
    furniture.states(drawing, told.filter(words -> !changed.isEmpty()));
    furniture.legend(legend);
    boolean letters = options.signs() == ChartOptions.Signs.LETTERS;
    furniture.notes(ChartNotes.of(blanket, drawing, legend, pieces.withoutLetters(), letters));
    if (options.weak()) {
      WeakMarks marks = new WeakMarks(svg, page, weak);
      marks.onBlanket(drawing);
      marks.words(page.legendTop() + legend.height());
    }
    return svg.finish();
  }

  /** The blanket and nothing else. */
  private static String picture(
      Arrangement arrangement, Drawing drawing, ChartOptions options, OptionalDouble widthMm) {
    ChartPage page = ChartPage.bare(drawing, ChartPage.CONTENT_WIDTH, ChartPage.CONTENT_WIDTH * 10);
    Blanket blanket = arrangement.blanket();
    Markup svg = document(page, widthMm, "role", "img", "aria-labelledby", "title");
    svg.text("title", blanket.brief().title(), "id", "title");
    ChartOptions silent =
        new ChartOptions(false, ChartOptions.Signs.NONE, options.scale()).withLook(options.look());
    new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket)).write(silent);
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
   * Draws the blanket flat with letters, names and numbers, to be split over sheets: that takes
   * less ink, and a file of a size that can be sent.
   *
   * @param arrangement the arrangement
   * @param drawing the same as polygons
   * @param page how large it is drawn
   * @return an SVG document
   */
  public static String large(Arrangement arrangement, Drawing drawing, ChartPage page) {
    Blanket blanket = arrangement.blanket();
    Markup svg = document(page);
    ChartOptions options =
        new ChartOptions(true, ChartOptions.Signs.LETTERS, OptionalInt.empty())
            .withLook(ChartOptions.Look.FLAT);
    new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket)).write(options);
    ChangedMarks.write(svg, page, drawing, ChangedPieces.since(arrangement));
    new MarginNumbers(svg, drawing, page).write();
    return svg.finish();
  }

  /** The n of the smallest scale 1:n at which every letter can be read well. */
  public static int legibleScale(Arrangement arrangement, Drawing drawing) {
    return PiecesSvg.legibleScale(arrangement.blanket(), drawing);
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
    pieces.namesAcross();
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
    Drawing alone = new Drawing(0, 0, List.of(piece.asPlanned()), Trim.of(blanket));
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

  private static String description(Blanket blanket) {
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
