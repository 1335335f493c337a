package lozengy.report.chart;

import java.util.List;
import java.util.stream.Collectors;
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

  private static final double SHEET_HEIGHT = 268;

  /** Title and figures above the blanket. */
  private static final double HEAD = 15;

  /** Scale bar and marks below the blanket. */
  private static final double BELOW = 8.5;

  /** Notes below the legend. */
  private static final double FOOT = 5;

  /** The blanket gets this much height, however long the legend. */
  private static final double LEAST_CHART_HEIGHT = 120;

  /** Half of the widest line between pieces, and a little more. */
  private static final double LINE = 0.3;

  /** Room for the number of a strip. */
  private static final double FRAME = 7;

  /** Width left for the legend. */
  static final double CONTENT_WIDTH = SHEET_WIDTH - 2 * MARGIN;

  static ChartPage of(Drawing drawing, double legendHeight, ChartOptions options) {
    double frame = 2 * MarginNumbers.ROOM;
    double around = 2 * MARGIN + HEAD + BELOW + legendHeight + FOOT + frame;
    double room = Math.max(SHEET_HEIGHT - around, LEAST_CHART_HEIGHT);
    double edging = 2 * drawing.trim().edgingCm();
    double across = drawing.widthCm() + edging;
    double down = drawing.heightCm() + edging;
    int scale = options.scale().orElseGet(() -> fitting(across, CONTENT_WIDTH - frame, down, room));
    double width = Math.max(SHEET_WIDTH, across * 10 / scale + frame + 2 * MARGIN);
    double top = MARGIN + HEAD + MarginNumbers.ROOM + edging * 5 / scale;
    double height = around + down * 10 / scale;
    return new ChartPage(
        scale,
        width,
        height,
        (width - drawing.widthCm() * 10 / scale) / 2,
        top,
        height - MARGIN - FOOT - legendHeight);
  }

  /**
   * A page that holds the blanket alone, with its edging or half of the line around it.
   *
   * @param drawing the blanket
   * @param widthMm room in mm for its width
   * @param heightMm room in mm for its height
   */
  public static ChartPage bare(Drawing drawing, double widthMm, double heightMm) {
    double edging = 2 * drawing.trim().edgingCm();
    double across = (drawing.widthCm() + edging) * 10 / (widthMm - 2 * LINE);
    double down = (drawing.heightCm() + edging) * 10 / (heightMm - 2 * LINE);
    int scale = (int) Math.max(1, Math.ceil(Math.max(across, down) - 1e-9));
    double around = edging * 5 / scale + LINE;
    double width = drawing.widthCm() * 10 / scale + 2 * around;
    double height = drawing.heightCm() * 10 / scale + 2 * around;
    return new ChartPage(scale, width, height, around, around, height);
  }

  /** A page that holds the blanket with room all around it for numbers. */
  public static ChartPage framed(Drawing drawing, double widthMm, double heightMm) {
    ChartPage inner = bare(drawing, widthMm - 2 * FRAME, heightMm - 2 * FRAME);
    double width = inner.width + 2 * FRAME;
    double height = inner.height + 2 * FRAME;
    return new ChartPage(inner.scale, width, height, inner.left + FRAME, inner.top + FRAME, height);
  }

  /** A page that holds the blanket with its numbers, as large as a scale makes it. */
  public static ChartPage large(Drawing drawing, int scale) {
    double around = drawing.trim().edgingCm() * 10 / scale + MarginNumbers.ROOM + LINE;
    double width = drawing.widthCm() * 10 / scale + 2 * around;
    double height = drawing.heightCm() * 10 / scale + 2 * around;
    return new ChartPage(scale, width, height, around, around, height);
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

  /** The largest whole scale at which so many cm fit into mm. */
  private static int fitting(double acrossCm, double widthMm, double downCm, double heightMm) {
    return (int) Math.max(1, Math.ceil(Math.max(acrossCm * 10 / widthMm, downCm * 10 / heightMm)));
  }

  /** Bottom of the blanket with its edging and the numbers below. */
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

  /** The corners of a polygon as SVG lists them. */
  String points(Polygon polygon) {
    return polygon.corners().stream()
        .map(this::onPage)
        .map(at -> Markup.number(at.x()) + "," + Markup.number(at.y()))
        .collect(Collectors.joining(" "));
  }
}
