package lozengy.report.chart;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.report.Markup;

/**
 * Writes an arrow through the pieces of each strip, from its number outside the blanket; that of a
 * joined strip is light on dark.
 */
public final class StripLines {

  private static final double HALO = 1.3;
  private static final double LINE = 0.5;
  private static final double RADIUS = 2.6;
  private static final double FONT = 2.8;
  private static final double HEAD = 2.4;

  private final Markup svg;
  private final Drawing drawing;
  private final ChartPage page;

  /** Makes a writer of lines on a drawing. */
  public StripLines(Markup svg, Drawing drawing, ChartPage page) {
    this.svg = svg;
    this.drawing = drawing;
    this.page = page;
  }

  /** Writes the strips alone over the pieces' outlines. */
  public void diagram(List<Strip> strips) {
    String outlines =
        drawing.pieces().stream()
            .map(
                piece ->
                    "M"
                        + piece.outline().corners().stream()
                            .map(page::onPage)
                            .map(StripLines::at)
                            .collect(Collectors.joining("L"))
                        + "z")
            .collect(Collectors.joining());
    svg.empty("path", "class", "ground", "d", outlines);
    write(strips);
  }

  void write(List<Strip> strips) {
    svg.open(
        "g",
        "class",
        "strips",
        "fill",
        "none",
        "stroke-linecap",
        "round",
        "stroke-linejoin",
        "round");
    strips.forEach(strip -> line(strip, Ink.LIGHT, HALO));
    strips.forEach(strip -> line(strip, Ink.DARK, LINE));
    strips.forEach(this::head);
    svg.close();
    strips.forEach(this::number);
  }

  private void line(Strip strip, String colour, double width) {
    String points =
        strip.pieces().stream()
            .map(this::middle)
            .map(StripLines::at)
            .collect(Collectors.joining("L"));
    String path = "M" + at(outside(strip)) + "L" + points;
    svg.empty("path", "d", path, "stroke", colour, "stroke-width", width);
  }

  /** The head of the arrow, in the strip's last piece. */
  private void head(Strip strip) {
    List<Place> pieces = strip.pieces();
    Point end = middle(pieces.get(pieces.size() - 1));
    Point before = pieces.size() > 1 ? middle(pieces.get(pieces.size() - 2)) : outside(strip);
    double length = Math.hypot(end.x() - before.x(), end.y() - before.y());
    double alongX = (end.x() - before.x()) / length * HEAD;
    double alongY = (end.y() - before.y()) / length * HEAD;
    Point left = new Point(end.x() - alongX - alongY / 2, end.y() - alongY + alongX / 2);
    Point right = new Point(end.x() - alongX + alongY / 2, end.y() - alongY - alongX / 2);
    svg.empty(
        "path",
        "d",
        "M" + at(end) + "L" + at(left) + "L" + at(right) + "z",
        "fill",
        Ink.DARK,
        "stroke",
        Ink.LIGHT,
        "stroke-width",
        LINE / 2);
  }

  private void number(Strip strip) {
    Point at = outside(strip);
    boolean joined =
        strip.pieces().stream()
            .allMatch(place -> drawing.pieces().get(place.index()).state() == PieceState.JOINED);
    svg.empty(
        "circle",
        "cx",
        at.x(),
        "cy",
        at.y(),
        "r",
        RADIUS,
        "fill",
        joined ? Ink.DARK : Ink.LIGHT,
        "stroke",
        Ink.DARK,
        "stroke-width",
        LINE);
    svg.text(
        "text",
        Integer.toString(strip.number()),
        "x",
        at.x(),
        "y",
        at.y() + FONT * Label.CAP_HEIGHT / 2,
        "font-size",
        FONT,
        "font-weight",
        "bold",
        "text-anchor",
        "middle",
        "fill",
        joined ? Ink.LIGHT : Ink.DARK);
  }

  /** Left of the blanket, or below it for a strip that begins there. */
  private Point outside(Strip strip) {
    Place first = strip.pieces().get(0);
    Point middle = middle(first);
    Point corner = page.onPage(new Point(0, drawing.heightCm()));
    return first.x() <= 1
        ? new Point(corner.x() - RADIUS - 1, middle.y())
        : new Point(middle.x(), corner.y() + RADIUS + 1);
  }

  private Point middle(Place place) {
    return page.onPage(drawing.pieces().get(place.index()).centre());
  }

  private static String at(Point point) {
    return Markup.number(point.x()) + " " + Markup.number(point.y());
  }
}
