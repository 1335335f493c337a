package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleId;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;

class MarkingTest {

  private static final Mark NOTHING = Mark.NONE;

  private static Arrangement arrangement(String... notes) {
    CurrentPlan current = Sample.current(notes);
    Blanket blanket = Blanket.of(current.brief());
    return new Arrangement(
        blanket,
        current.sequences().orElseThrow(),
        Optional.empty(),
        Scorer.score(blanket, current.sequences().orElseThrow(), Optional.empty()),
        Optional.of(new Arrangement.Bound(99, "windows")),
        Optional.of(new Arrangement.Solved(1, 2, Optional.empty(), "0.1.0", "optimal")));
  }

  private static Mark state(PieceState state, String... at) {
    return Mark.NONE.withStates(List.of(new Mark.State(state.word(), state, List.of(at))));
  }

  private static Mark worked(String at, String... codes) {
    PieceNote note =
        new PieceNote(
            List.of(at),
            Arrays.stream(codes).map(Optional::ofNullable).toList(),
            PieceState.PLANNED,
            Set.of());
    return Mark.NONE.withWorked(List.of(new Mark.Work("worked", note)));
  }

  private static Mark left(String code, YarnAmount amount) {
    return Mark.NONE.withCounts(List.of(new Mark.Count("left " + code, code, amount)));
  }

  private static Mark both(Mark a, Mark b) {
    return Mark.NONE
        .withStates(join(a.states(), b.states()))
        .withWorked(join(a.worked(), b.worked()))
        .withCounts(join(a.counts(), b.counts()))
        .withEdged(b.edged());
  }

  private static <T> List<T> join(List<T> a, List<T> b) {
    return java.util.stream.Stream.concat(a.stream(), b.stream()).toList();
  }

  private static String refused(Mark mark) {
    return assertThrows(InputException.class, () -> MarkedArrangement.of(arrangement(), mark))
        .getMessage();
  }

  private static PieceState state(Arrangement arrangement, String name) {
    return arrangement
        .blanket()
        .state(arrangement.blanket().layout().find(name).orElseThrow().index());
  }

  private static String codes(Arrangement arrangement, String name) {
    return Sample.codes(arrangement.blanket(), arrangement.sequences(), name);
  }

  @Test
  void piecesTakeTheStateAndHoldTheirYarns() {
    Arrangement marked =
        MarkedArrangement.of(
            arrangement(),
            both(state(PieceState.MADE, "row1"), state(PieceState.JOINED, "strip1")));

    assertAll(
        () -> assertEquals(PieceState.MADE, state(marked, "r1c2")),
        () -> assertEquals(PieceState.JOINED, state(marked, "top-left")),
        () -> assertEquals(PieceState.PLANNED, state(marked, "r2c1")),
        () -> assertEquals("MUD REE PEA", Sample.locks(marked.blanket(), "r1c2")));
  }

  @Test
  void whatWasReallyWorkedIsAFactThatCheckHoldsAgainstTheRules() {
    Arrangement marked = MarkedArrangement.of(arrangement(), worked("r1c1", null, null, "REE"));

    List<Fault> faults = Check.faults(marked.blanket(), marked.sequences());
    assertEquals("MUD REE REE", codes(marked, "r1c1"));
    assertEquals(PieceState.MADE, state(marked, "r1c1"));
    assertTrue(
        faults.stream()
            .anyMatch(
                fault ->
                    fault.rule() == RuleId.NEIGHBOUR_BORDERS
                        && fault.pieces().stream()
                            .map(piece -> marked.blanket().place(piece).name())
                            .toList()
                            .equals(List.of("r1c1", "r2c1"))),
        faults.toString());
    // that its own rounds do not differ is no fault any more
    assertTrue(faults.stream().allMatch(fault -> fault.pieces().size() == 2), faults.toString());
  }

  @Test
  void aJoinedPieceThatIsCorrectedStaysJoined() {
    Arrangement before = arrangement("{ at: r1c1, rounds: [MUD, REE, PEA], state: joined }");

    assertEquals(
        PieceState.JOINED,
        state(MarkedArrangement.of(before, worked("r1c1", "SKY", null, null)), "r1c1"));
  }

