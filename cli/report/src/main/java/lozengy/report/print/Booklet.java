package lozengy.report.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkSteps;
import lozengy.report.Markup;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;
import lozengy.report.chart.Drawing;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * What is taken to the sofa, as one PDF: chart, strips, shopping list, what a new plan has changed,
 * steps, piece cards. The same arrangement, paper, order and date give the same pages.
 */
public final class Booklet {

  private static final int REGULAR = 400;

  private static final String PROGRAM = "Lozengy";

  private static final String COUNT = "/Size ";

  /** What is printed where the font lacks the title's letters. */
  private static final String NO_TITLE = "Blanket";

  /** Longer titles, in font sizes, are cut. */
  private static final double LONGEST_TITLE = 90;

  private final Arrangement arrangement;
  private final Paper paper;
  private final WorkOrder order;
  private final Optional<LocalDate> date;

  private Booklet(Arrangement arrangement, Paper paper, WorkOrder order, Optional<LocalDate> date) {
    this.arrangement = arrangement;
    this.paper = paper;
    this.order = order;
    this.date = date;
  }

  /**
   * Writes the booklet.
   *
   * @param arrangement a complete arrangement
   * @param paper the paper
   * @param order by what the steps go
   * @param date the date that every page bears, if any
   * @return a PDF document: PDF/UA-1 and PDF/A-2b
   */
  public static byte[] pdf(
      Arrangement arrangement, Paper paper, WorkOrder order, Optional<LocalDate> date) {
    return new Booklet(arrangement, paper, order, date).write();
  }

  private byte[] write() {
    XRLog.setLoggingEnabled(false);
    Sheet sheet = new Sheet(Markup.html("lang", "en"), arrangement.blanket());
    String html = html(sheet);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePDDocument(document);
      builder.usePdfUaAccessibility(true);
      builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_B);
      builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
      builder.withProducer(PROGRAM);
      document.setDocumentInformation(described());
      builder.withHtmlContent(html, null);
      builder.useObjectDrawerFactory(new Pictures(sheet.pictures()));
      builder.useFont(
          new PDFontSupplier(Letters.of(document)), "Letters", REGULAR, FontStyle.NORMAL, true);
      // Nothing is loaded from anywhere, whatever the text says.
      for (ExternalResourceControlPriority priority : ExternalResourceControlPriority.values()) {
        builder.useExternalResourceAccessControl((address, type) -> false, priority);
      }
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
        date(document);
        document.setDocumentId((long) html.hashCode());
        document.save(bytes);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    return counted(bytes.toByteArray());
  }

  /**
   * The table of objects, which comes last, says how many there are. PDFBox counts the table with
   * them though it does not list it, and strict readers complain.
   */
  private static byte[] counted(byte[] pdf) {
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    int from = text.lastIndexOf(COUNT) + COUNT.length();
    int to = from;
    while (Character.isDigit(text.charAt(to))) {
      to++;
    }
    String counted = text.substring(from, to);
    String right = String.valueOf(Integer.parseInt(counted) - 1);
    // As many digits, for what follows must stay where it is.
    String padded = "0".repeat(counted.length() - right.length()) + right;
    return (text.substring(0, from) + padded + text.substring(to))
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  private static PDDocumentInformation described() {
    PDDocumentInformation information = new PDDocumentInformation();
    information.setCreator(PROGRAM);
    return information;
  }

  /**
   * Puts the booklet's date, or none, in the place of the clock's: no clock and no random number,
   * the document's id comes from what it holds. Both places that tell the date must agree.
   */
  private void date(PDDocument document) throws IOException {
    Optional<Calendar> midnight =
        date.map(day -> GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC)));
    document.getDocumentInformation().setCreationDate(midnight.orElse(null));
    PDMetadata metadata = document.getDocumentCatalog().getMetadata();
    String told = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
    String dated =
        told.replaceFirst(
            "<xmp:CreateDate>[^<]*</xmp:CreateDate>",
            date.map(day -> "<xmp:CreateDate>" + day + "T00:00:00+00:00</xmp:CreateDate>")
                .orElse(""));
    metadata.importXMPMetadata(dated.getBytes(StandardCharsets.UTF_8));
  }

  private String title() {
    return PlainText.oneLine(arrangement.blanket().brief().title());
  }

  private String html(Sheet sheet) {
    Markup html = sheet.html();
    String shown = Letters.shown(title());
    String title = TextWidth.fit(shown.isEmpty() ? NO_TITLE : shown, LONGEST_TITLE);
    html.open("head");
    html.text("title", title);
    html.empty("meta", "name", "description", "content", "What to work, step by step");
    html.verbatim("style", "@page{size:" + paper.word() + "}\n" + resource("booklet.css"));
    html.close();
    html.open("body");
    html.text("div", title, "class", "head-left");
    html.text("div", date.map(LocalDate::toString).orElse(""), "class", "head-right");
    Drawing drawing = Drawing.of(arrangement.blanket(), arrangement.sequences());
    WorkSteps steps = WorkSteps.of(arrangement, order);
    html.text("h1", title);
    new ChartPages(sheet, arrangement, drawing, paper).write();
    new PilePages(sheet, arrangement).write();
    new ChangePages(sheet, arrangement).write();
    if (order != WorkOrder.STRIP) {
      new StepPages(sheet, arrangement).write(steps);
    }
    new CardPages(sheet, arrangement, drawing).write(steps);
    html.close();
    return html.finish();
  }

  private static String resource(String name) {
    try (InputStream in = Booklet.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }
}
