package lozengy.cli.report;

import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;

/**
 * The chart to lay out by, as one SVG document: the blanket to scale with every round in its yarn's
 * colour, and a legend that names every yarn. The same arrangement and options give the same text.
 */
public final class Chart {

  private static final String FONTS = "Helvetica, Arial, Liberation Sans, sans-serif";

  private Chart() {}

  /**
   * Draws an arrangement.
   *
   * @param arrangement the arrangement; rounds that are open stay white
   * @param options what to show
   * @return an SVG document
   */
  public static String svg(Arrangement arrangement, ChartOptions options) {
    Blanket blanket = arrangement.blanket();
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    Legend legend = new Legend(arrangement, ChartPage.CONTENT_WIDTH);
    ChartPage page = ChartPage.of(drawing, legend.height(), options);
    Markup svg = document(page, "role", "img", "aria-labelledby", "title description");
    svg.text("title", blanket.brief().title(), "id", "title");
    svg.text("desc", description(blanket, drawing), "id", "description");
    svg.empty("rect", "width", "100%", "height", "100%", "fill", Ink.LIGHT);
    ChartFurniture furniture = new ChartFurniture(svg, page, blanket);
    furniture.head(drawing);
    new PiecesSvg(svg, blanket, drawing, page, new Coloured(blanket)).write(options);
    furniture.scaleBar(drawing);
    furniture.marks();
    furniture.legend(legend);
    return svg.finish();
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

  private static Markup document(ChartPage page, Object... attributes) {
    return Markup.svg(
        Markup.with(
            new Object[] {
              "width",
              Markup.number(page.width()) + "mm",
              "height",
              Markup.number(page.height()) + "mm",
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
        + BlanketWords.size(drawing.widthCm(), drawing.heightCm())
        + ". Every piece shows its rounds from the centre to the border and is titled with its"
        + " name and the codes of its yarns; the legend lists the yarns.";
  }
}
