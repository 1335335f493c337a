package lozengy.report.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.model.yarn.YarnWork;
import lozengy.report.Figures;
import lozengy.report.Samples;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

class BookletTest {

  private static final Optional<LocalDate> DATE = Optional.of(LocalDate.of(2026, 1, 31));

  private static final Arrangement THROW = Samples.saltmarshThrow();

  /** Booklets of the throw on A4 with the date, each made once. */
  private static final Map<WorkOrder, byte[]> MADE = new EnumMap<>(WorkOrder.class);

  private static byte[] booklet(WorkOrder order) {
    return MADE.computeIfAbsent(order, each -> Booklet.pdf(THROW, Paper.A4, each, DATE));
  }

  private static List<String> pages(byte[] pdf) throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document).replaceAll("\\s+", " "));
      }
    }
    return pages;
  }

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyPageIsOfThePaperAndBearsTitleDateAndNumber(Paper paper) throws Exception {
    byte[] pdf =
        paper == Paper.A4
            ? booklet(WorkOrder.BALL)
            : Booklet.pdf(THROW, paper, WorkOrder.BALL, DATE);
    List<String> pages = pages(pdf);
    assertTrue(pages.size() > 5);
    for (int i = 0; i < pages.size(); i++) {
      assertTrue(pages.get(i).contains("Saltmarsh throw"), pages.get(i));
      assertTrue(pages.get(i).contains("2026-01-31"), pages.get(i));
      assertTrue(pages.get(i).contains("page " + (i + 1) + " of " + pages.size()), pages.get(i));
    }
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDRectangle box = document.getPage(0).getMediaBox();
      assertEquals(paper.widthMm(), box.getWidth() / 72 * 25.4, 0.1);
      assertEquals(paper.heightMm(), box.getHeight() / 72 * 25.4, 0.1);
      assertEquals("Saltmarsh throw", document.getDocumentInformation().getTitle());
    }
  }

  @Test
  void listsSayWhatTheModelSays() throws Exception {
    Blanket blanket = THROW.blanket();
    String text =
        String.join(" ", pages(Booklet.pdf(THROW, Paper.A4, WorkOrder.BALL, Optional.empty())));
    WorkSteps steps = WorkSteps.of(THROW, WorkOrder.BALL);
    assertTrue(text.contains(steps.count() + " steps"), text);
    List<YarnWork> work = YarnWork.of(blanket, THROW.sequences());
    for (int yarn = 0; yarn < work.size(); yarn++) {
      assertTrue(text.contains(blanket.yarn(yarn).code() + " " + blanket.yarn(yarn).name()));
      assertTrue(
          text.contains(
              Figures.metres(work.get(yarn).workedMillimetres())
                  + " m "
                  + Figures.metres(work.get(yarn).toWorkMillimetres())
                  + " m "),
          text);
    }
    assertFalse(text.contains("2026"));
  }

  @Test
  void stepsTellJoiningAndEdgingWithTheirMetres() throws Exception {
    String text = String.join(" ", pages(booklet(WorkOrder.BALL)));
    for (WorkStep step : WorkSteps.of(THROW, WorkOrder.BALL).left()) {
      if (step instanceof WorkStep.Join join) {
        String metres = Figures.metres(join.millimetres()) + " m of MUD";
        assertTrue(
            Pattern.compile(join.number() + " Join strip " + join.strip() + ", " + metres)
                .matcher(text)
                .find(),
            metres + ": " + text);
      }
      if (step instanceof WorkStep.Edge edge) {
        assertTrue(
            text.contains("Edge the outline, " + Figures.metres(edge.millimetres()) + " m"), text);
      }
    }
    assertTrue(text.contains("square centres:"), text);
    assertTrue(text.contains("square borders:"), text);
  }

  @Test
  void stripByStripEachIsJoinedRightAfterItsPieces() throws Exception {
    String text = String.join(" ", pages(booklet(WorkOrder.STRIP)));
    assertFalse(text.contains("Make list"), text);
    String cards = text.substring(text.indexOf("Strip by strip"));
    for (int strip = 3; strip < 13; strip++) {
      int join = cards.indexOf("Join strip " + strip + ",");
      assertTrue(join > 0, cards);
      String place = "strip " + strip + ", place";
      String next = "strip " + (strip + 1) + ", place";
      // What stands in one row of cards is read line by line.
      assertTrue(cards.indexOf(place) < join, place);
      assertTrue(cards.lastIndexOf(next) > join, next);
    }
  }

  @Test
  void largeBookletsStayThinAndNoPageIsHalfEmpty() throws Exception {
    Brief wrap = Samples.brief("Wrap", Samples.onPoint(7, 9), Samples.yarns(), List.of());
    Arrangement large = Samples.filled(wrap, 1);
    assertEquals(143, large.blanket().pieceCount());
    for (WorkOrder order : WorkOrder.values()) {
      byte[] pdf = Booklet.pdf(large, Paper.A4, order, DATE);
      int pages = pagesOfWhichNoneIsHalfEmpty(pdf);
      assertTrue(pages <= 16, order + ": " + pages);
    }
  }

  @Test
  void aBookletOfFiveHundredPiecesTakesFewPages() throws Exception {
    Brief spread = Samples.brief("Spread", Samples.straight(20, 26), Samples.yarns(), List.of());
    byte[] pdf = Booklet.pdf(Samples.filled(spread, 1), Paper.A4, WorkOrder.BALL, DATE);
    int pages = pagesOfWhichNoneIsHalfEmpty(pdf);
    assertTrue(pages <= 45, "pages: " + pages);
  }

  /** How many there are; on each but the last, something stands in the lower third. */
  private static int pagesOfWhichNoneIsHalfEmpty(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < document.getNumberOfPages() - 1; page++) {
        BufferedImage image = renderer.renderImageWithDPI(page, 30, ImageType.GRAY);
        int ink = 0;
        // Above the page's number, which stands at the foot.
        for (int y = image.getHeight() * 2 / 3; y < image.getHeight() * 92 / 100; y++) {
          for (int x = 0; x < image.getWidth(); x++) {
            ink += (image.getRGB(x, y) & 0xff) < 245 ? 1 : 0;
          }
        }
        assertTrue(ink > 10, "page " + (page + 1) + " of " + document.getNumberOfPages());
      }
      return document.getNumberOfPages();
    }
  }

  @Test
  void namesOfYarnsAreNeverBrokenInsideWords() throws Exception {
    String name = "Marshmallowrootsandeverlasting";
    Arrangement long1 = Samples.named("Long names", List.of(name, name, name, name));
    for (String page : pages(Booklet.pdf(long1, Paper.A4, WorkOrder.BALL, DATE))) {
      assertEquals(count(page, "Marshm"), count(page, "Marshmal"), page);
      assertEquals(0, count(page, " everlasting"), page);
    }
  }

  @Test
  void cardsTellDyeLotsApartByCodeWhereTheirNamesAreCut() throws Exception {
    String name = "Marsh at dusk in winter, dye lot ";
    Arrangement lots = Samples.named("Lots", List.of(name + 1, name + 2, name + 3, name + 4));
    String text = text(lots, WorkOrder.BALL);
    String cards = text.substring(text.indexOf("Piece cards"));
    assertFalse(cards.contains("dye lot"), cards);
    int named = 0;
    for (Yarn yarn : lots.blanket().brief().yarns()) {
      named += count(cards, yarn.code() + " Marsh");
    }
    assertEquals(count(cards, "Marsh"), named, cards);
    assertTrue(named > 0, cards);
  }

  @Test
  void whatPlanningAgainChangedStandsOnAPageOfItsOwn() throws Exception {
    Sequences before = Samples.filled(THROW.blanket().brief(), 2).sequences();
    Arrangement planned =
        new Arrangement(
            THROW.blanket(),
            THROW.sequences(),
            Optional.of(before),
            THROW.score(),
            Optional.empty(),
            Optional.empty());
    List<String> pages = pages(Booklet.pdf(planned, Paper.A4, WorkOrder.BALL, DATE));
    List<String> changed =
        pages.stream().filter(page -> page.contains("Changed since it was planned")).toList();
    assertEquals(1, changed.size());
    assertFalse(changed.get(0).contains("Make list"), changed.get(0));
    assertFalse(changed.get(0).contains("what to buy"), changed.get(0));
  }

  @ParameterizedTest
  @EnumSource(WorkOrder.class)
  void checkersFindNothingAgainstAccessibleAndLastingDocuments(WorkOrder order) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    byte[] pdf = booklet(order);
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_B)) {
      try (PDFAParser parser =
              Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        ValidationResult result = validator.validate(parser);
        assertTrue(result.isCompliant(), () -> flavour + ": " + result.getTestAssertions());
        assertTrue(result.getTotalAssertions() > 1000, "as many assertions as the pages ask for");
      }
    }
  }

  private static String text(Arrangement arrangement, WorkOrder order) throws IOException {
    return String.join(" ", pages(Booklet.pdf(arrangement, Paper.A4, order, DATE)));
  }

  @Test
  void everyPieceThatIsNotJoinedHasACard() throws Exception {
    Blanket blanket = THROW.blanket();
    String text = String.join(" ", pages(booklet(WorkOrder.BALL)));
    String cards = text.substring(text.indexOf("Piece cards"));
    for (Strip strip : Strips.of(blanket.layout())) {
      for (int i = 0; i < strip.pieces().size(); i++) {
        Place place = strip.pieces().get(i);
        boolean joined = blanket.state(place.index()) == PieceState.JOINED;
        String where = "strip " + strip.number() + ", place " + (i + 1) + "(?!\\d)";
        assertEquals(
            joined ? 0 : 1, cards.split(where, -1).length - 1, place.name() + ": " + cards);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void cardsOfFiftyRoundsStayWhole(Paper paper) throws Exception {
    Arrangement thick =
        Samples.filled(
            Samples.brief("Thick", Samples.straight(2, 3), 50, Samples.yarns(), List.of()), 4);
    List<String> pages = pages(Booklet.pdf(thick, paper, WorkOrder.BALL, DATE));
    int first = 0;
    while (!pages.get(first).contains("Piece cards")) {
      first++;
    }
    for (int page = first; page < pages.size(); page++) {
      String text = pages.get(page).replaceFirst("^.*Piece cards", "");
      int cards = text.split("strip \\d+, place", -1).length - 1;
      assertTrue(cards > 0, text);
      assertEquals(cards, text.split(" 50 [A-Z]", -1).length - 1, text);
    }
  }

  @Test
  void sameArrangementPaperAndDateGiveTheSameBytes() {
    assertArrayEquals(booklet(WorkOrder.BALL), Booklet.pdf(THROW, Paper.A4, WorkOrder.BALL, DATE));
  }

  @Test
  void lettersBeyondLatinAreShown() throws Exception {
    Arrangement odd = Samples.named("Größe, Šípek, Соль, θάλασσα", List.of("Болото"));
    String text = String.join(" ", pages(Booklet.pdf(odd, Paper.A4, WorkOrder.BALL, DATE)));
    assertTrue(text.contains("Größe, Šípek, Соль, θάλασσα"));
    assertTrue(text.contains("Болото"));
  }

  @Test
  void codeStandsAloneWhereTheFontLacksTheName() throws Exception {
    List<String> names =
        List.of("\u9752\u3044\u6d77", "\u05db\u05d7\u05d5\u05dc", "\ud83e\uddf6 Teal");
    Arrangement odd = Samples.named("\u51ac", names);
    String text = String.join(" ", pages(Booklet.pdf(odd, Paper.A4, WorkOrder.BALL, DATE)));
    assertFalse(text.contains("#"), text);
    assertFalse(text.contains("\u05dc"), text);
    assertTrue(text.contains(odd.blanket().yarn(2).code() + " Teal"), text);
    assertTrue(text.startsWith("Blanket 2026-01-31"), text);
  }
}
