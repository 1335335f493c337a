package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroupsInBriefsTest {

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Groups
      layout: { setting: on-point, across: 3, down: 2 }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 1 }, { metres: 1 }, { metres: 1 } ] }
        triangle: { rounds: [ { metres: 1 }, { metres: 1 } ] }
        corner: { rounds: [ { metres: 1 } ] }
      yarns:
        - { code: MUD, colour: "#2c2a29", left: 500 m }
        - { code: REE, colour: "#b9b57a", left: 500 m }
        - { code: PEA, colour: "#553527", left: 500 m }
      pieces:
      """;

  private static Brief brief(String note) {
    return BriefReader.read(SourceText.of("brief.yaml", BRIEF + "  - " + note + "\n"));
  }

  private static Blanket blanket(String note) {
    return Blanket.of(brief(note));
  }

  private static String mistake(String note) {
    return assertThrows(InputException.class, () -> brief(note)).getMessage();
  }

  @Test
  void aYarnIsBannedFromAllPiecesOfAGroup() {
    Blanket blanket = blanket("{ at: triangles, not: [PEA] }");

    int pea = blanket.yarnIndex("PEA");
    for (Place place : blanket.layout().places()) {
      assertEquals(
          place.kind() == PieceKind.SIDE_TRIANGLE,
          blanket.banned(place.index(), pea),
          place.name());
    }
  }

  @Test
  void roundsCountFromTheBorderAfterTwoPoints() {
    Blanket blanket = blanket("{ at: [row2, bottom-left], rounds: [.., REE] }");

    assertEquals(
        "r2c1:..R r2c2:..R bottom-left:R",
        List.of("r2c1", "r2c2", "bottom-left").stream()
            .map(name -> name + ":" + held(blanket, name))
            .reduce((a, b) -> a + " " + b)
            .orElseThrow());
    assertEquals(
        3, IntStream.range(0, blanket.pieceCount()).filter(p -> anyHeld(blanket, p)).count());
  }

  @Test
  void openRoundsMayStandAmongThoseCountedFromTheBorder() {
    assertEquals(".M.", held(blanket("{ at: r1c1, rounds: [.., MUD, ~] }"), "r1c1"));
  }

  @Test
  void aWorkedGroupHasTheStateInEveryPiece() {
    Blanket blanket = blanket("{ at: corners, rounds: [.., MUD], state: joined }");

    for (Place place : blanket.layout().places()) {
      boolean corner = place.kind() == PieceKind.CORNER_TRIANGLE;
      assertEquals(corner ? PieceState.JOINED : PieceState.PLANNED, blanket.state(place.index()));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "row9 | There is no piece \"row9\". The rows are row1 to row3",
        "rows | There is no piece \"rows\". The rows are row1 to row3",
        "row 2 | There is no piece \"row 2\". Write row2",
        "strip7 | There is no piece \"strip7\". The strips are strip1 to strip6",
        "outlin | There is no piece \"outlin\". Maybe outline is meant",
        "corner | There is no piece \"corner\". Maybe corners is meant",
        "r1c3..r1c1 | There is no piece \"r1c3..r1c1\". It runs backwards: write r1c1..r1c3",
        "r1c1..r2c1 | There is no piece \"r1c1..r2c1\". A range stays in one row or along one side,"
            + " such as r3c1..r3c6; whole rows are such as row3..row5",
        "r1c1..r1c9 | There is no piece \"r1c1..r1c9\". There is no r1c9. A range is such as"
            + " r3c1..r3c6, row3..row5 or strip1..strip4",
        "r1c1.. | There is no piece \"r1c1..\". One end is missing. A range is such as r3c1..r3c6,"
            + " row3..row5 or strip1..strip4",
        "r1c9 | There is no piece \"r1c9\". Row 1 holds places 1 to 3"
      })
  void anUnknownGroupIsToldWithWhatThereIs(String selector, String words) {
    assertEquals(
        "line 13, pieces[0].at: " + words, mistake("{ at: " + selector + ", not: [PEA] }"));
  }

  @Test
  void roundsMustFitEveryKindInTheGroup() {
    assertEquals(
        "line 13, pieces[0].rounds: top1 is given 3 rounds. A triangle has 2 rounds; ~ leaves"
            + " one open, and .. before the first counts from the border\n"
            + "line 13, pieces[0].rounds: top-left is given 3 rounds. A corner has 1 round; ~"
            + " leaves one open, and .. before the first counts from the border",
        mistake("{ at: all, rounds: [~, ~, MUD] }"));
    assertTrue(
        mistake("{ at: outline, rounds: [.., MUD, REE] }")
            .contains("top-left is given 2 rounds. A corner has 1"));
  }

  @Test
  void theSameGroupTwiceIsAMistakeAndAnOverlapIsNone() {
    assertEquals(
        "line 13, pieces[0].at[1]: row1 is named twice. Name it once",
        mistake("{ at: [row1, row1], not: [PEA] }"));
    assertEquals(1, brief("{ at: [row1, r1c1], not: [PEA] }").pieces().size());
  }

  @Test
  void locksOfAGroupThatBreakARuleAreNamedWithPiecesAndYarns() {
    assertEquals(
        "line 13, pieces[0].rounds: row1 and row2 are joined along 4 sides and all have the border"
            + " MUD. Hold another yarn there",
        mistake("{ at: row1..row2, rounds: [.., MUD] }"));
  }

  @Test
  void locksAreJudgedBesideOtherMistakes() {
    String words =
        mistake("{ at: r99c1, not: [PEA] }\n  - { at: r1c1, rounds: [.., MUD], not: [MUD] }");

    assertTrue(words.contains("There is no piece \"r99c1\""), words);
    assertTrue(words.contains("r1c1: the border has MUD, which is banned from this piece"), words);
  }

  @Test
  void anUnknownYarnIsToldAtItsPlaceInTheList() {
    assertTrue(
        mistake("{ at: squares, rounds: [.., MUT] }")
            .startsWith("line 13, pieces[0].rounds[1]: No yarn has the code \"MUT\""));
    assertTrue(
        mistake("{ at: r1c1, rounds: [MUD, .., REE] }").contains("\"..\" is not a yarn's code"));
  }

  @Test
  void whatTheUserWroteIsWrittenBack() {
    Brief brief = brief("{ at: [row2, corners], rounds: [.., REE], not: [PEA] }");

    String text = BriefWriter.text(brief);

    assertTrue(
        text.contains("\"at\": [\"row2\", \"corners\"], \"rounds\": [\"..\", \"REE\"]"), text);
    assertEquals(brief, BriefReader.read(SourceText.of("brief.json", text)));
  }

  private static String held(Blanket blanket, String name) {
    int piece = blanket.layout().find(name).orElseThrow().index();
    StringBuilder held = new StringBuilder();
    for (int round = 0; round < blanket.roundCount(piece); round++) {
      int yarn = blanket.locked(piece, round);
      held.append(yarn == Sequences.OPEN ? "." : blanket.yarn(yarn).code().substring(0, 1));
    }
    return held.toString();
  }

  private static boolean anyHeld(Blanket blanket, int piece) {
    boolean any = false;
    for (int round = 0; round < blanket.roundCount(piece); round++) {
      any |= blanket.locked(piece, round) != Sequences.OPEN;
    }
    return any;
  }
}