  @Test
  void aCountNamesWhatIsWorkedByThenThisMarkIncluded() {
    Arrangement before = arrangement("{ at: r1c1, rounds: [MUD, REE, PEA], state: joined }");

    Arrangement marked =
        MarkedArrangement.of(
            before, both(state(PieceState.MADE, "r1c3"), left("REE", new YarnAmount.Weight(5000))));

    assertEquals(
        Optional.of(new Counted(new YarnAmount.Weight(5000), List.of("r1c3"), List.of("r1c1"), 0)),
        marked.blanket().yarn(1).counted());
    assertEquals(10_000, marked.blanket().yarn(1).stockMillimetres());
    // what is made later counts
    Arrangement later = MarkedArrangement.of(marked, state(PieceState.MADE, "r3c1"));
    assertEquals(
        marked.blanket().usedMillimetres(marked.sequences())[1],
        later.blanket().usedMillimetres(later.sequences())[1]);
  }

  @Test
  void aPieceThatIsGivenUpCountsOnceItIsMadeAnew() {
    Arrangement counted =
        MarkedArrangement.of(
            arrangement(),
            both(state(PieceState.MADE, "row1"), left("REE", new YarnAmount.Length(90_000))));
    long used = counted.blanket().usedMillimetres(counted.sequences())[1];

    Arrangement givenUp = MarkedArrangement.of(counted, state(PieceState.PLANNED, "r1c2"));
    Arrangement anew = MarkedArrangement.of(givenUp, state(PieceState.MADE, "r1c2"));

    assertEquals(used + 2000, givenUp.blanket().usedMillimetres(givenUp.sequences())[1]);
    assertEquals(used + 2000, anew.blanket().usedMillimetres(anew.sequences())[1]);
    assertEquals(List.of("r1c1", "r1c3"), anew.blanket().yarn(1).counted().orElseThrow().made());
  }

  @Test
  void thePartThatIsEdgedGoesWithTheCountOfTheEdgingsYarn() {
    Mark mark =
        Mark.NONE
            .withCounts(
                List.of(
                    new Mark.Count("left", "PEA", new YarnAmount.Length(5)),
                    new Mark.Count("left", "SKY", new YarnAmount.Length(5))))
            .withEdged(Optional.of(new Mark.Edged("edged", 40)));

    Arrangement marked = MarkedArrangement.of(arrangement(), mark);
    Arrangement again = MarkedArrangement.of(marked, left("PEA", new YarnAmount.Length(4)));

    assertEquals(40, marked.blanket().yarn(2).counted().orElseThrow().edgedPercent());
    assertEquals(0, marked.blanket().yarn(3).counted().orElseThrow().edgedPercent());
    assertEquals(40, again.blanket().yarn(2).counted().orElseThrow().edgedPercent());
    assertEquals(
        "edged: The edging's yarn is not counted with it. Count what is left of PEA",
        refused(
            Mark.NONE
                .withCounts(List.of(new Mark.Count("left", "SKY", new YarnAmount.Length(5))))
                .withEdged(Optional.of(new Mark.Edged("edged", 40)))));
  }

  @Test
  void aMarkIsTakenBackToTheLastByte() {
    Arrangement before =
        arrangement(
            "{ at: row1, rounds: [.., PEA], not: [SKY] }",
            "{ at: r2c1, rounds: [MUD, SKY, REE], state: made }");
    String text = ArrangementWriter.text(before);
    Mark mark =
        both(
            both(state(PieceState.JOINED, "r2c1", "strip2"), worked("r1c2", null, null, "SKY")),
            left("MUD", new YarnAmount.Length(7)));

    Arrangement marked = read(ArrangementWriter.text(MarkedArrangement.of(before, mark)));
    Arrangement back = MarkedArrangement.undone(marked).orElseThrow();

    assertEquals("MUD REE SKY", codes(marked, "r1c2"));
    assertEquals(text, ArrangementWriter.text(back));
    assertEquals(Optional.empty(), MarkedArrangement.undone(back));
  }

