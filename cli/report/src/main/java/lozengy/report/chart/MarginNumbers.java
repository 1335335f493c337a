package lozengy.report.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import lozengy.model.layout.PieceKind;
import lozengy.report.Markup;

/**
 * Numbers the rows at both sides, and the squares within them above and below, so that a piece is
 * found by its name. On point the squares of every other row lie between those of the others: then
 * those of odd rows are numbered above, those of even rows below.
 */
final class MarginNumbers {

  /** Room in mm that the numbers take on each side. */
  static final double ROOM = 4.4;

  private static final double FONT = 2.3;
  private static final double CLOSE_FONT = 1.9;

  /** Numbers nearer to each other than this, in mm, are left out but for some. */
  private static final double LEAST_STEP = 2.7;

  private static final int SOME = 5;

  private final Markup svg;
  private final Drawing drawing;
  private final ChartPage page;

  MarginNumbers(Markup svg, Drawing drawing, ChartPage page) {
    this.svg = svg;
    this.drawing = drawing;
    this.page = page;
  }

  /** Whether the squares of all rows lie below each other. */
  static boolean aligned(Drawing drawing) {
    return columns(drawing).size() < 2;
  }

  /** The centres of the squares by row, from the top, and within a row from the left. */
  private static List<List<Point>> rows(Drawing drawing) {
    Map<Integer, List<PieceDrawing>> rows = new TreeMap<>();
    drawing.pieces().stream()
        .filter(piece -> piece.place().kind() == PieceKind.SQUARE)
        .forEach(
            piece -> rows.computeIfAbsent(piece.place().y(), y -> new ArrayList<>()).add(piece));
    return rows.values().stream()
        .map(row -> row.stream().map(PieceDrawing::centre).toList())
        .toList();
  }

  /** One row of every kind that differs in where its squares lie. */
  private static List<List<Point>> columns(Drawing drawing) {
    Map<TreeSet<Long>, List<Point>> kinds = new LinkedHashMap<>();
    for (List<Point> row : rows(drawing)) {
      TreeSet<Long> at = new TreeSet<>();
      row.forEach(point -> at.add(Math.round(point.x() * 1e4)));
      kinds.putIfAbsent(at, row);
    }
    return List.copyOf(kinds.values());
  }

  void write() {
    double edging = page.onPage(drawing.trim().edgingCm());
    double away = edging + 1.3;
    Point first = page.onPage(new Point(0, 0));
    Point last = page.onPage(new Point(drawing.widthCm(), drawing.heightCm()));
    svg.open("g", "id", "numbers", "fill", ChartFurniture.QUIET);
    List<List<Point>> rows = rows(drawing);
    List<Double> heights = rows.stream().map(row -> page.onPage(row.get(0)).y()).toList();
    numbers(heights, true, "end", first.x() - away);
    numbers(heights, true, "start", last.x() + away);
    List<List<Point>> columns = columns(drawing);
    numbers(across(columns.get(0)), false, "middle", first.y() - away);
    double below = last.y() + away + FONT * Label.CAP_HEIGHT;
    numbers(across(columns.get(columns.size() - 1)), false, "middle", below);
    svg.close();
  }

  private List<Double> across(List<Point> row) {
    return row.stream().map(point -> page.onPage(point).x()).toList();
  }

  private void numbers(List<Double> places, boolean upright, String anchor, double beside) {
    double step = places.size() < 2 ? FONT * 2 : places.get(1) - places.get(0);
    double font = step < FONT * 1.5 ? CLOSE_FONT : FONT;
    svg.open("g", "text-anchor", anchor, "font-size", font);
    for (int i = 0; i < places.size(); i++) {
      boolean some = i == 0 || (i + 1) % SOME == 0;
      if (step >= LEAST_STEP || some) {
        double x = upright ? beside : places.get(i);
        double y = upright ? places.get(i) + font * Label.CAP_HEIGHT / 2 : beside;
        svg.text("text", Integer.toString(i + 1), "x", x, "y", y);
      }
    }
    svg.close();
  }
}
