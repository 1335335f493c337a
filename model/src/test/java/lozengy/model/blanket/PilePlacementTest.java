package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** The pile, and where its pieces lie. */
class PilePlacementTest {

  private static PileEntry entry(PieceKind kind, int count, int out, String... codes) {
    return new PileEntry(kind, List.of(codes), count, Set.of(), out);
  }

  private static PileEntry squares(int count, String... codes) {
    return entry(PieceKind.SQUARE, count, 0, codes);
  }

  private static Blanket piled(BlanketBuilder builder, PileEntry... pile) {
    return Blanket.ofUnjudged(builder.build().brief().withPile(List.of(pile)));
  }

  private static BlanketBuilder row(int squares) {
    return BlanketBuilder.straight(squares, 1).saltmarsh().motif(PieceKind.SQUARE, 2);
  }

  private static PilePlacement laid(Blanket blanket, String sequences) {
    return PilePlacement.of(blanket, BlanketBuilder.sequences(blanket, sequences));
  }

  @Test
  void alikePiecesAreOneStackAndThoseThatStayOutAreNotInIt() {
    Pile pile =
        piled(
                BlanketBuilder.filled(1, 1)
                    .saltmarsh()
                    .motif(PieceKind.SQUARE, 1)
                    .motif(PieceKind.CORNER_TRIANGLE, 1),
                entry(PieceKind.CORNER_TRIANGLE, 2, 1, "MUD"),
                entry(PieceKind.SQUARE, 1, 1, "MUD"),
                entry(PieceKind.CORNER_TRIANGLE, 1, 0, "REE"),
                entry(PieceKind.CORNER_TRIANGLE, 2, 0, "MUD"))
            .pile();
    assertFalse(pile.isEmpty());
    assertEquals(2, pile.stacks().size());
    assertEquals(3, pile.stacks().get(0).count());
    assertEquals("pile[0]", pile.stacks().get(0).path().toString());
    assertEquals(
        List.of("pile[3]"), pile.stacks().get(0).also().stream().map(Object::toString).toList());
    assertEquals(3, pile.stacks().get(1).border());
    assertEquals(List.of(1, 1), pile.out().stream().map(Stack::count).toList());
    assertEquals(4, pile.count());
    assertEquals(4, pile.count(PieceKind.CORNER_TRIANGLE));
    assertEquals(0, pile.count(PieceKind.SQUARE));
    boolean[][][] shown = pile.shown(6);
    assertNull(shown[PieceKind.SQUARE.ordinal()]);
    assertArrayEquals(
        new boolean[] {true, false, false, true, false, false},
        shown[PieceKind.CORNER_TRIANGLE.ordinal()][0]);
    assertTrue(piled(row(2), entry(PieceKind.SQUARE, 1, 1, "MUD", "REE")).pile().isEmpty());
  }

  @Test
  void piecesLieWhereTheirYarnsShowAsOftenAsThereAreSome() {
    Blanket blanket =
        piled(
            row(6).piece("r1c1", PieceState.MADE, "MUD", "REE").begun("r1c2", 1, "MUD", null),
            squares(2, "MUD", "REE"),
            squares(2, "SND", "BAR"));
    PilePlacement laid = laid(blanket, "MUD,REE MUD,REE SND,BAR MUD,REE MUD,REE MUD,REE");
    assertEquals(List.of(2, 3, 4), laid.pieces());
    assertEquals(0, laid.missing(0));
    assertEquals(1, laid.missing(1));
    int[] stacks = {-1, -1, 1, 0, 0, -1};
    int[] worked = {2, 1, 2, 2, 2, 0};
    for (int piece = 0; piece < 6; piece++) {
      assertEquals(stacks[piece], laid.stack(piece));
      assertEquals(stacks[piece] >= 0, laid.holds(piece));
      assertEquals(worked[piece], laid.roundsWorked(piece));
      boolean done = piece != 1 && piece != 5;
      assertEquals(done, laid.worked(piece));
      assertEquals(done ? PieceState.MADE : PieceState.PLANNED, laid.state(piece));
      assertEquals(!done, laid.toWork(piece));
    }
    assertFalse(laid.toWork(1, 0), "worked");
    assertTrue(laid.toWork(1, 1));
    assertFalse(laid.toWork(2, 1));
  }

