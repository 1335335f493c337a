package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import org.junit.jupiter.api.Test;

class ResizedTest {

  private static final String SQUARE = "{ at: r1c1, rounds: [SKY, PEA, SKY], state: joined }";

  private static Changed resized(CurrentPlan current, int across, int down, Anchor anchor) {
    return Changes.apply(current, List.of(new Change.Resize("size", across, down, anchor)));
  }

  private static String refused(CurrentPlan current, int across, int down, Anchor anchor) {
    return assertThrows(InputException.class, () -> resized(current, across, down, anchor))
        .getMessage();
  }

  private static String codes(Changed changed, String name) {
    return Sample.codes(changed.blanket(), changed.earlier().orElseThrow(), name);
  }

  @Test
  void piecesThatAreThereKeepTheirYarnsByPlaceAndTheRestIsOpen() {
    Changed changed = resized(Sample.current(SQUARE), 3, 3, Anchor.TOP_LEFT);

    assertAll(
        () -> assertEquals(3, changed.blanket().layout().size().down()),
        () -> assertEquals("SKY PEA SKY", codes(changed, "r1c1")),
        () -> assertEquals(PieceState.JOINED, changed.blanket().state(0)),
        () -> assertEquals("MUD REE PEA", codes(changed, "r3c3")),
        () -> assertEquals("~ ~ ~", codes(changed, "r4c1")),
        () -> assertEquals("~ ~ ~", codes(changed, "r5c2")),
        // triangles go with their edge
        () -> assertEquals("SKY REE", codes(changed, "bottom2")),
        () -> assertEquals("SKY REE", codes(changed, "left1")),
        () -> assertEquals("~ ~", codes(changed, "left2")));
  }

  @Test
  void anotherCornerMayStay() {
    Changed changed = resized(Sample.current(SQUARE), 4, 3, Anchor.BOTTOM_RIGHT);

    assertAll(
        () -> assertEquals("SKY PEA SKY", codes(changed, "r3c2")),
        () -> assertEquals("SKY PEA SKY", Sample.locks(changed.blanket(), "r3c2")),
        () -> assertEquals("~ ~ ~", codes(changed, "r1c1")),
        () -> assertEquals("MUD REE PEA", codes(changed, "r5c4")),
        () -> assertEquals("~ ~ ~", codes(changed, "r5c1")));
  }

  @Test
  void aSmallerBlanketLosesPlannedPiecesOnly() {
    assertEquals(
        "MUD REE PEA", codes(resized(Sample.current(SQUARE), 2, 1, Anchor.TOP_LEFT), "r1c2"));
    assertEquals(
        "size: r1c1 is worked and would lie outside. Let another corner stay where it is, or mark"
            + " pieces planned to give them up",
        refused(Sample.current(SQUARE), 3, 1, Anchor.BOTTOM_LEFT));
  }

  @Test
  void whatIsJoinedToAnEdgeThatMovesIsTold() {
    CurrentPlan current =
        Sample.current("{ at: [bottom1, bottom-left], rounds: [SKY, MUD], state: joined }");

    assertEquals(
        "size: bottom1 and bottom-left are joined, and the outline would move away from them. Let"
            + " another corner stay where it is, or mark pieces made once they are taken off",
        refused(current, 3, 4, Anchor.TOP_LEFT));
    assertEquals("SKY MUD", codes(resized(current, 3, 4, Anchor.BOTTOM_LEFT), "bottom1"));
  }

  @Test
  void aMadeTriangleGoesWithItsEdge() {
    CurrentPlan current = Sample.current("{ at: bottom1, rounds: [SKY, MUD], state: made }");

    Blanket blanket = resized(current, 3, 4, Anchor.TOP_LEFT).blanket();

    assertEquals(PieceState.MADE, blanket.state(blanket.layout().find("bottom1").get().index()));
  }

  @Test
  void notesGoWithTheirPiecesAndWordsForKindsAndEdgesWithTheLayout() {
    CurrentPlan current =
        Sample.current(
            "{ at: triangles, not: [PEA] }",
            "{ at: bottom, not: [MUD] }",
            "{ at: row1, not: [SKY] }",
            "{ at: [r3c1, r3c3], rounds: [SKY, ~, ~] }");

    List<PieceNote> kept = resized(current, 3, 3, Anchor.TOP_LEFT).blanket().brief().pieces();
    List<PieceNote> moved = resized(current, 4, 2, Anchor.TOP_RIGHT).blanket().brief().pieces();

    assertEquals(
        List.of(List.of("triangles"), List.of("bottom"), List.of("row1"), List.of("r3c1", "r3c3")),
        kept.stream().map(PieceNote::at).toList());
    assertEquals(
        List.of(
            List.of("triangles"),
            List.of("bottom"),
            List.of("r1c2", "r1c3", "r1c4"),
            List.of("r3c2", "r3c4")),
        moved.stream().map(PieceNote::at).toList());
  }

  @Test
  void aCountGoesWithItsPieces() {
    CurrentPlan current = Sample.current(SQUARE);
    List<lozengy.model.brief.Yarn> yarns = new ArrayList<>(current.brief().yarns());
    Counted counted =
        new Counted(new YarnAmount.Length(1000), List.of(), List.of("r1c1", "r3c3"), 5);
    yarns.set(3, yarns.get(3).withCount(Optional.of(counted)));
    CurrentPlan withCount = new CurrentPlan(current.brief().withYarns(yarns), current.sequences());

    Blanket blanket = resized(withCount, 4, 2, Anchor.TOP_RIGHT).blanket();

    assertEquals(List.of("r1c2", "r3c4"), blanket.yarn(3).counted().orElseThrow().joined());
    assertEquals(1000, blanket.yarn(3).stockMillimetres());
  }

  @Test
  void aSizeThatCannotBeIsTold() {
    assertEquals(
        "size: The blanket is 3 across and 2 down already. Name another size",
        refused(Sample.current(), 3, 2, Anchor.TOP_LEFT));
    assertTrue(
        refused(Sample.current(), 3000, 2000, Anchor.TOP_LEFT)
            .startsWith("size: 3,000 across and 2,000 down make"));
  }

  @Test
  void aPlanIsNotNeeded() {
    Changed changed =
        resized(new CurrentPlan(Sample.brief(), Optional.empty()), 5, 5, Anchor.TOP_LEFT);

    assertEquals(Optional.empty(), changed.earlier());
    assertEquals(41 + 16 + 4, changed.blanket().pieceCount());
  }

  @Test
  void locksAndBansMayComeWithIt() {
    Changed changed =
        Changes.apply(
            Sample.current(),
            List.of(
                new Change.Hold(
                    "ban",
                    new PieceNote(List.of("r5c1"), List.of(), PieceState.PLANNED, Set.of("MUD"))),
                new Change.Resize("size", 3, 3, Anchor.TOP_LEFT)));

    int piece = changed.blanket().layout().find("r5c1").orElseThrow().index();
    assertTrue(changed.blanket().banned(piece, 0));
  }
}
