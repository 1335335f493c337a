package lozengy.report.chart;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.report.Markup;

/**
 * Writes a line through the pieces of each strip, from its number outside the blanket; that of a
 * joined strip is light on dark.
 */
final class StripLines {

  private static final double HALO = 1.3;
  private static final double LINE = 0.5;
  private static final double RADIUS = 2.6;
  private static final double FONT = 2.8;

  private final Markup svg;
  private final Drawing drawing;
  private final ChartPage page;

  StripLines(Markup svg, Drawing drawing, ChartPage page) {
    this.svg = svg;
    this.drawing = drawing;
    this.page = page;
  }

  void write(List<Strip> strips) {
    svg.open(
        "g", "id", "strips", "fill", "none", "stroke-linecap", "round", "stroke-linejoin", "round");
    strips.forEach(strip -> line(strip, Ink.LIGHT, HALO));
    strips.forEach(strip -> line(strip, Ink.DARK, LINE));
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
