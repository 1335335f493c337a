package lozengy.report.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.report.Samples;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.SheetMarks;
import lozengy.report.chart.SheetPlan;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

class ChartSheetsTest {

  private static final float DOTS_PER_INCH = 50.8f;
  private static final double DOTS_PER_MM = 2;
  private static final double MARGIN = 10;

  private final Arrangement arrangement =
      Samples.filled(
          Samples.brief("Sheets", Samples.straight(24, 3), Samples.yarns(), List.of()), 4);

  /** The middle of every piece's border is on a sheet, in its yarn. */
  @Test
  void sheetsHoldEveryPiece() throws Exception {
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    ChartPage page = ChartPage.large(drawing, Chart.legibleScale(arrangement, drawing));
    double width = Paper.A4.widthMm() - 2 * MARGIN;
    double height = Paper.A4.heightMm() - 2 * MARGIN - SheetMarks.HEAD;
    SheetPlan plan = new SheetPlan(page.width(), page.height(), width, height);
    byte[] pdf = ChartSheets.pdf(arrangement, Paper.A4);
    assertTrue(plan.tiles().size() > 1, "one sheet does not tell much");
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals(1 + plan.tiles().size(), document.getNumberOfPages());
      PDFRenderer renderer = new PDFRenderer(document);
      int[] seen = new int[drawing.pieces().size()];
      for (int i = 0; i < plan.tiles().size(); i++) {
        SheetPlan.Tile tile = plan.tiles().get(i);
        BufferedImage sheet = renderer.renderImageWithDPI(i + 1, DOTS_PER_INCH);
        for (int piece = 0; piece < seen.length; piece++) {
          // on the border, a quarter along the side on the right: clear of letters and names
          var outline = drawing.pieces().get(piece).outline().corners();
          double band = drawing.pieces().get(piece).bandCm() / 2;
          double right = (outline.get(1).x() - band) * 10 / page.scale() + page.left();
          double down =
              (outline.get(1).y() * 0.6 + outline.get(2).y() * 0.4) * 10 / page.scale()
                  + page.top();
          double x = right - tile.left();
          double y = down - tile.top();
          // clear of the marks, which stand where there is a neighbour
          double left = tile.column() > 0 ? 12 : 0;
          double end = tile.column() < plan.columns() - 1 ? 12 : 0;
          if (x > left && x < width - end && y > 0 && y < height) {
            int dot =
                sheet.getRGB(
                    (int) ((MARGIN + x) * DOTS_PER_MM),
                    (int) ((MARGIN + SheetMarks.HEAD + y) * DOTS_PER_MM));
            int yarn = arrangement.sequences().border(piece);
            assertEquals(
                arrangement.blanket().yarn(yarn).colour().hex(),
                String.format(java.util.Locale.ROOT, "#%06x", dot & 0xffffff),
                drawing.pieces().get(piece).place().name());
            seen[piece]++;
          }
        }
      }
      long told = java.util.Arrays.stream(seen).filter(count -> count > 0).count();
      // but for those that lie beneath the marks on both sheets
      assertTrue(told >= seen.length * 9 / 10, told + " of " + seen.length);
    }
  }

  @Test
  void theSameArrangementGivesTheSameBytes() {
    assertArrayEquals(
        ChartSheets.pdf(arrangement, Paper.LETTER), ChartSheets.pdf(arrangement, Paper.LETTER));
  }
}
