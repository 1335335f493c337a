package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.Schemas;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Diary;
import lozengy.model.arrangement.Diary.YarnEvent.What;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.colour.Srgb;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Scorer;
import lozengy.model.wording.FaultWords;
import lozengy.model.yarn.YarnWork;
import org.junit.jupiter.api.Test;

/** Yarn that comes and goes in the middle of the work: what there is then, and taken back. */
class YarnMarksTest {

  private static final String ROW = "{ at: row1, rounds: [MUD, REE, PEA], state: made }";
  private static final Mark MADE =
      Mark.NONE.withStates(List.of(new Mark.State("made", PieceState.MADE, List.of("row3"))));

  private static Arrangement planned(String... notes) {
    Brief brief = Sample.brief(notes);
    Blanket blanket = Blanket.of(brief);
    Sequences plan = Sample.plan(brief);
    return new Arrangement(
        blanket,
        plan,
        Optional.empty(),
        Scorer.score(blanket, plan, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        Diary.EMPTY);
  }

  private static Arrangement marked(Arrangement before, Mark.OfYarn... yarns) {
    return MarkedArrangement.of(before, Mark.NONE.withYarns(List.of(yarns)));
  }

  private static Arrangement counted(Arrangement before, String code, YarnAmount left) {
    Mark.Count count = new Mark.Count("left", code, left);
    return MarkedArrangement.of(before, Mark.NONE.withCounts(List.of(count)));
  }

  private static Mark.Bought balls(String code, double balls) {
    return new Mark.Bought("bought", code, balls, Optional.empty());
  }

  private static Mark.Bought metres(String code, long metres) {
    return new Mark.Bought("bought", code, 0, Optional.of(new YarnAmount.Length(metres * 1000)));
  }

  private static Mark.Bought grams(String code, long grams) {
    return new Mark.Bought("bought", code, 0, Optional.of(new YarnAmount.Weight(grams * 1000)));
  }

  /** What is at hand now, in mm. */
  private static long atHand(Arrangement now, String code) {
    return YarnWork.of(now.blanket(), now.sequences())
        .get(now.blanket().yarnIndex(code))
        .atHandMillimetres();
  }

  private static Yarn yarn(Arrangement now, String code) {
    return now.blanket().yarn(now.blanket().yarnIndex(code));
  }

  private static List<String> faults(Arrangement now) {
    FaultWords words = new FaultWords(now.blanket());
    List<Fault> faults = Check.faults(now.blanket(), now.sequences());
    return faults.stream().map(words::of).toList();
  }

  private static String refused(Arrangement before, Mark.OfYarn... yarns) {
    return assertThrows(InputException.class, () -> marked(before, yarns)).getMessage();
  }

  @Test
  void whatIsBoughtAddsToWhatIsAtHand() {
    Arrangement before = planned(ROW);
    long had = atHand(before, "REE");
    assertAll(
        () -> assertEquals(had + 150_000, atHand(marked(before, balls("REE", 1.5)), "REE")),
        () -> assertEquals(had + 80_000, atHand(marked(before, grams("REE", 40)), "REE")),
        () -> assertEquals(had + 7000, atHand(marked(before, metres("REE", 7)), "REE")),
        () ->
            assertEquals(
                had + 7000 + 80_000,
                atHand(marked(before, metres("REE", 7), grams("REE", 40)), "REE")));
  }

  @Test
  void whatIsBoughtAddsToACountToo() {
    for (YarnAmount left : List.of(new YarnAmount.Weight(25_000), new YarnAmount.Length(50_000))) {
      Arrangement before = counted(planned(ROW), "REE", left);
      assertEquals(50_000, atHand(before, "REE"));
      assertEquals(150_000, atHand(marked(before, balls("REE", 1)), "REE"));
      assertEquals(57_000, atHand(marked(before, metres("REE", 7)), "REE"));
      assertEquals(130_000, atHand(marked(before, grams("REE", 40)), "REE"));
    }
  }

  @Test
  void aCountTakenBackLeavesWhatWasBought() {
    Arrangement before = planned(ROW);
    Arrangement again =
        marked(
            marked(counted(before, "REE", new YarnAmount.Length(1000)), balls("REE", 1)),
            new Mark.Uncounted("uncount", "REE"));
    assertEquals(atHand(before, "REE") + 100_000, atHand(again, "REE"));
    assertEquals(Optional.empty(), yarn(again, "REE").counted());
    assertEquals(
        "uncount: REE was not counted. Name a yarn that was",
        refused(before, new Mark.Uncounted("uncount", "REE")));
  }

  @Test
  void aYarnThatIsGoneStaysInWhatIsWorkedAndNowhereElse() {
    Arrangement gone = marked(planned(ROW), new Mark.Gone("gone", "REE"));
    assertEquals(0, gone.blanket().yarn(gone.blanket().yarnIndex("REE")).stockMillimetres());
    YarnWork work =
        YarnWork.of(gone.blanket(), gone.sequences()).get(gone.blanket().yarnIndex("REE"));
    assertEquals(0, work.atHandMillimetres());
    assertEquals(3 * 2000, work.workedMillimetres());
    List<String> faults = faults(gone);
    assertTrue(faults.contains("r2c1: the border has REE, which is gone"), faults.toString());
    assertFalse(faults.toString().contains("r1c1"), faults.toString());
    assertTrue(
        faults.get(faults.size() - 1).startsWith("REE: "), "what is planned in it runs short");
  }

  @Test
  void aDyeLotThatIsBoughtLaterHasItsShareThen() {
    Arrangement atOnce = marked(planned(ROW), new Mark.Lot("lot", "REE2", "REE"), balls("REE2", 1));
    Arrangement lot = marked(planned(ROW), new Mark.Lot("lot", "REE2", "REE"));
    assertEquals(0, yarn(lot, "REE2").share());

    Arrangement later = marked(lot, balls("REE2", 1));

    assertEquals(atOnce.blanket().brief().yarns(), later.blanket().brief().yarns());
    assertTrue(yarn(later, "REE2").share() > 0);
    assertEquals(
        yarn(later, "REE2").share(), yarn(marked(later, balls("REE2", 1)), "REE2").share());
  }

  @Test
  void whatThePileHoldsOfAYarnThatIsGoneIsSettledOnce() {
    Brief brief =
        Sample.brief(ROW)
            .withPile(
                List.of(
                    new PileEntry(PieceKind.SQUARE, List.of("REE", "SKY", "MUD"), 2, Set.of())));
    Blanket blanket = Blanket.ofUnjudged(brief);
    Blanket gone =
        Blanket.ofUnjudged(
            Marking.apply(
                    blanket,
                    Sample.plan(brief),
                    List.of(),
                    Mark.NONE.withYarns(List.of(new Mark.Gone("gone", "MUD"))))
                .blanket()
                .brief());
    int mud = gone.yarnIndex("MUD");
    long joining = gone.fixedUse().joiningMillimetres();
    assertTrue(joining > 0, "it joins");
    // the pile's 6 m and the row's 3 m are worked, and the joining is still to come
    assertEquals(3000 + 2 * 3000, gone.fixedUse().settledMillimetres(mud));
    assertEquals(joining - 9000, gone.fixedUse().millimetres(mud));
  }

  @Test
  void ofAYarnThatWasGoneOnlyWhatIsBoughtOrCountedIsThere() {
    Arrangement gone = marked(planned(ROW), new Mark.Gone("gone", "REE"));
    Arrangement again = marked(gone, balls("REE", 1));
    assertFalse(yarn(again, "REE").gone());
    assertEquals(100_000, atHand(again, "REE"));
    Arrangement found = counted(gone, "REE", new YarnAmount.Length(3000));
    assertFalse(yarn(found, "REE").gone());
    assertEquals(3000, atHand(found, "REE"));
  }

  @Test
  void aNewShadeMayBeWorkedByTheSameMark() {
    Yarn rust =
        Yarn.of("RUS", new Srgb(0x8a, 0x4b, 0x2d))
            .withLeft(Optional.of(new YarnAmount.Length(60_000)));
    PieceNote note =
        new PieceNote(
            List.of("r2c1"),
            List.of(Optional.of("RUS"), Optional.empty(), Optional.empty()),
            PieceState.PLANNED,
            Set.of());
    Mark mark = Mark.NONE.withWorked(List.of(new Mark.Work("worked", note)));
    Arrangement now =
        MarkedArrangement.of(planned(ROW), mark.withYarns(List.of(new Mark.Added("add", rust))));
    assertEquals("RUS SKY REE", Sample.codes(now.blanket(), now.sequences(), "r2c1"));
    assertEquals(59_000, atHand(now, "RUS"));
    assertEquals(
        "add RUS: The code Ree is taken by yarns[1]. Give each yarn a code of its own; capitals"
            + " make no difference",
        refused(
            planned(),
            new Mark.Added("add RUS", Yarn.of("Ree", rust.colour()).withLeft(rust.left()))));
  }

  @Test
  void anotherLotIsLikeItsShadeAndSharesWithItByWhatThereIs() {
    Arrangement now = marked(planned(ROW), new Mark.Lot("lot", "REE2", "REE"), balls("REE2", 1));
    Yarn lot = yarn(now, "REE2");
    assertAll(
        () -> assertEquals(Optional.of("REE"), lot.lotOf()),
        () -> assertEquals(yarn(now, "REE").colour(), lot.colour()),
        () -> assertEquals(yarn(now, "REE").ball(), lot.ball()),
        () -> assertEquals("REE, lot REE2", lot.name()),
        // four balls of the one, one of the other
        () -> assertEquals(0.2, lot.share()),
        () -> assertEquals(0.8, yarn(now, "REE").share()),
        () -> assertEquals(100_000, atHand(now, "REE2")));
    assertEquals(
        "lot: \"a b\" is not a yarn's code. Use 1 to 12 letters, digits, hyphens and underscores",
        refused(planned(), new Mark.Lot("lot", "a b", "REE")));
    assertEquals(
        "lot: No yarn has the code \"REX\". Maybe REE is meant",
        refused(planned(), new Mark.Lot("lot", "REE2", "REX")));
  }

  @Test
  void whatDoesNotGoTogetherIsRefused() {
    assertEquals(
        "bought: MUD has no put-up to turn balls into metres. Give what was bought in m or yd",
        refused(planned(), balls("MUD", 1)));
    assertEquals(
        "bought: MUD has no put-up to turn a weight into metres. Give what was bought in m or yd",
        refused(planned(), grams("MUD", 10)));
    assertEquals(
        "bought: REE is gone by the same mark. Leave one of the two out",
        refused(planned(), balls("REE", 1), new Mark.Gone("gone", "REE")));
    Mark both =
        Mark.NONE
            .withCounts(List.of(new Mark.Count("left", "REE", new YarnAmount.Length(1))))
            .withYarns(List.of(balls("REE", 1)));
    assertEquals(
        "bought: REE is counted by the same mark: whether that was counted with it cannot be told."
            + " Mark one after the other, in the order in which they came about",
        assertThrows(InputException.class, () -> MarkedArrangement.of(planned(), both))
            .getMessage());
  }

  @Test
  void theDiaryTellsOfIt() {
    Arrangement now =
        marked(
            planned(ROW),
            new Mark.Gone("gone", "PEA"),
            balls("REE", 2),
            new Mark.Lot("lot", "REE2", "REE"));
    assertEquals(
        List.of(
            new Diary.YarnEvent(What.GONE, "PEA", Optional.empty()),
            new Diary.YarnEvent(What.BOUGHT, "REE", Optional.of(new YarnAmount.Weight(100_000))),
            new Diary.YarnEvent(What.ADDED, "REE2", Optional.empty())),
        now.diary().entries().get(0).yarns());
  }

  /** Lives of twelve marks, each written and read again; all taken back, byte by byte. */
  @Test
  void everyMarkIsTakenBack() {
    int marks = 0;
    for (long seed = 1; seed <= 30; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Arrangement now = read(planned(ROW));
      List<String> files = new ArrayList<>(List.of(ArrangementWriter.text(now)));
      for (int step = 0; step < 12; step++) {
        Arrangement next = read(step(now, random, step));
        if (!ArrangementWriter.text(next).equals(files.get(files.size() - 1))) {
          files.add(ArrangementWriter.text(next));
          now = next;
        }
      }
      marks += files.size() - 1;
      for (int back = files.size() - 2; back >= 0; back--) {
        now = read(MarkedArrangement.undone(now).orElseThrow());
        assertEquals(files.get(back), ArrangementWriter.text(now), "seed " + seed);
      }
    }
    assertTrue(marks > 200, "marks " + marks);
  }

  private static Arrangement step(Arrangement now, SplittableRandom random, int step) {
    List<Yarn> yarns = now.blanket().brief().yarns();
    String code = yarns.get(random.nextInt(yarns.size())).code();
    try {
      return switch (random.nextInt(8)) {
        case 0 -> marked(now, metres(code, 1 + random.nextInt(30)));
        case 1 -> marked(now, balls(code, 1 + random.nextInt(3)));
        case 2 -> marked(now, new Mark.Gone("gone", code));
        case 3 -> marked(now, new Mark.Lot("lot", "L" + step, code), metres("L" + step, 40));
        case 4 ->
            marked(
                now,
                new Mark.Added(
                    "add",
                    Yarn.of("N" + step, new Srgb(random.nextInt(256), 90, 120))
                        .withLeft(Optional.of(new YarnAmount.Length(9000)))));
        case 5 -> marked(now, new Mark.Uncounted("uncount", code));
        case 6 -> counted(now, code, new YarnAmount.Length(random.nextInt(90_000)));
        default -> MarkedArrangement.of(now, MADE);
      };
    } catch (InputException e) {
      return now;
    }
  }

  private static Arrangement read(Arrangement arrangement) {
    String text = ArrangementWriter.text(arrangement);
    SourceText source = SourceText.of("plan.json", text);
    assertEquals(List.of(), Schemas.arrangementFaults(source));
    return ArrangementReader.read(source).scored();
  }
}