  /** At the third place the tone keeps MUD out of a piece to be worked, at the fourth a ban. */
  @Test
  void thoseGoFirstWhereOnlyAFinishedPieceMayLie() {
    BlanketBuilder builder =
        BlanketBuilder.straight(4, 1)
            .saltmarsh()
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1, Tone.values()))
            .ban("r1c3", "MUD")
            .ban("r1c4", "MUD");
    assertEquals(
        List.of(2, 3), laid(piled(builder, squares(2, "MUD")), "MUD MUD MUD MUD").pieces());
    assertEquals(
        List.of(0, 2, 3), laid(piled(builder, squares(3, "MUD")), "MUD MUD MUD MUD").pieces());
    assertEquals(List.of(2), laid(piled(builder, squares(1, "MUD")), "MUD MUD MUD MUD").pieces());
  }

  @Test
  void whereRoundsAreOpenAPieceMayStillComeToLie() {
    Blanket blanket = piled(row(4), squares(1, "MUD", "REE"));
    PilePlacement laid = laid(blanket, "MUD,~ ~,MUD ~,~ SND,REE");
    assertEquals(List.of(), laid.pieces());
    assertFalse(laid.toWork(0));
    assertTrue(laid.toWork(1));
    assertFalse(laid.toWork(2));
    assertTrue(laid.toWork(3));
    PilePlacement bare = laid(row(1).build(), "~,~");
    assertTrue(bare.toWork(0));
    assertEquals(List.of(), bare.pieces());
    // one that shows a finished piece's yarns, of which there is no other, is to be worked
    assertTrue(laid(blanket, "MUD,REE MUD,REE").toWork(1));
    Blanket corners =
        piled(
            BlanketBuilder.filled(1, 1)
                .saltmarsh()
                .motif(PieceKind.SQUARE, 1)
                .motif(PieceKind.CORNER_TRIANGLE, 2),
            entry(PieceKind.CORNER_TRIANGLE, 1, 0, "MUD", "REE"),
            squares(1, "SND"));
    PilePlacement mixed = laid(corners, "MUD ~,REE");
    assertTrue(mixed.toWork(0));
    assertFalse(mixed.toWork(1));
  }

  @Test
  void aBlanketKnowsWhatItsPlacesMayShow() {
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 1)
            .saltmarsh()
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1, Tone.LIGHT))
            .ban("r1c2", "REE")
            .piece("r1c3", PieceState.MADE, "SND");
    Blanket blanket = piled(builder, squares(1, "MUD"));
    assertTrue(blanket.domains().takesPile(0));
    assertFalse(blanket.domains().takesPile(2), "made");
    assertFalse(builder.build().domains().takesPile(0), "nothing on the pile");
    boolean[] byTone = {true, false, false, true, true, true};
    for (int yarn = 0; yarn < 6; yarn++) {
      assertEquals(byTone[yarn], blanket.domains().mayShow(PieceKind.SQUARE, 0, yarn));
      assertEquals(byTone[yarn] && yarn != 3, blanket.domains().mayShow(1, 0, yarn));
      assertEquals(
          byTone[yarn] && yarn != 0, builder.build().domains().mayShow(PieceKind.SQUARE, 0, yarn));
      assertEquals(byTone[yarn] && yarn != 0, builder.build().domains().mayShow(0, 0, yarn));
      assertEquals(byTone[yarn] && yarn != 0 && yarn != 3, blanket.domains().mayTake(1, 0, yarn));
    }
  }

  @Test
  void aPieceThatLiesWhereNoneCanBeWorkedLiesThereOnce() {
    Blanket blanket = piled(onlyFinishedAtTheFirst(), squares(2, "MUD", "MUD"));
    PilePlacement placement = laid(blanket, "MUD,MUD MUD,MUD");
    assertEquals(List.of(0, 1), placement.pieces());
    assertEquals(0, placement.missing(0));
  }

  private static BlanketBuilder onlyFinishedAtTheFirst() {
    BlanketBuilder builder = row(2);
    List.of("MUD", "SAM", "HEA", "REE", "SND", "BAR").forEach(code -> builder.ban("r1c1", code));
    return builder;
  }
}
