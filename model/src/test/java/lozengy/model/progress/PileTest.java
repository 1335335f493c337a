package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntries;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleId;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import lozengy.model.wording.FaultWords;
import org.junit.jupiter.api.Test;

/** Finished pieces without a place: read, checked, marked, counted, and taken up again. */
class PileTest {

  /** Four squares in a row, of two rounds; the border must be dark. */
  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Row
      layout: { setting: straight, across: 4, down: 1 }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 1 }, { tone: dark, metres: 2 } ] }
      yarns:
        - { code: MUD, colour: "#222222", tone: dark, left: 20 m }
        - { code: PEA, colour: "#333322", tone: dark, left: 20 m }
        - { code: FOA, colour: "#eeeeee", tone: light, left: 20 m }
      """;

  private static final String PILE =
      """
      pile:
        - { kind: square, rounds: [FOA, MUD], count: 2 }
        - { kind: square, rounds: [MUD, FOA] }
      """;

  private static Blanket blanket(String more) {
    return Blanket.of(BriefReader.read(SourceText.of("row.yaml", BRIEF + more)));
  }

  private static Sequences sequences(Blanket blanket, String... pieces) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < pieces.length; piece++) {
      String[] codes = pieces[piece].split(" ");
      for (int round = 0; round < codes.length; round++) {
        sequences.set(piece, round, blanket.yarnIndex(codes[round]));
      }
    }
    return sequences;
  }

  private static Arrangement arrangement(Blanket blanket, Sequences sequences) {
    return new Arrangement(
        blanket,
        sequences,
        Optional.empty(),
        Scorer.score(blanket, sequences, Optional.empty()),
        Optional.empty(),
        Optional.empty());
  }

  private static Arrangement laid() {
    Blanket blanket = blanket(PILE);
    return arrangement(blanket, sequences(blanket, "FOA MUD", "MUD FOA", "FOA MUD", "MUD PEA"));
  }

  @Test
  void isReadAndWrittenAndReadsBackEqual() {
    Brief brief = blanket(PILE).brief();
    assertEquals(
        List.of(
            new PileEntry(PieceKind.SQUARE, List.of("FOA", "MUD"), 2, Set.of()),
            new PileEntry(PieceKind.SQUARE, List.of("MUD", "FOA"), 1, Set.of())),
        brief.pile());
    assertEquals(brief, BriefReader.read(SourceText.of("row.json", BriefWriter.text(brief))));
  }

  @Test
  void mistakesAreToldWithPlaceLineValueAndRemedy() {
    String wrong =
        """
        pile:
          - { kind: sqare, rounds: [FOA, MUD] }
          - { kind: square, rounds: [FOA, MUD, PEA] }
          - { kind: square, rounds: [FOA, MUT] }
          - { kind: square, rounds: [FOA, ~], count: 0 }
          - { kind: square, rounds: [FOA, MUD], counted: FOA }
        """;
    InputException thrown = assertThrows(InputException.class, () -> blanket(wrong));
    assertEquals(
        List.of(
            "line 11, pile[0].kind: \"sqare\" is not known here. Write square, triangle or corner;"
                + " maybe square is meant",
            "line 12, pile[1].rounds: 3 rounds are given. A square has 2 rounds",
            "line 13, pile[2].rounds[1]: No yarn has the code \"MUT\". Maybe MUD is meant",
            "line 14, pile[3].count: 0 is out of range. Give a whole number of pieces from 1 to"
                + " 250000",
            "line 14, pile[3].rounds[1]: The round is open. A finished piece has a yarn in every"
                + " round",
            "line 15, pile[4].counted: FOA was not counted. Leave it out, or give its count"),
        thrown.mistakes().stream().map(each -> each.words()).sorted().toList());
  }

  @Test
  void piecesWithoutAnyPlaceOfTheirKindAreTold() {
    InputException thrown =
        assertThrows(
            InputException.class,
            () -> blanket("pile: [ { kind: corner, rounds: [FOA, MUD], count: 5 } ]\n"));
    assertTrue(
        thrown
            .getMessage()
            .contains(
                "5 corners are on the pile, and the layout has no place for them. Take them off the"
                    + " pile, or change the layout"),
        thrown.getMessage());
  }

  /** More than places: those that stay out take no place, and what they hold still counts. */
  @Test
  void piecesThatStayOutTakeNoPlaceButYarn() {
    String pile = "pile: [ { kind: square, rounds: [FOA, MUD], count: 5, out: %d } ]\n";
    Blanket all = blanket(pile.formatted(0));
    Blanket some = blanket(pile.formatted(3));
    assertEquals(5, all.pile().count());
    assertEquals(2, some.pile().count());
    assertEquals(3, some.pile().out().get(0).count());
    PileEntry taken =
        new PileEntries(some.brief().pile()).take(PieceKind.SQUARE, List.of("FOA", "MUD"));
    assertEquals(1, taken.laid());
    PileEntries left = new PileEntries(some.brief().pile());
    left.take(PieceKind.SQUARE, List.of("FOA", "MUD"));
    left.take(PieceKind.SQUARE, List.of("FOA", "MUD"));
    assertEquals(3, left.list().get(0).out());
    assertThrows(
        IllegalArgumentException.class,
        () -> left.take(PieceKind.SQUARE, List.of("FOA", "MUD")),
        "what stays out lies nowhere");
    int mud = some.yarnIndex("MUD");
    assertEquals(
        3 * some.motifs().needMillimetres(PieceKind.SQUARE, 1, mud),
        some.fixedUse().millimetres(mud) - all.fixedUse().millimetres(mud));
    InputException thrown = assertThrows(InputException.class, () -> blanket(pile.formatted(6)));
    assertTrue(thrown.getMessage().contains("pile[0].out"), thrown.getMessage());
  }

  @Test
  void everyFinishedPieceMustHaveAPlace() {
    Blanket blanket = blanket(PILE);
    List<Fault> faults =
        Check.faults(blanket, sequences(blanket, "FOA MUD", "FOA PEA", "PEA MUD", "MUD PEA"));
    assertEquals(
        List.of(
            "1 finished square in FOA, MUD: on the pile, and has no place",
            "1 finished square in MUD, FOA: on the pile, and has no place"),
        faults.stream()
            .filter(f -> f.rule() == RuleId.PILE)
            .map(new FaultWords(blanket)::of)
            .toList());
  }

  @Test
  void isAFactAsOftenAsThereAreSuchPieces() {
    Blanket blanket = blanket(PILE);
    assertEquals(List.of(), Check.faults(laid().blanket(), laid().sequences()));
    List<Fault> faults =
        Check.faults(blanket, sequences(blanket, "MUD FOA", "FOA MUD", "MUD FOA", "FOA MUD"));
    assertEquals(1, faults.size());
    assertEquals(RuleId.TONES, faults.get(0).rule());
    assertEquals(List.of(2), faults.get(0).pieces());
  }

  @Test
  void locksHoldForItsPiecesAndBansDoNot() {
    Blanket banned = blanket(PILE + "pieces: [ { at: all, not: FOA } ]\n");
    assertEquals(
        List.of(),
        Check.faults(banned, sequences(banned, "FOA MUD", "MUD FOA", "FOA MUD", "MUD PEA")));
    Blanket locked = blanket(PILE + "pieces: [ { at: r1c2, rounds: [~, PEA] } ]\n");
    assertEquals(
        RuleId.LOCKS,
        Check.faults(locked, sequences(locked, "FOA MUD", "MUD FOA", "FOA MUD", "MUD PEA"))
            .get(0)
            .rule());
  }

  @Test
  void theFileSaysWhichPiecesAreFromThePile() {
    String text = ArrangementWriter.text(laid());
    assertTrue(
        text.contains(
            "{\"at\": \"r1c1\", \"kind\": \"square\", \"state\": \"made\", \"pile\": true,"),
        text);
    StatedArrangement back = ArrangementReader.read(SourceText.of("row.json", text));
    assertEquals(laid().blanket().brief(), back.blanket().brief());
    assertEquals(text, ArrangementWriter.text(back.scored()));
  }

  @Test
  void aPieceThatIsJoinedIsOnThePileNoMore() {
    Arrangement now = marked(laid(), mark(PieceState.JOINED, "r1c1"));
    assertEquals(
        List.of(
            new PileEntry(PieceKind.SQUARE, List.of("FOA", "MUD"), 1, Set.of()),
            new PileEntry(PieceKind.SQUARE, List.of("MUD", "FOA"), 1, Set.of())),
        now.blanket().brief().pile());
    assertEquals(PieceState.JOINED, now.blanket().state(0));
    assertArrayEquals(used(laid()), used(now));
    assertEquals(List.of(), Check.faults(now.blanket(), now.sequences()));
    assertEquals(
        laid().blanket().brief(), MarkedArrangement.undone(now).orElseThrow().blanket().brief());
  }

  @Test
  void aPieceThatIsPlannedAgainIsGivenUp() {
    Arrangement now = marked(laid(), mark(PieceState.PLANNED, "r1c3"));
    assertEquals(1, now.blanket().brief().pile().get(0).count());
    assertEquals(PieceState.PLANNED, now.blanket().state(2));
    assertFalse(PilePlacement.of(now.blanket(), now.sequences()).holds(2));
  }

  @Test
  void aCountKnowsWhatWasOnThePileThen() {
    Arrangement counted = marked(laid(), count("MUD", 5_000));
    int mud = 0;
    // of the border of r1c4 none is MUD; its centre, 1 m, is all that is still to be worked
    assertEquals(1_000, used(counted)[mud]);
    Arrangement joined = marked(counted, mark(PieceState.JOINED, "r1c2,r1c3"));
    assertEquals(1_000, used(joined)[mud]);
    Arrangement givenUp = marked(joined, mark(PieceState.PLANNED, "r1c1"));
    assertEquals(3_000, used(givenUp)[mud]);
  }

  @Test
  void madePiecesGoBackOnThePileWithTheirCounts() {
    Arrangement made = marked(laid(), mark(PieceState.MADE, "r1c1..r1c3"));
    assertTrue(made.blanket().brief().pile().isEmpty());
    Arrangement counted = marked(made, count("MUD", 5_000));
    Changed moved =
        Changes.apply(
            new CurrentPlan(counted.blanket().brief(), Optional.of(counted.sequences())),
            List.of(new Change.Move("--move all", List.of("all"))));
    Brief brief = moved.blanket().brief();
    assertEquals(
        List.of(
            new PileEntry(PieceKind.SQUARE, List.of("FOA", "MUD"), 2, Set.of("MUD")),
            new PileEntry(PieceKind.SQUARE, List.of("MUD", "FOA"), 1, Set.of("MUD"))),
        brief.pile());
    assertEquals(1_000, moved.blanket().usedMillimetres(counted.sequences())[0]);
    assertEquals(PieceState.PLANNED, moved.blanket().state(0));
    InputException thrown =
        assertThrows(
            InputException.class,
            () ->
                Changes.apply(
                    new CurrentPlan(brief, Optional.empty()),
                    List.of(new Change.Move("--move all", List.of("all")))));
    assertEquals("No piece is made there", thrown.mistakes().get(0).found());
  }

  @Test
  void aYarnThatIsSwappedStaysInFinishedPieces() {
    Changed swapped =
        Changes.apply(
            new CurrentPlan(laid().blanket().brief(), Optional.of(laid().sequences())),
            List.of(new Change.Swap("--swap MUD=PEA", "MUD", "PEA")));
    Sequences earlier = swapped.earlier().orElseThrow();
    assertArrayEquals(laid().sequences().of(0), earlier.of(0));
    assertEquals(swapped.blanket().yarnIndex("PEA"), earlier.yarn(3, 0));
  }

  private static long[] used(Arrangement arrangement) {
    return arrangement.blanket().usedMillimetres(arrangement.sequences());
  }

  private static Arrangement marked(Arrangement before, Mark mark) {
    return MarkedArrangement.of(before, mark);
  }

  private static Mark mark(PieceState state, String pieces) {
    return Mark.NONE.withStates(List.of(new Mark.State("mark", state, List.of(pieces.split(",")))));
  }

  private static Mark count(String code, long millimetres) {
    return Mark.NONE.withCounts(
        List.of(new Mark.Count("left", code, new YarnAmount.Length(millimetres))));
  }
}
