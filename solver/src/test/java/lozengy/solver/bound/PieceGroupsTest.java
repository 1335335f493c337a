package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.JoinedInBorders;
import lozengy.solver.bound.PieceGroups.Group;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Pieces grouped by hand. */
class PieceGroupsTest {

  private static BlanketBuilder squares(int across, int down) {
    return BlanketBuilder.straight(across, down)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(1000), round(1000))
        .yarns(2, Tone.LIGHT, 1_000_000)
        .yarns(1, Tone.DARK, 1_000_000);
  }

  @Test
  void likePiecesAreOneGroupWithTheFewestAndTheMostSeams() {
    PieceGroups groups =
        PieceGroups.of(squares(3, 3).note("r1c1", PieceState.MADE, "A", "B", "C").build());
    assertEquals(List.of(0), groups.fixed());
    Group group = groups.groups().get(0);
    assertEquals(1, groups.groups().size());
    assertEquals(PieceKind.SQUARE, group.kind());
    assertEquals(1, group.piece());
    assertEquals(8, group.count());
    assertEquals(2, group.fewestSeams());
    assertEquals(4, group.mostSeams());
    assertTrue(group.neighboursDiffer());
    assertArrayEquals(new boolean[] {true, true, false}, group.allowed()[0]);
    assertArrayEquals(new boolean[] {true, true, true}, group.allowed()[1]);
  }

  /** Bans, locks and what is worked make groups of their own. */
  @Test
  void piecesWithOtherChoicesAreGroupsOfTheirOwn() {
    PieceGroups groups =
        PieceGroups.of(
            squares(1, 6)
                .ban("r1c1", "C")
                .note("r2c1", PieceState.PLANNED, null, "C", null)
                .begun("r3c1", 1, "A", null, null)
                .begun("r4c1", 2, "A", "A", null)
                .ban("r5c1", "A", "B")
                .build());
    assertEquals(List.of(), groups.fixed());
    assertEquals(6, groups.groups().size());
    for (int piece = 0; piece < 6; piece++) {
      Group group = groups.groups().get(piece);
      assertEquals(piece, group.piece());
      assertEquals(1, group.count());
      // what is worked beside each other may be alike
      assertEquals(piece != 3, group.neighboursDiffer());
      assertEquals(piece == 0 || piece == 5 ? 1 : 2, group.fewestSeams());
      assertEquals(piece == 0 || piece == 5 ? 1 : 2, group.mostSeams());
    }
    assertArrayEquals(new boolean[] {true, true, false}, groups.groups().get(0).allowed()[1]);
    assertArrayEquals(new boolean[] {false, false, true}, groups.groups().get(1).allowed()[1]);
    assertArrayEquals(new boolean[] {true, true, true}, groups.groups().get(1).allowed()[2]);
    assertArrayEquals(new boolean[] {true, false, false}, groups.groups().get(2).allowed()[0]);
    // neither light yarn may lie in the fifth's centre: then nothing is valid, and all is allowed
    assertArrayEquals(new boolean[] {true, true, true}, groups.groups().get(4).allowed()[0]);
    assertArrayEquals(new boolean[] {false, false, true}, groups.groups().get(4).allowed()[1]);
  }

  @Test
  void roundsSideBySideMayBeAlikeWhereTheRuleIsFree() {
    PieceGroups groups = PieceGroups.of(squares(2, 2).within(WithinPiece.FREE).build());
    assertFalse(groups.groups().get(0).neighboursDiffer());
    assertTrue(
        PieceGroups.of(squares(2, 2).within(WithinPiece.ALL_DIFFER).build())
            .groups()
            .get(0)
            .neighboursDiffer());
  }

  /** Joined in the borders' yarns, pieces at an edge take less than those within. */
  @Test
  void piecesThatTakeOtherShareOfTheirSeamsAreGroupsOfTheirOwn() {
    PieceGroups groups = PieceGroups.of(JoinedInBorders.of(squares(3, 3).build(), 1));
    assertEquals(3, groups.groups().size());
    assertEquals(
        List.of(2, 3, 4), groups.groups().stream().map(Group::fewestSeams).sorted().toList());
    assertEquals(List.of(1, 4, 4), groups.groups().stream().map(Group::count).sorted().toList());
  }

  /** Of 40 pieces with a lock each of its own, those after the 32nd group are judged as free. */
  @Test
  void tooManyGroupsAreJudgedWithoutTheirLocks() {
    BlanketBuilder builder =
        BlanketBuilder.straight(1, 50)
            .motif(PieceKind.SQUARE, round(1000), round(1000), round(1000), round(1000))
            .yarns(3, Tone.MID, 1_000_000);
    for (int piece = 0; piece < 40; piece++) {
      String[] codes = new String[4];
      for (int round = 0, rest = piece; round < 4; round++, rest /= 3) {
        codes[round] = round < 3 || piece < 27 ? String.valueOf((char) ('A' + rest % 3)) : null;
      }
      codes[3] = piece % 2 == 0 && piece >= 27 ? "B" : null;
      if (piece >= 27) {
        codes[0] = null;
      }
      builder.note("r" + (piece + 1) + "c1", PieceState.PLANNED, codes);
    }
    PieceGroups groups = PieceGroups.of(builder.build());
    assertEquals(33, groups.groups().size());
    Group last = groups.groups().get(32);
    assertEquals(50, groups.groups().stream().mapToInt(Group::count).sum());
    for (boolean[] round : last.allowed()) {
      assertArrayEquals(new boolean[] {true, true, true}, round);
    }
  }
}
