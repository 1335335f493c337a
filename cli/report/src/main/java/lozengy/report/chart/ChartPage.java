package lozengy.report.chart;

import java.util.List;
import lozengy.report.Markup;

/**
 * Where things stand on the page of a chart; all in mm. The page is as wide as suits both A4 and
 * letter paper and, at a scale chosen here, no higher than either unless the legend is very long.
 *
 * @param scale n of the scale 1:n
 * @param width width of the page
 * @param height height of the page
 * @param left left of the blanket
 * @param top top of the blanket
 * @param legendTop top of the legend
 */
public record ChartPage(
    int scale, double width, double height, double left, double top, double legendTop) {

  static final double MARGIN = 6;

  /** Printable on both A4 (210 x 297) and letter paper (216 x 279) at full size. */
  private static final double SHEET_WIDTH = 196;

  private static final double SHEET_HEIGHT = 265;

  /** Title and figures above the blanket. */
  private static final double HEAD = 16;

  /** Scale bar and marks below the blanket. */
  private static final double BELOW = 11;

  /** Notes below the legend. */
  private static final double FOOT = 6;

  /** The blanket gets this much height, however long the legend. */
  private static final double LEAST_CHART_HEIGHT = 120;

  /** Half of the widest line between pieces, and a little more. */
  private static final double LINE = 0.3;

  /** Room for the number of a strip. */
  private static final double FRAME = 7;

  /** Width left for the legend. */
  static final double CONTENT_WIDTH = SHEET_WIDTH - 2 * MARGIN;

  static ChartPage of(Drawing drawing, double legendHeight, ChartOptions options) {
    double around = 2 * MARGIN + HEAD + BELOW + legendHeight + FOOT;
    double room = Math.max(SHEET_HEIGHT - around, LEAST_CHART_HEIGHT);
    int scale = options.scale().orElseGet(() -> fitting(drawing, room));
    double chartWidth = drawing.widthCm() * 10 / scale;
    double chartHeight = drawing.heightCm() * 10 / scale;
    double width = Math.max(SHEET_WIDTH, chartWidth + 2 * MARGIN);
    double top = MARGIN + HEAD;
    return new ChartPage(
        scale,
        width,
        around + chartHeight,
        (width - chartWidth) / 2,
        top,
        top + chartHeight + BELOW);
  }

  /**
   * A page that holds the blanket alone, with room for half of the line around it.
   *
   * @param drawing the blanket
   * @param widthMm room in mm for its width
   * @param heightMm room in mm for its height
   */
  public static ChartPage bare(Drawing drawing, double widthMm, double heightMm) {
    double across = drawing.widthCm() * 10 / (widthMm - 2 * LINE);
    double down = drawing.heightCm() * 10 / (heightMm - 2 * LINE);
    int scale = (int) Math.max(1, Math.ceil(Math.max(across, down) - 1e-9));
    double width = drawing.widthCm() * 10 / scale + 2 * LINE;
    double height = drawing.heightCm() * 10 / scale + 2 * LINE;
    return new ChartPage(scale, width, height, LINE, LINE, height);
  }

  /** A page that holds the blanket with room all around it for numbers. */
  public static ChartPage framed(Drawing drawing, double widthMm, double heightMm) {
    ChartPage inner = bare(drawing, widthMm - 2 * FRAME, heightMm - 2 * FRAME);
    double width = inner.width + 2 * FRAME;
    double height = inner.height + 2 * FRAME;
    return new ChartPage(inner.scale, width, height, inner.left + FRAME, inner.top + FRAME, height);
  }

  /** A square page that holds one piece of the blanket in its middle. */
  static ChartPage around(PieceDrawing piece, double sideMm) {
    List<Point> corners = piece.outline().corners();
    double left = corners.stream().mapToDouble(Point::x).min().orElseThrow();
    double right = corners.stream().mapToDouble(Point::x).max().orElseThrow();
    double top = corners.stream().mapToDouble(Point::y).min().orElseThrow();
    double bottom = corners.stream().mapToDouble(Point::y).max().orElseThrow();
    double largestMm = 10 * Math.max(right - left, bottom - top);
    int scale = (int) Math.max(1, Math.ceil(largestMm / (sideMm - 2 * LINE) - 1e-9));
    return new ChartPage(
        scale,
        sideMm,
        sideMm,
        (sideMm - 10 * (left + right) / scale) / 2,
        (sideMm - 10 * (top + bottom) / scale) / 2,
        sideMm);
  }

  /** What an SVG document of this page shows. */
  public String viewBox() {
    return "0 0 " + Markup.number(width) + " " + Markup.number(height);
  }

  /** The largest whole scale at which the blanket fits. */
  private static int fitting(Drawing drawing, double room) {
    double across = drawing.widthCm() * 10 / CONTENT_WIDTH;
    double down = drawing.heightCm() * 10 / room;
    return (int) Math.max(1, Math.ceil(Math.max(across, down)));
  }

  /** Bottom of the blanket. */
  double bottom() {
    return legendTop - BELOW;
  }

  /** A point of the blanket on the page. */
  Point onPage(Point cm) {
    return new Point(left + cm.x() * 10 / scale, top + cm.y() * 10 / scale);
  }

  /** A length of the blanket in cm on the page in mm. */
  double onPage(double cm) {
    return cm * 10 / scale;
  }

  /** A length on the page in mm on the blanket in cm. */
  double onBlanketCm(double mm) {
    return mm * scale / 10;
  }
}
