package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.MakeList;
import lozengy.model.progress.Mark;
import lozengy.model.progress.MarkedArrangement;
import lozengy.report.GraphMl;
import lozengy.report.Samples;
import lozengy.report.Summary;
import lozengy.report.page.Page;
import org.junit.jupiter.api.Test;

/** What is shown of pieces that are worked in part, and of the days of the work. */
class BegunTest {

  private static Arrangement marked(Arrangement before, Mark mark) {
    return MarkedArrangement.of(before, mark);
  }

  private static Mark rounds(int worked, String at) {
    return Mark.NONE.withRounds(List.of(new Mark.Rounds("rounds", worked, List.of(at))));
  }

  private static final Arrangement BEGUN =
      marked(marked(Samples.saltmarshThrow(), rounds(2, "row2")), rounds(3, "r3c1"));

  private static long count(String regex, String text) {
    return Pattern.compile(regex).matcher(text).results().count();
  }

  @Test
  void theChartDrawsALineAroundWhatIsWorkedThatShowsInGrey() {
    String svg = Chart.svg(BEGUN, ChartOptions.PLAIN);

    // a dark line and a light one upon it: six pieces, and two samples in the key
    assertEquals(2 * (6 + 2), count("class=\"begun\" points", svg));
    assertTrue(svg.contains("worked to the line (6)"), svg);
    assertTrue(svg.contains(", worked to round 3</title>"), svg);
    String none = Chart.svg(Samples.saltmarshThrow(), ChartOptions.PLAIN);
    assertEquals(0, count("class=\"begun\" points", none));
    // the line is the outer edge of the last worked round
    Drawing drawing = Drawing.of(BEGUN.blanket(), BEGUN.sequences());
    PieceDrawing piece =
        drawing.pieces().stream().filter(p -> p.place().name().equals("r3c1")).findFirst().get();
    assertEquals(3, piece.roundsWorked());
    assertTrue(piece.begun());
  }

  @Test
  void thePageTellsHowFarAPieceIs() {
    String page = Page.html(BEGUN, "throw.arrangement.json");

    assertTrue(page.contains("r3c1, square, worked to round 3: "), "no label of it");
    String key = "A piece that is begun is worked to its dashed line.";
    assertTrue(page.contains(key), "no key of the line");
    assertFalse(Page.html(Samples.saltmarshThrow(), "throw.arrangement.json").contains(key));
    assertEquals(5, count("<small>[A-Z0-9 ]+, worked to round 2</small>", page));
  }

  @Test
  void theSummaryCountsWhatIsBegun() {
    String text = Summary.text(BEGUN, Optional.empty()).replaceAll("\\s+", " ");

    assertTrue(text.contains("1 made, 2 joined, 108 planned, 6 of them begun"), text);
    assertEquals(6L, Summary.data(BEGUN).get("part_worked"));
    assertTrue(GraphMl.text(BEGUN).contains("rounds_worked"));
  }

  @Test
  void theMakeListHoldsWhatIsLeftUnderItsOldNumbers() {
    Arrangement before = Samples.saltmarshThrow();
    MakeList whole = MakeList.of(before);
    Arrangement first =
        marked(before, Mark.NONE.withSteps(List.of(new Mark.Step("step", 1, 1, List.of()))));
    String page = Page.html(first, "throw.arrangement.json");

    assertTrue(
        page.contains((whole.steps() - 1) + " of " + whole.steps() + " steps left"), "no count");
    assertTrue(page.contains("mark --step 2'"), "no number");
    assertEquals(2, MakeList.of(first).batches().get(0).step());
  }

  @Test
  void thePaceIsToldInWordsAndAsData() {
    Arrangement work = Samples.saltmarshThrow();
    LocalDate day = LocalDate.of(2025, 3, 1);
    for (int row = 2; row <= 6; row++) {
      Mark mark = rounds(5, "row" + row).withOn(Optional.of(new Mark.Day("on", day)));
      work = marked(work, mark);
      day = day.plusDays(6 + row % 2);
    }
    String text = Summary.text(work, Optional.empty()).replaceAll("\\s+", " ");

    assertTrue(
        text.contains(
            "29 pieces finished, 82 to go (380 rounds); from 2025-03-01 to 2025-03-27 5.7 pieces and"
                + " 28.3 rounds a week; the last round likely between 2025-06-13 and 2025-07-26"),
        text);
    Arrangement few = marked(Samples.saltmarshThrow(), rounds(5, "row2"));
    assertTrue(
        Summary.text(few, Optional.empty())
            .replaceAll("\\s+", " ")
            .contains("; not enough marks yet to tell a likely end"));
    assertTrue(!text.contains("not enough marks"), text);
    Map<?, ?> data = (Map<?, ?>) Summary.data(work).get("work");
    assertEquals(5, data.get("marks"));
    assertEquals(82, data.get("pieces_to_go"));
    assertEquals("2025-03-27", data.get("last_day"));
    assertTrue(Page.html(work, "x").contains("29 pieces finished, 82 to go"));
    Arrangement unmarked = Samples.saltmarshThrow();
    assertEquals(null, Summary.data(unmarked).get("work"));
  }
}
