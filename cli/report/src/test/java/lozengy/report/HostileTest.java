package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.WorkOrder;
import lozengy.report.chart.Chart;
import lozengy.report.chart.ChartOptions;
import lozengy.report.page.Page;
import lozengy.report.print.Booklet;
import lozengy.report.print.Paper;
import lozengy.report.print.Picture;
import lozengy.report.tables.Tables;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Text that means to break something goes through every format. */
class HostileTest {

  private static final int NAMED = 4;

  static List<String> texts() {
    return List.of(
        "</title></style></script><script>hacked()</script><img src=x onerror=hacked()>",
        "\"><svg/onload=hacked()>'&amp;&#0;<!-- ]]> <![CDATA[",
        "=HYPERLINK(\"x\",\"y\")",
        "a\u0000b\u0007c\u001b[31m\u009bd\r\ne\tf\u007f",
        "\u202e\u2066right to left\u200f \u05e9\u05dc\u05d5\u05dd \ufeff",
        "\ud800 half a pair, \uffff and \udbff\udfff",
        "}{;@import 'x';--y:red;/*",
        "${1+1} #{x} %n %s {{x}} `x` $(x)",
        "\u6f5f\u0301\u0489 \ud83e\uddf6",
        "long ".repeat(2000),
        "W".repeat(10_000),
        " ");
  }

  /** The yarns so named are joined and edged with and are of every use. */
  private static Arrangement with(String text) {
    return Samples.named(text, Collections.nCopies(NAMED, text));
  }

  private static Document xml(String text) throws Exception {
    return DocumentBuilderFactory.newDefaultInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text)));
  }

  private static int elements(Document document) {
    return document.getElementsByTagName("*").getLength();
  }

  private static void isHarmless(String text) {
    assertTrue(
        text.codePoints()
            .noneMatch(
                c ->
                    c != '\n' && Character.getType(c) == Character.CONTROL
                        || c >= 0x202a && c <= 0x202e
                        || c >= 0x2066 && c <= 0x2069),
        "no character that steers a display is left");
  }

  @ParameterizedTest
  @MethodSource("texts")
  void textFormatsKeepTheirShape(String text) throws Exception {
    Arrangement odd = with(text);
    Arrangement tame = with("tame");
    String chart = Chart.svg(odd, ChartOptions.PLAIN);
    assertEquals(elements(xml(Chart.svg(tame, ChartOptions.PLAIN))), elements(xml(chart)));
    String graph = GraphMl.text(odd);
    assertEquals(elements(xml(GraphMl.text(tame))), elements(xml(graph)));
    String page = Page.html(odd, text);
    String tamePage = Page.html(tame, "tame");
    assertEquals(tamePage.split("<[a-z/!]", -1).length, page.split("<[a-z/!]", -1).length);
    String summary = Summary.text(odd, Optional.of(text));
    List.of(chart, graph, page, summary).forEach(HostileTest::isHarmless);
    Tables.files(odd)
        .forEach(
            (name, bytes) ->
                isHarmless(new String(bytes, StandardCharsets.UTF_8).replace("\r\n", "\n")));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void pdfAndPictureAreWhole(String text) throws Exception {
    Arrangement odd = with(text);
    try (PDDocument document =
        Loader.loadPDF(Booklet.pdf(odd, Paper.A4, WorkOrder.BALL, Optional.empty()))) {
      assertTrue(document.getNumberOfPages() >= 5);
      assertTrue(document.getNumberOfPages() < 250, document.getNumberOfPages() + " pages");
    }
    byte[] png =
        Picture.png(
            Chart.svg(odd, new ChartOptions(true, ChartOptions.Signs.CODES, OptionalInt.empty())),
            300);
    assertEquals(300, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
  }

  @Test
  void theTextsAreAsHostileAsTheySeem() {
    assertTrue(texts().stream().anyMatch(text -> text.length() >= 10_000));
    assertTrue(texts().stream().anyMatch(text -> !PlainText.oneLine(text).equals(text)));
  }
}
