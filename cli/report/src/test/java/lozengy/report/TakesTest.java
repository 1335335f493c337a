package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.ForSale;
import lozengy.model.making.WorkOrder;
import lozengy.model.score.Scorer;
import lozengy.model.yarn.ShadeTaken;
import lozengy.report.page.Page;
import lozengy.report.print.Booklet;
import lozengy.report.print.Paper;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class TakesTest {

  private final Arrangement own = Samples.saltmarshThrow();

  private Arrangement forSale(String looser, double ballsEach) {
    Brief brief = own.blanket().brief();
    if (ballsEach > 0) {
      brief = brief.withYarns(brief.yarns().stream().map(y -> y.withBalls(ballsEach)).toList());
    }
    Blanket blanket =
        Blanket.ofUnjudged(brief.withForSale(Optional.of(new ForSale(new BigDecimal(looser)))));
    return new Arrangement(
        blanket,
        own.sequences(),
        Optional.empty(),
        Scorer.score(blanket, own.sequences(), Optional.empty()),
        Optional.empty(),
        Optional.empty());
  }

  private static String booklet(Arrangement arrangement) throws IOException {
    byte[] pdf = Booklet.pdf(arrangement, Paper.A4, WorkOrder.BALL, Optional.empty());
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      return stripper.getText(document).replaceAll("\\s+", " ");
    }
  }

  /** Balls from the lengths by plain arithmetic; what is at hand makes no difference. */
  @Test
  void ballsHoldWhatIsTakenWhateverIsAtHand() {
    for (double balls : new double[] {0, 1, 9}) {
      Arrangement sold = forSale("8", balls);
      List<ShadeTaken> taken = ShadeTaken.of(sold.blanket(), sold.sequences());
      long[] used = own.blanket().usedMillimetres(own.sequences());
      for (ShadeTaken each : taken) {
        assertEquals(used[each.yarn()], each.millimetres());
        double ball =
            own.blanket().yarn(each.yarn()).ball().orElseThrow().millimetres().doubleValue();
        double kept = own.blanket().brief().rules().keepBackPercent();
        double usable = ball * (1 - kept / 100);
        long expected = (long) Math.ceil(used[each.yarn()] * 1.08 / usable);
        assertEquals(OptionalLong.of(expected), each.balls());
      }
    }
  }

  @Test
  void bookletAndPageOfWhatIsSoldTellWhatItTakes() throws IOException {
    Arrangement sold = forSale("8", 9);
    Takes takes = Takes.of(sold).orElseThrow();
    String booklet = booklet(sold);
    String page = Page.html(sold, "throw.arrangement.json");
    for (String text : List.of(booklet, page)) {
      assertTrue(text.contains(takes.headline()), takes.headline());
      assertTrue(text.contains("a hand that takes up to 8 % more"));
      assertFalse(text.contains("needs to be bought"));
    }
    assertFalse(booklet.contains("what to buy"));
    int shades = own.blanket().yarnCount();
    assertEquals(shades, takes.shades().size());
    int balls = takes.shades().stream().mapToInt(s -> Integer.parseInt(s.cells().get(0))).sum();
    assertTrue(
        takes
            .headline()
            .startsWith("This blanket takes " + balls + " balls of " + shades + " shades:"));
    assertEquals(String.valueOf(balls), takes.all().get(0));
  }

  @Test
  void whatIsNotSoldTellsWhatIsToBuy() throws IOException {
    assertEquals(Optional.empty(), Takes.of(own));
    assertTrue(booklet(own).contains("what to buy"));
    assertFalse(Page.html(own, "throw.arrangement.json").contains("This blanket takes"));
  }
}
