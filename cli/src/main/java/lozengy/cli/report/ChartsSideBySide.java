package lozengy.cli.report;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Sequences;

/** Draws several arrangements next to each other, all to one scale, as one SVG document. */
public final class ChartsSideBySide {

  private static final double MARGIN = 6;
  private static final double GAP = 8;
  private static final double HEAD = 10;
  private static final double FONT = 3;

  /** Room in mm for the largest of them. */
  private static final double ROOM = 110;

  private static final double LINE = 0.25;

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
    columns =
        Math.min(columns + (columns * columns < arrangements.size() ? 1 : 0), arrangements.size());
    double cellWidth = Math.max(10 * widest / scale, ROOM / 2) + GAP;
    double cellHeight = 10 * highest / scale + HEAD + GAP;
    int rows = (arrangements.size() + columns - 1) / columns;
    double width = 2 * MARGIN + columns * cellWidth - GAP;
    double height = 2 * MARGIN + rows * cellHeight - GAP;
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
      double top = MARGIN + i / columns * cellHeight;
      ChartPage page = new ChartPage(scale, width, height, left, top + HEAD, height);
      svg.open("g", "id", "arrangement-" + (i + 1));
      head(svg, labels.get(i), arrangements.get(i), left, top, (cellWidth - GAP) / FONT);
      pieces(svg, page, arrangements.get(i), drawings.get(i));
      svg.close();
    }
    return svg.finish();
  }

  private static void head(
      Markup svg, String label, Arrangement arrangement, double left, double top, double ems) {
    svg.text(
        "text",
        TextWidth.fit(PlainText.oneLine(label), ems),
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
    svg.empty("path", "fill", "none", "stroke", Ink.LIGHT, "stroke-width", LINE, "d", path);
  }

  private static String points(ChartPage page, Polygon polygon) {
    return polygon.corners().stream()
        .map(page::onPage)
        .map(at -> Markup.number(at.x()) + "," + Markup.number(at.y()))
        .collect(Collectors.joining(" "));
  }
}
