package lozengy.report.print;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import lozengy.model.arrangement.Arrangement;
import lozengy.report.PlainText;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.chart.ChartPage;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.SheetMarks;
import lozengy.report.chart.SheetPlan;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * The chart on paper, as large as its letters need to be read: the whole on the first sheet, then
 * its parts on sheets that overlap. The same arrangement and paper give the same pages.
 */
public final class ChartSheets {

  private static final double MARGIN_MM = 10;
  private static final double POINTS_PER_MM = 72 / 25.4;

  private final PDDocument document;
  private final Paper paper;

  private ChartSheets(PDDocument document, Paper paper) {
    this.document = document;
    this.paper = paper;
  }

  /**
   * Writes the sheets.
   *
   * @param arrangement a complete arrangement
   * @param paper the paper
   * @return a PDF document
   */
  public static byte[] pdf(Arrangement arrangement, Paper paper) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      new ChartSheets(document, paper).write(arrangement);
      document.save(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    return bytes.toByteArray();
  }

  private void write(Arrangement arrangement) throws IOException {
    String title = PlainText.oneLine(arrangement.blanket().brief().title());
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(title);
    information.setCreator("Lozengy");
    document.setDocumentInformation(information);
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    int scale = Chart.legibleScale(arrangement, drawing);
    ChartPage page = ChartPage.large(drawing, scale);
    double width = paper.widthMm() - 2 * MARGIN_MM;
    double height = paper.heightMm() - 2 * MARGIN_MM - SheetMarks.HEAD;
    SheetPlan plan = new SheetPlan(page.width(), page.height(), width, height);
    String whole = Chart.svg(arrangement, ChartOptions.PLAIN);
    // no clock and no random number: the document's id comes from what it holds
    document.setDocumentId((long) whole.hashCode());
    overview(whole);
    PDFormXObject chart =
        form(Picture.of(Chart.large(arrangement, drawing, page)), page.width(), page.height());
    for (SheetPlan.Tile tile : plan.tiles()) {
      String marks = SheetMarks.svg(plan, tile, title, scale);
      PDFormXObject around = form(Picture.of(marks), width, height + SheetMarks.HEAD);
      try (PDPageContentStream content = page()) {
        content.saveGraphicsState();
        content.addRect(points(MARGIN_MM), points(MARGIN_MM), points(width), points(height));
        content.clip();
        // in PDF y runs upwards
        double up = MARGIN_MM + height - (page.height() - tile.top());
        draw(content, chart, MARGIN_MM - tile.left(), up);
        content.restoreGraphicsState();
        draw(content, around, MARGIN_MM, MARGIN_MM);
      }
    }
  }

  private void overview(String svg) throws IOException {
    Picture picture = Picture.of(svg);
    double part =
        Math.min(
            1,
            Math.min(
                (paper.widthMm() - MARGIN_MM) / picture.widthMm(),
                (paper.heightMm() - MARGIN_MM) / picture.heightMm()));
    double width = picture.widthMm() * part;
    double height = picture.heightMm() * part;
    try (PDPageContentStream content = page()) {
      double left = (paper.widthMm() - width) / 2;
      draw(content, form(picture, width, height), left, paper.heightMm() - MARGIN_MM / 2 - height);
    }
  }

  private PDPageContentStream page() throws IOException {
    PDPage page = new PDPage(new PDRectangle(points(paper.widthMm()), points(paper.heightMm())));
    document.addPage(page);
    return new PDPageContentStream(document, page);
  }

  private PDFormXObject form(Picture picture, double widthMm, double heightMm) throws IOException {
    float width = points(widthMm);
    float height = points(heightMm);
    PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
    try {
      picture.draw(graphics, width, height);
    } finally {
      graphics.dispose();
    }
    return graphics.getXFormObject();
  }

  private static void draw(
      PDPageContentStream content, PDFormXObject form, double leftMm, double bottomMm)
      throws IOException {
    content.saveGraphicsState();
    content.transform(Matrix.getTranslateInstance(points(leftMm), points(bottomMm)));
    content.drawForm(form);
    content.restoreGraphicsState();
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }
}
