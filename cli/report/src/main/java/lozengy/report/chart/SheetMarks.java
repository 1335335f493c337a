package lozengy.report.chart;

import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/**
 * What stands around a part of the chart on its sheet: which it is, and where its neighbours lie.
 */
public final class SheetMarks {

  /** Height of the words above the part, in mm. */
  public static final double HEAD = 12;

  private static final double FONT = 3;
  private static final double SMALL_FONT = 2.4;
  private static final double LINE = 0.25;
  private static final double MAP = 9;

  private SheetMarks() {}

  /**
   * Writes them.
   *
   * @param plan all sheets
   * @param tile the one
   * @param title what the blanket is called
   * @param scale n of the scale 1:n
   * @return an SVG document as large as the part and the words above it
   */
  public static String svg(SheetPlan plan, SheetPlan.Tile tile, String title, int scale) {
    double width = plan.sheetWidthMm();
    double height = plan.sheetHeightMm() + HEAD;
    Markup svg =
        Markup.svg(
            "width",
            Markup.number(width) + "mm",
            "height",
            Markup.number(height) + "mm",
            "viewBox",
            "0 0 " + Markup.number(width) + " " + Markup.number(height),
            "font-family",
            Chart.FONTS);
    int number = number(plan, tile.row(), tile.column());
    String words =
        "Sheet "
            + number
            + " of "
            + plan.rows() * plan.columns()
            + ". Scale 1:"
            + scale
            + ". Dashed lines: lay the next sheet's edge there, "
            + Figures.fixed(SheetPlan.OVERLAP, 0)
            + " mm overlap.";
    double ems = (width - MAP - 4) / FONT;
    String head = TextWidth.fit(PlainText.oneLine(title), ems);
    svg.text("text", head, "y", 4, "font-size", FONT, "font-weight", "bold", "fill", Ink.DARK);
    svg.text("text", words, "y", 8, "font-size", SMALL_FONT, "fill", ChartFurniture.QUIET);
    map(svg, plan, tile);
    double right = width - SheetPlan.OVERLAP;
    double bottom = height - SheetPlan.OVERLAP;
    if (tile.column() > 0) {
      mark(svg, SheetPlan.OVERLAP, HEAD, SheetPlan.OVERLAP, height, number - 1);
    }
    if (tile.column() < plan.columns() - 1) {
      mark(svg, right, HEAD, right, height, number + 1);
    }
    if (tile.row() > 0) {
      double y = HEAD + SheetPlan.OVERLAP;
      mark(svg, 0, y, width, y, number - plan.columns());
    }
    if (tile.row() < plan.rows() - 1) {
      mark(svg, 0, bottom, width, bottom, number + plan.columns());
    }
    return svg.finish();
  }

  private static int number(SheetPlan plan, int row, int column) {
    return row * plan.columns() + column + 1;
  }

  /** Where the neighbour ends that shows the same up to here, with its number at both ends. */
  private static void mark(
      Markup svg, double fromX, double fromY, double toX, double toY, int neighbour) {
    String path =
        "M"
            + Markup.number(fromX)
            + " "
            + Markup.number(fromY)
            + "L"
            + Markup.number(toX)
            + " "
            + Markup.number(toY);
    svg.empty("path", "d", path, "stroke", Ink.LIGHT, "stroke-width", 3 * LINE);
    svg.empty(
        "path",
        "class",
        "overlap",
        "d",
        path,
        "stroke",
        Ink.DARK,
        "stroke-width",
        LINE,
        "stroke-dasharray",
        "3 2");
    for (double part : new double[] {0.03, 0.97}) {
      double x = fromX + (toX - fromX) * part;
      double y = fromY + (toY - fromY) * part;
      svg.empty(
          "circle",
          "cx",
          x,
          "cy",
          y,
          "r",
          2.2,
          "fill",
          Ink.LIGHT,
          "stroke",
          Ink.DARK,
          "stroke-width",
          LINE);
      svg.text(
          "text",
          Integer.toString(neighbour),
          "x",
          x,
          "y",
          y + SMALL_FONT * Label.CAP_HEIGHT / 2,
          "font-size",
          SMALL_FONT,
          "text-anchor",
          "middle",
          "fill",
          Ink.DARK);
    }
  }

  /** All sheets in small, this one dark. */
  private static void map(Markup svg, SheetPlan plan, SheetPlan.Tile tile) {
    double cell = MAP / Math.max(plan.columns(), plan.rows());
    double left = plan.sheetWidthMm() - cell * plan.columns() - 0.5;
    for (SheetPlan.Tile each : plan.tiles()) {
      svg.empty(
          "rect",
          "x",
          left + each.column() * cell,
          "y",
          0.5 + each.row() * cell,
          "width",
          cell,
          "height",
          cell,
          "fill",
          each.equals(tile) ? Ink.DARK : Ink.LIGHT,
          "stroke",
          Ink.DARK,
          "stroke-width",
          LINE);
    }
  }
}
