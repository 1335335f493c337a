package lozengy.model.blanket;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.LabColours;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.input.InputException;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BlanketTest {

  @Test
  void aMotifThatNoPieceFollowsMakesNoLayer() {
    Blanket blanket =
        BlanketBuilder.onPoint(2, 2)
            .motif(PieceKind.SQUARE, 2)
            .motif(PieceKind.SIDE_TRIANGLE, 4)
            .yarn("A", "A", "#000000")
            .yarn("B", "B", "#ffffff")
            .build();
    assertEquals(2, blanket.layerCount());
  }

  private static BlanketBuilder row() {
    return BlanketBuilder.straight(3, 1)
        .saltmarsh()
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1000, Tone.LIGHT),
            BlanketBuilder.round(2000, Tone.values()));
  }

  @Test
  void piecesAndRounds() {
    Blanket blanket =
        row()
            .piece("r1c1", PieceState.JOINED, "SND", "MUD")
            .begun("r1c2", 1, "SND", null)
            .ban("r1c3", "REE")
            .build();
    assertEquals(3, blanket.pieceCount());
    assertEquals(2, blanket.roundCount(1));
    assertEquals("r1c2", blanket.place(1).name());
    assertEquals(PieceKind.SQUARE, blanket.kind(2));
    int[] worked = {2, 1, 0};
    for (int piece = 0; piece < 3; piece++) {
      assertEquals(worked[piece], blanket.roundsWorked(piece));
      assertEquals(worked[piece] > 0, blanket.worked(piece, 0));
      assertEquals(worked[piece] > 1, blanket.worked(piece, 1));
      assertEquals(piece == 1, blanket.partWorked(piece));
      assertEquals(piece == 2, blanket.banned(piece, 3));
      assertFalse(blanket.banned(piece, 0));
      assertEquals(piece == 0 ? PieceState.JOINED : PieceState.PLANNED, blanket.state(piece));
    }
    assertEquals(0, blanket.locked(0, 1));
    assertEquals(4, blanket.stated(1, 0));
    assertTrue(blanket.free(1, 1));
    assertTrue(blanket.motifs().toneAllows(PieceKind.SQUARE, 0, 3));
    assertFalse(blanket.motifs().toneAllows(PieceKind.SQUARE, 0, 0));
    assertEquals(2000, blanket.motifs().needMillimetres(PieceKind.SQUARE, 1, 0));
    assertNull(blanket.motif(PieceKind.CORNER_TRIANGLE));
  }

  @Test
  void yarns() {
    Blanket blanket = row().build();
    assertEquals(6, blanket.yarnCount());
    assertEquals(3, blanket.yarnIndex("REE"));
    assertEquals(-1, blanket.yarnIndex("XXX"));
    assertEquals("Reed", blanket.yarn(3).name());
    assertEquals(Tone.DARK, blanket.yarns().tone(0));
    assertEquals(Tone.LIGHT, blanket.yarns().tone(3));
    assertEquals(LabColours.of(Srgb.parse("#b9b57a")), blanket.yarns().lab(3));
    double apart = ColourDifference.ciede2000(blanket.yarns().lab(0), blanket.yarns().lab(3));
    assertEquals(apart, blanket.yarns().difference(0, 3), 1e-12);
    assertEquals(apart, blanket.yarns().difference(3, 0), 1e-12);
    assertEquals(0, blanket.yarns().difference(3, 3));
    assertSame(blanket.yarns().seen(), blanket.yarns().seen());
    assertEquals(0, blanket.yarns().seen().least(3, 3));
    assertEquals(10, blanket.measures().sideCm());
    assertEquals(1_000_000_000, blanket.yarn(0).stockMillimetres());
  }

  /** SND and BAR are 1.8 apart. */
  @Test
  void bordersCountAsTheSameBelowTheLeastContrast() {
    Blanket plain = row().build();
    assertTrue(plain.yarns().sameBorder(4, 4));
    assertFalse(plain.yarns().sameBorder(4, 5));
    double exactly = plain.yarns().difference(4, 5);
    Blanket just = row().rules(exactly, WithinPiece.FREE, OptionalInt.empty(), 0).build();
    assertFalse(just.yarns().sameBorder(4, 5));
    Blanket asking = row().rules(2.5, WithinPiece.FREE, OptionalInt.empty(), 0).build();
    assertTrue(asking.yarns().sameBorder(4, 5));
    assertFalse(asking.yarns().sameBorder(0, 5));
  }

  @Test
  void bordersMayMatchBetweenTwoJoinedPiecesAlone() {
    Blanket blanket =
        row()
            .piece("r1c1", PieceState.JOINED, "SND", "MUD")
            .piece("r1c2", PieceState.JOINED, "SND", "MUD")
            .piece("r1c3", PieceState.MADE, "SND", "MUD")
            .build();
    assertTrue(blanket.bordersMayMatch(0, 1));
    assertFalse(blanket.bordersMayMatch(1, 2));
    assertFalse(blanket.bordersMayMatch(2, 0));
  }

  /** The outcome of two notes on one piece: the further state, and all that either says. */
  @Test
  void notesOnOnePieceAreTakenTogether() {
    Blanket blanket =
        row()
            .piece("r1c1", PieceState.MADE, "SND", "MUD")
            .ban("r1c1", "REE")
            .begun("r1c2", 1, "SND", null)
            .piece("r1c2", PieceState.PLANNED, null, "HEA")
            .ban("all", "SAM")
            .build();
    assertEquals(PieceState.MADE, blanket.state(0));
    assertEquals(2, blanket.roundsWorked(0));
    assertTrue(blanket.banned(0, 3) && blanket.banned(0, 1) && blanket.banned(2, 1));
    assertEquals(1, blanket.roundsWorked(1));
    assertEquals(4, blanket.locked(1, 0));
    assertEquals(2, blanket.locked(1, 1));
  }

  @Test
  void aYarnThatIsGoneIsBannedFromAllPieces() {
    Brief brief = row().build().brief();
    List<Yarn> yarns =
        brief.yarns().stream().map(yarn -> yarn.withGone(yarn.code().equals("REE"))).toList();
    Blanket blanket = Blanket.ofUnjudged(brief.withYarns(yarns));
    for (int piece = 0; piece < 3; piece++) {
      for (int yarn = 0; yarn < 6; yarn++) {
        assertEquals(yarn == 3, blanket.banned(piece, yarn));
      }
    }
  }

  /** 3.1 m of which 5 % are kept back: 2.945 m. */
  @Test
  void whatIsKeptBackIsTakenOffTheStock() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .yarn("A", "A", "#000000", 3_100, 1)
            .motif(PieceKind.SQUARE, 1)
            .rules(0, WithinPiece.FREE, OptionalInt.empty(), 5)
            .build();
    assertEquals(2945, blanket.yarns().usableMillimetres(0));
    assertEquals(3100, blanket.yarn(0).stockMillimetres());
    assertArrayEquals(
        new long[] {2000}, blanket.usedMillimetres(BlanketBuilder.sequences(blanket, "A A")));
    assertArrayEquals(
        new long[] {1000}, blanket.usedMillimetres(BlanketBuilder.sequences(blanket, "A ~")));
  }

  /** A triangle's long side measures the square root of 2 of a square's. */
  @Test
  void aTrianglesEdgeIsHeldAgainstTheSquares() {
    Brief brief =
        BlanketBuilder.filled(2, 2)
            .saltmarsh()
            .motif(PieceKind.SQUARE, 1)
            .motif(PieceKind.SIDE_TRIANGLE, 1)
            .motif(PieceKind.CORNER_TRIANGLE, 1)
            .build()
            .brief();
    assertTrue(Blanket.ofUnjudged(brief).edgeFit().isEmpty());
    Map<PieceKind, Motif> motifs = new EnumMap<>(brief.motifs());
    motifs.put(
        PieceKind.SIDE_TRIANGLE,
        new Motif(OptionalDouble.of(15), motifs.get(PieceKind.SIDE_TRIANGLE).rounds()));
    assertTrue(Blanket.ofUnjudged(brief.withMotifs(motifs)).edgeFit().isPresent());
    assertTrue(row().build().edgeFit().isEmpty());
  }

  @Test
  void blanketsOfEqualBriefsAreEqual() {
    Blanket one = row().build();
    assertEquals(one, row().build());
    assertEquals(one.hashCode(), row().build().hashCode());
    assertNotEquals(one, row().ban("r1c1", "MUD").build());
    assertNotEquals(one.hashCode(), row().ban("r1c1", "MUD").build().hashCode());
    assertEquals(one.brief(), row().build().brief());
  }

  @Test
  void aBriefWhosePartsDoNotFitIsRefused() {
    Brief brief = row().ban("r9c9", "MUD").build().brief();
    assertThrows(InputException.class, () -> Blanket.of(brief));
    for (Executable none :
        List.<Executable>of(() -> Blanket.of(null), () -> Blanket.ofUnjudged(null))) {
      String told = assertThrows(NullPointerException.class, none).getMessage();
      assertTrue(told.startsWith("brief"), told);
    }
    assertEquals(3, Blanket.of(row().build().brief()).pieceCount());
    assertEquals(List.of(), row().build().pile().stacks());
  }
}
