package lozengy.report.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import lozengy.model.score.WeakSpot;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/**
 * Marks the places that cost most on a chart: a numbered disc on a piece, or in the middle of a
 * line between two; and writes what each number stands for below the legend.
 */
final class WeakMarks {

  private static final double RADIUS = 2.1;
  private static final double FONT = 2.6;
  private static final double ROW = 4.2;
  private static final double LINE = 0.9;
  private static final double INNER_LINE = 0.35;

  /** Where on a line its disc may stand, the best place first. */
  private static final double[] PLACES = {0.5, 0.3, 0.7, 0.1, 0.9, 0, 1};

  private final Markup svg;
  private final ChartPage page;
  private final List<WeakSpot> spots;
  private final List<Point> discs = new ArrayList<>();

  WeakMarks(Markup svg, ChartPage page, List<WeakSpot> spots) {
    this.svg = svg;
    this.page = page;
    this.spots = spots;
  }

  /** Height in mm that the words of the spots take. */
  static double height(List<WeakSpot> spots) {
    return spots.isEmpty() ? 0 : (spots.size() + 1) * ROW;
  }

  /** Writes the marks over the blanket: the lines first, so that none crosses out a number. */
  void onBlanket(Drawing drawing) {
    svg.open("g", "id", "weak");
    for (WeakSpot spot : spots) {
      List<Point> at = chain(centres(spot, drawing));
      for (int i = 1; i < at.size(); i++) {
        line(at.get(i - 1), at.get(i), LINE, Ink.LIGHT);
        line(at.get(i - 1), at.get(i), INNER_LINE, Ink.DARK);
      }
    }
    for (int i = 0; i < spots.size(); i++) {
      List<Point> at = chain(centres(spots.get(i), drawing));
      if (!at.isEmpty()) {
        svg.open("g");
        svg.text("title", (i + 1) + ": " + spots.get(i).words());
        disc(i + 1, free(at.get(0), at.get(Math.min(1, at.size() - 1))));
        svg.close();
      }
    }
    svg.close();
  }

  private List<Point> centres(WeakSpot spot, Drawing drawing) {
    return spot.pieces().stream()
        .map(piece -> page.onPage(drawing.pieces().get(piece).centre()))
        .toList();
  }

  /** From the first on, always to the nearest that is left, so that lines stay short. */
  private static List<Point> chain(List<Point> points) {
    List<Point> left = new ArrayList<>(points);
    List<Point> chain = new ArrayList<>();
    while (!left.isEmpty()) {
      Point from = chain.isEmpty() ? left.get(0) : chain.get(chain.size() - 1);
      Point next = Collections.min(left, Comparator.comparingDouble(from::distance));
      left.remove(next);
      chain.add(next);
    }
    return chain;
  }

  /** A place on the line where the disc covers none that is there already, if there is such. */
  private Point free(Point start, Point end) {
    Point place = start.middle(end);
    for (double part : PLACES) {
      Point at = end.towards(start, part);
      if (discs.stream().noneMatch(other -> other.distance(at) < 2 * RADIUS)) {
        place = at;
        break;
      }
    }
    discs.add(place);
    return place;
  }

  private void line(Point from, Point to, double width, String colour) {
    svg.empty(
        "line",
        "x1",
        from.x(),
        "y1",
        from.y(),
        "x2",
        to.x(),
        "y2",
        to.y(),
        "stroke",
        colour,
        "stroke-width",
        width);
  }

  private void disc(int number, Point at) {
    svg.empty(
        "circle",
        "cx",
        at.x(),
        "cy",
        at.y(),
        "r",
        RADIUS,
        "fill",
        Ink.LIGHT,
        "stroke",
        Ink.DARK,
        "stroke-width",
        INNER_LINE);
    svg.text(
        "text",
        Integer.toString(number),
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
        Ink.DARK);
  }

  /** Writes what the numbers stand for, from a height on the page downwards. */
  void words(double top) {
    double ems = ChartPage.CONTENT_WIDTH / FONT;
    for (int i = 0; i < spots.size(); i++) {
      String nowhere = spots.get(i).pieces().isEmpty() ? ", at no single place" : "";
      String points = " (" + Figures.fixed(spots.get(i).points(), 2) + " points" + nowhere + ")";
      String words = PlainText.oneLine((i + 1) + "  " + spots.get(i).words() + points);
      svg.text(
          "text",
          TextWidth.fit(words, ems),
          "x",
          ChartPage.MARGIN,
          "y",
          top + (i + 1) * ROW,
          "font-size",
          FONT,
          "fill",
          Ink.DARK);
    }
  }
}
