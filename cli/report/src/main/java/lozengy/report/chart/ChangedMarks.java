package lozengy.report.chart;

import java.util.Set;
import lozengy.report.Markup;

/** An outline within each piece that has changed: bright on dark, it shows in grey as well. */
final class ChangedMarks {

  private static final String BRIGHT = "#ffd84a";

  /** Width of the line as a part of the piece's inradius, at least so many mm. */
  private static final double LINE = 0.09;

  private static final double LEAST = 0.2;

  private ChangedMarks() {}

  static void write(Markup svg, ChartPage page, Drawing drawing, Set<Integer> pieces) {
    if (pieces.isEmpty()) {
      return;
    }
    svg.open("g", "class", "changed-pieces");
    for (PieceDrawing piece : drawing.pieces()) {
      if (pieces.contains(piece.place().index())) {
        double inradius = page.onPage(piece.outline().inradiusCm());
        double width = Math.max(LEAST, LINE * inradius);
        Polygon inset = piece.outline().scaled(piece.centre(), 1 - 1.3 * width / inradius);
        outline(svg, page.points(inset), width);
      }
    }
    svg.close();
  }

  static void outline(Markup svg, String points, double width) {
    for (boolean dark : new boolean[] {true, false}) {
      svg.empty(
          "polygon",
          "class",
          "changed",
          "points",
          points,
          "fill",
          "none",
          "stroke-linejoin",
          "round",
          "stroke",
          dark ? Ink.DARK : BRIGHT,
          "stroke-width",
          dark ? 2.2 * width : 1.1 * width);
    }
  }
}
