package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Diary;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import lozengy.model.yarn.YarnNeed;
import org.junit.jupiter.api.Test;

/**
 * Balls weighed in mid-work: two rows of three squares, 7 seams of 10 cm. Every centre takes 10 m
 * of A, borders 20 m, of B in row 1 and of C in row 2; joining 3 m a metre of A, edging 10 m a
 * metre of C along 1 m.
 */
class LearnedHandTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: A hand
      layout: { setting: straight, across: 3, down: 2 }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 10 }, { metres: 20 } ] }
      yarns:
        - { code: A, colour: "#2c2a29", left: 200 m }
        - { code: B, colour: "#b9b57a", left: 62 m }
        - { code: C, colour: "#98bfdb", left: 100 m }
      joining: { yarn: A, metres-per-metre: 3 }
      edging: { yarn: C, metres-per-metre: 10 }
      """;

  private static Arrangement plan(String brief) {
    return plan(brief, 1);
  }

  /** The plan, with the border of r1c1 in a yarn. */
  private static Arrangement plan(String brief, int first) {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("brief.yaml", brief)));
    Sequences plan = blanket.open();
    for (int piece = 0; piece < plan.pieces(); piece++) {
      plan.set(piece, 0, 0);
      plan.set(piece, 1, blanket.place(piece).name().startsWith("r1") ? 1 : 2);
    }
    plan.set(0, 1, first);
    return new Arrangement(
        blanket,
        plan,
        Optional.empty(),
        Scorer.score(blanket, plan, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        Diary.begun(blanket, plan));
  }

  private static Mark made(String... at) {
    return Mark.NONE.withStates(
        List.of(new Mark.State("--made", PieceState.MADE, Arrays.asList(at))));
  }

  private static Mark.Count left(String code, long metres) {
    return new Mark.Count("--left", code, new YarnAmount.Length(metres * 1000));
  }

  private static final Mark AS_COUNTED =
      Mark.NONE.withHand(Optional.of(new Mark.Hand("--hand counted", Optional.empty())));

  private static LearnedHand learned(Arrangement arrangement) {
    return LearnedHand.of(arrangement.diary()).orElseThrow();
  }

  private static long needed(Arrangement arrangement, int yarn) {
    return YarnNeed.of(arrangement.blanket(), arrangement.sequences())
        .get(yarn)
        .neededMillimetres();
  }

  private static String hand(Arrangement arrangement) {
    return arrangement.blanket().brief().stitching().handPercent().toPlainString();
  }

  /** Row 1 takes 30 m of A; 33 m are gone. */
  private static Arrangement counted() {
    return MarkedArrangement.of(plan(BRIEF), made("row1").withCounts(List.of(left("A", 167))));
  }

  @Test
  void whatIsGoneIsHeldAgainstWhatIsMarkedAsWorked() {
    LearnedHand hand = learned(counted());

    assertEquals(List.of(new LearnedHand.Told("A", 33_000, 30_000)), hand.counts());
    assertEquals(new BigDecimal("110"), hand.percent().setScale(0));
    assertEquals("100", hand(counted()), "nothing changes before she agrees");
  }

  @Test
  void whenSheAgreesAllThatIsReckonedFollows() {
    Arrangement now = MarkedArrangement.of(counted(), AS_COUNTED);

    assertEquals("110", hand(now));
    // three centres of 11 m, and 7 seams of 10 cm at 3.3 m a metre
    assertEquals(33_000 + 2_310, needed(now, 0));
    // three borders of 22 m: 4 m more than there are
    assertEquals(66_000, needed(now, 1));
    // three borders of 22 m, and edging 1 m at 11 m a metre
    assertEquals(66_000 + 11_000, needed(now, 2));
    assertEquals(
        List.of(1),
        YarnNeed.of(now.blanket(), now.sequences()).stream()
            .filter(need -> !need.lasts())
            .map(YarnNeed::yarn)
            .toList());
    assertEquals(
        Optional.of(new BigDecimal("1.1E+2")),
        now.diary().entries().get(1).handPercent(),
        "the diary tells of it");
  }

  @Test
  void itCanBeTakenBackAndTheFileKeepsIt() {
    Arrangement before = counted();
    Arrangement now = MarkedArrangement.of(before, AS_COUNTED);
    String text = ArrangementWriter.text(now);
    Arrangement read = ArrangementReader.read(SourceText.of("a.json", text)).scored();

    assertEquals(text, ArrangementWriter.text(read));
    assertEquals("110", hand(read));
    Arrangement undone = MarkedArrangement.undone(read).orElseThrow();
    assertEquals(ArrangementWriter.text(before), ArrangementWriter.text(undone));
  }

  @Test
  void aLaterCountIsHeldAgainstWhatTheBriefSaysAndPooledWithTheFirst() {
    Arrangement agreed = MarkedArrangement.of(counted(), AS_COUNTED);
    // 30 m more by the brief, 31.5 m gone: 5 %; together 64.5 m of 60 m
    Mark more = made("row2").withCounts(List.of(new Mark.Count("--left", "A", tenths(1355))));
    LearnedHand hand = learned(MarkedArrangement.of(agreed, more));

    assertEquals(new LearnedHand.Told("A", 31_500, 30_000), hand.counts().get(1));
    assertEquals("107.5", hand.percent().toPlainString());
    assertEquals(List.of(), hand.contradicting());
  }

  private static YarnAmount tenths(long metres) {
    return new YarnAmount.Length(metres * 100);
  }

  @Test
  void joinedSeamsAndEdgedOutlineAreWork() {
    // six centres and all seven seams: 60 m + 2.1 m; 65 m gone
    Mark joined =
        Mark.NONE
            .withStates(List.of(new Mark.State("--joined", PieceState.JOINED, List.of("all"))))
            .withCounts(List.of(left("A", 135), left("C", 35)))
            .withEdged(Optional.of(new Mark.Edged("--edged", 40)));
    LearnedHand hand = learned(MarkedArrangement.of(plan(BRIEF), joined));

    assertEquals(
        List.of(
            new LearnedHand.Told("A", 65_000, 62_100),
            new LearnedHand.Told("C", 65_000, 64_000)), // borders, and 40 % of 10 m
        hand.counts());
  }

  @Test
  void aCountOfLittleWorkTellsNothingAndCannotBeAgreedTo() {
    // 10 m of A are reckoned
    Arrangement little =
        MarkedArrangement.of(plan(BRIEF), made("r1c1").withCounts(List.of(left("A", 180))));

    assertEquals(Optional.empty(), LearnedHand.of(little.diary()));
    InputException none =
        assertThrows(InputException.class, () -> MarkedArrangement.of(little, AS_COUNTED));
    assertEquals(MistakeCode.NOT_COUNTED, none.mistakes().get(0).sort().code());
  }

  @Test
  void countsThatContradictEachOtherAreToldAndNotAveraged() {
    Mark mark =
        made("row1").withCounts(List.of(left("A", 170), left("B", 10))); // 30 of 30 m, 52 of 20 x 3
    Arrangement apart = MarkedArrangement.of(plan(BRIEF), mark);
    Mark wrong = made("row1").withCounts(List.of(left("A", 130), left("B", 2)));
    Arrangement wide = MarkedArrangement.of(plan(BRIEF), wrong); // 70 of 30 m, 60 of 60 m

    assertEquals(List.of(), learned(apart).contradicting(), "52 of 60 m and 30 of 30 m");
    assertEquals(2, learned(wide).contradicting().size());
    InputException told =
        assertThrows(InputException.class, () -> MarkedArrangement.of(wide, AS_COUNTED));
    assertEquals(MistakeCode.CONTRADICTS, told.mistakes().get(0).sort().code());
    Mark stated =
        Mark.NONE.withHand(
            Optional.of(new Mark.Hand("--hand", Optional.of(BigDecimal.TEN.pow(2)))));
    assertTrue(MarkedArrangement.marked(wide, stated).nothingNew(), "100 % is what it is");
  }

  @Test
  void aCountThatWasAMistakeTellsNothing() {
    Mark back = Mark.NONE.withYarns(List.of(new Mark.Uncounted("--uncount", "A")));

    assertEquals(Optional.empty(), LearnedHand.of(MarkedArrangement.of(counted(), back).diary()));
  }

  @Test
  void roundsThatGoOnInOneYarnAreTakenForUncut() {
    String stitched =
        BRIEF.replace(
                "{ metres: 10 }, { metres: 20 }",
                "{ stitches: { ch: 100 } }, { stitches: { ch: 200 } }")
            + "stitches: { terms: US, per-stitch: { ch: 10 cm, sl st: 10 cm } }\n";
    Arrangement plan = plan(stitched, 0);
    // r1c1 in A alone: 10.4 m + 20.4 m, less the tails and the join between them, 0.4 m
    Arrangement counted =
        MarkedArrangement.of(plan, made("r1c1").withCounts(List.of(left("A", 160))));

    assertEquals(List.of(new LearnedHand.Told("A", 40_000, 30_400)), learned(counted).counts());
  }
}