  private static Arrangement read(String text) {
    return ArrangementReader.read(SourceText.of("a.json", text)).scored();
  }

  @Test
  void aBoundIsNotStatedAfterAMarkAndHowItWasFoundOnlyOfTheSameYarns() {
    Arrangement made = MarkedArrangement.of(arrangement(), state(PieceState.MADE, "r1c1"));
    Arrangement reworked = MarkedArrangement.of(arrangement(), worked("r1c1", "SKY", null, null));

    assertEquals(Optional.empty(), made.bound());
    assertEquals("none", made.solved().orElseThrow().proof());
    assertEquals(Optional.empty(), reworked.solved());
  }

  @Test
  void whatIsMarkedAlreadyChangesNothing() {
    Arrangement before =
        MarkedArrangement.of(
            arrangement(),
            both(state(PieceState.MADE, "row1"), left("REE", new YarnAmount.Length(9))));

    assertSame(before, MarkedArrangement.of(before, state(PieceState.MADE, "r1c1", "r1c3")));
    assertSame(before, MarkedArrangement.of(before, worked("r1c1", "MUD", "REE", null)));
    assertSame(before, MarkedArrangement.of(before, left("REE", new YarnAmount.Length(9))));
    assertSame(before, MarkedArrangement.of(before, NOTHING));
  }

  @Test
  void whatContradictsItselfOrIsNotThereIsTold() {
    assertAll(
        () ->
            assertEquals(
                "made: There is no piece \"row9\". The rows are row1 to row3",
                refused(state(PieceState.MADE, "row9"))),
        () ->
            assertEquals(
                "worked: top1 is given 3 rounds. A triangle has 2 rounds; ~ leaves one as planned",
                refused(worked("top1", "SKY", null, null))),
        () ->
            assertEquals(
                "worked: No yarn has the code \"SKI\". Maybe SKY is meant",
                refused(worked("r1c1", "SKI", null, null))),
        () ->
            assertEquals(
                "left XYZ: No yarn has the code \"XYZ\". The yarns' codes are MUD, REE, PEA, SKY",
                refused(left("XYZ", new YarnAmount.Length(1)))),
        () ->
            assertEquals(
                "left MUD: MUD has no put-up to turn a weight into metres. Give what is left in m or"
                    + " yd",
                refused(left("MUD", new YarnAmount.Weight(1)))),
        () ->
            assertEquals(
                "left SKY: SKY is counted twice. Count it once",
                refused(
                    both(
                        left("SKY", new YarnAmount.Length(1)),
                        left("SKY", new YarnAmount.Length(2))))));
  }

  @Test
  void anOpenPieceCannotBeWorkedUntilItsYarnsAreKnown() {
    Blanket blanket = Blanket.of(Sample.brief());

    assertEquals(
        "r1c1 has no yarn in its round 1. Say what it was worked in\n"
            + "r1c1 has no yarn in its round 2. Say what it was worked in",
        assertThrows(
                InputException.class,
                () ->
                    Marking.apply(
                        blanket, blanket.open(), List.of(), worked("r1c1", null, null, "SKY")))
            .getMessage());
  }

  @Test
  void aMarkIsNotTakenBackOnceWhatItChangedIsChangedByHand() {
    Arrangement marked = MarkedArrangement.of(arrangement(), state(PieceState.MADE, "r1c1"));
    String text = ArrangementWriter.text(marked);
    String state = "\"state\": \"made\"";
    String other = text.replace(state, state.replace("made", "joined"));
    int diary = other.indexOf("\"diary\"");
    int brief = other.indexOf("\"brief\"", diary);
    // in the diary it stays as it was marked
    other =
        other.substring(0, diary)
            + text.substring(
                text.indexOf("\"diary\""), text.indexOf("\"brief\"", text.indexOf("\"diary\"")))
            + other.substring(brief);
    Arrangement edited = read(other);

    assertEquals(
        "What the last mark changed has been changed again since, by hand. Mark how things stand"
            + " now instead",
        assertThrows(InputException.class, () -> MarkedArrangement.undone(edited)).getMessage());
  }
}
