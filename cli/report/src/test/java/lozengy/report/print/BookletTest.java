package lozengy.report.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lozengy.model.making.WorkOrder;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.making.MakeList;
import lozengy.model.yarn.YarnWork;
import lozengy.report.Figures;
import lozengy.report.Samples;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BookletTest {

  private static final Optional<LocalDate> DATE = Optional.of(LocalDate.of(2026, 1, 31));

  private final Arrangement arrangement = Samples.saltmarshThrow();

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
    byte[] pdf = Booklet.pdf(arrangement, paper, WorkOrder.BALL, DATE);
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
    Blanket blanket = arrangement.blanket();
    String text = String.join(" ", pages(Booklet.pdf(arrangement, Paper.A4, WorkOrder.BALL, Optional.empty())));
    List<MakeList.Batch> batches = MakeList.of(arrangement).batches();
    assertTrue(text.contains(batches.size() + " steps"));
    List<YarnWork> work = YarnWork.of(blanket, arrangement.sequences());
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
    assertTrue(text.contains("2 3 pieces left1 \u2013 r1c1 \u2013 top1"), "strip 2");
    assertFalse(text.contains("2026"));
  }

  @Test
  void everyPieceThatIsNotJoinedHasACard() throws Exception {
    Blanket blanket = arrangement.blanket();
    String text = String.join(" ", pages(Booklet.pdf(arrangement, Paper.A4, WorkOrder.BALL, DATE)));
    String cards = text.substring(text.indexOf("Piece cards"));
    for (Place place : blanket.layout().places()) {
      boolean joined = blanket.state(place.index()) == PieceState.JOINED;
      assertEquals(joined ? 0 : 1, count(cards, " " + place.name() + " "), place.name());
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
      String text = pages.get(page);
      int cards = count(text, "square strip");
      assertTrue(cards > 0, text);
      // 1.6 m in the centre and 1.3 m more in each round: the fiftieth takes 65.3 m.
      assertEquals(cards, count(text, " 1.6 m"), text);
      assertEquals(cards, count(text, "65.3 m"), text);
    }
  }

  @Test
  void sameArrangementPaperAndDateGiveTheSameBytes() {
    assertArrayEquals(
        Booklet.pdf(arrangement, Paper.LETTER, WorkOrder.BALL, DATE), Booklet.pdf(arrangement, Paper.LETTER, WorkOrder.BALL, DATE));
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
