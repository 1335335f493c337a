package lozengy.report.chart;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Sequences;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/** Draws several arrangements next to each other, all to one scale, as one SVG document. */
public final class ChartsSideBySide {

  private static final double MARGIN = 6;
  private static final double GAP = 8;
  private static final double HEAD = 10;
  private static final double FONT = 3;

  /** How much wider bold text is, in the widest of the common fonts. */
  private static final double BOLD = 1.2;

  /** Room in mm for the largest of them. */
  private static final double ROOM = 110;

  private static final double LINE = 0.45;
  private static final double INNER_LINE = 0.25;

  private ChartsSideBySide() {}

  /**
   * Draws them.
   *
   * @param arrangements at least one
   * @param labels what each is called
   * @return an SVG document
   */
  public static String svg(List<Arrangement> arrangements, List<String> labels) {
    List<Drawing> drawings =
        arrangements.stream().map(each -> Drawing.of(each.blanket(), each.sequences())).toList();
    double widest = drawings.stream().mapToDouble(Drawing::widthCm).max().orElseThrow();
    double highest = drawings.stream().mapToDouble(Drawing::heightCm).max().orElseThrow();
    int scale = (int) Math.max(1, Math.ceil(10 * Math.max(widest, highest) / ROOM));
    int columns = (int) Math.ceil(Math.sqrt(arrangements.size() * highest / widest));
    int rows = (arrangements.size() + columns - 1) / columns;
    // as few columns as that many rows need, so that the last row is not left nearly empty
    columns = (arrangements.size() + rows - 1) / rows;
    double cellWidth = Math.max(10 * widest / scale, ROOM / 2) + GAP;
    double[] tops = tops(drawings, columns, scale);
    double width = 2 * MARGIN + columns * cellWidth - GAP;
    double height = tops[rows] + MARGIN - GAP;
    Markup svg =
        Markup.svg(
            "width",
            Markup.number(width) + "mm",
            "height",
            Markup.number(height) + "mm",
            "viewBox",
            "0 0 " + Markup.number(width) + " " + Markup.number(height),
            "role",
            "img",
            "aria-labelledby",
            "title",
            "font-family",
            Chart.FONTS);
    svg.text("title", "Charts of " + Figures.count(labels.size(), "arrangement"), "id", "title");
    svg.empty("rect", "width", "100%", "height", "100%", "fill", Ink.LIGHT);
    for (int i = 0; i < drawings.size(); i++) {
      double left = MARGIN + i % columns * cellWidth;
      double top = tops[i / columns];
      ChartPage page = new ChartPage(scale, width, height, left, top + HEAD, height);
      svg.open("g", "id", "arrangement-" + (i + 1));
      String number = (i + 1) + "  ";
      double ems = (cellWidth - GAP) / FONT / BOLD - TextWidth.ems(number);
      String label = number + TextWidth.fitEnd(PlainText.oneLine(labels.get(i)), ems);
      head(svg, label, arrangements.get(i), left, top);
      pieces(svg, page, arrangements.get(i), drawings.get(i));
      svg.close();
    }
    return svg.finish();
  }

  /** Where each row begins, and where the last one ends with the gap below it, in mm. */
  private static double[] tops(List<Drawing> drawings, int columns, int scale) {
    int rows = (drawings.size() + columns - 1) / columns;
    double[] tops = new double[rows + 1];
    tops[0] = MARGIN;
    for (int row = 0; row < rows; row++) {
      double highest =
          drawings.subList(row * columns, Math.min(drawings.size(), (row + 1) * columns)).stream()
              .mapToDouble(Drawing::heightCm)
              .max()
              .orElseThrow();
      tops[row + 1] = tops[row] + HEAD + 10 * highest / scale + GAP;
    }
    return tops;
  }

  private static void head(
      Markup svg, String label, Arrangement arrangement, double left, double top) {
    svg.text(
        "text",
        label,
        "x",
        left,
        "y",
        top + 3,
        "font-size",
        FONT,
        "font-weight",
        "bold",
        "fill",
        Ink.DARK);
    svg.text(
        "text",
        "score " + Figures.fixed(arrangement.score().total(), 2),
        "x",
        left,
        "y",
        top + 7.5,
        "font-size",
        FONT,
        "fill",
        Ink.DARK);
  }

  private static void pieces(Markup svg, ChartPage page, Arrangement arrangement, Drawing drawing) {
    for (PieceDrawing piece : drawing.pieces()) {
      for (int round = piece.rounds().size() - 1; round >= 0; round--) {
        int yarn = piece.yarns().get(round);
        String fill =
            yarn == Sequences.OPEN ? Ink.LIGHT : arrangement.blanket().yarn(yarn).colour().hex();
        svg.empty("polygon", "points", points(page, piece.rounds().get(round)), "fill", fill);
      }
    }
    String path =
        drawing.pieces().stream()
            .map(piece -> "M" + points(page, piece.outline()) + "z")
            .collect(Collectors.joining());
    svg.empty("path", "fill", "none", "stroke", Ink.DARK, "stroke-width", LINE, "d", path);
    svg.empty("path", "fill", "none", "stroke", Ink.LIGHT, "stroke-width", INNER_LINE, "d", path);
  }

  private static String points(ChartPage page, Polygon polygon) {
    return polygon.corners().stream()
        .map(page::onPage)
        .map(at -> Markup.number(at.x()) + "," + Markup.number(at.y()))
        .collect(Collectors.joining(" "));
  }
}
