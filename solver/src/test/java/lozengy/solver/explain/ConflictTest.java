package lozengy.solver.explain;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.Limits;
import org.junit.jupiter.api.Test;

class ConflictTest {

  private static final Limits LIMITS = Limits.of(100_000, 10_000);

  /** Nine by eleven squares, whose middle is hemmed in by three locked borders of three. */
  private static Blanket hemmedIn() {
    return BlanketBuilder.straight(9, 11)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK))
        .yarns(3, Tone.DARK, 1_000_000)
        .yarns(2, Tone.LIGHT, 1_000_000)
        .note("r1c1", PieceState.PLANNED, "D", "A")
        .note("r6c4", PieceState.PLANNED, null, "A")
        .note("r6c6", PieceState.MADE, "D", "B")
        .note("r5c5", PieceState.PLANNED, null, "C")
        .ban("r9c9", "E")
        .build();
  }

  @Test
  void tellsTheLinesThatHemAPieceIn() {
    Blanket blanket = hemmedIn();
    assertEquals(List.of(), Root.arguments(blanket));
    assertEquals(new Root.Closed(List.of()), Root.filter(blanket));
    assertEquals(
        new Feasibility.Impossible(
            List.of(
                "These lines of the brief cannot hold together; without any one of them the others"
                    + " could:",
                "rules.neighbour-borders: borders on a seam differ",
                "motifs.square.rounds[1].tone: round 2 of each square is dark (A, B, C)",
                "pieces[1] r6c4: r6c4 is locked: the border in A",
                "pieces[2] r6c6: r6c6 is made: round 1 in D, the border in B",
                "pieces[3] r5c5: r5c5 is locked: the border in C")),
        Feasibility.examine(blanket, 1, LIMITS));
  }

  @Test
  void saysThatItMayNotBeMinimalWhereLimitsWereTooNarrow() {
    Blanket blanket = hemmedIn();
    Conflict conflict = Conflict.find(blanket, 1, Limits.of(1, 2)).orElseThrow();
    assertFalse(conflict.minimal());
    assertTrue(conflict.words().get(0).endsWith("perhaps not all of them matter:"));
  }

  @Test
  void findsNoneWhereABriefFits() {
    Blanket blanket =
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.DARK, 1_000_000)
            .build();
    assertTrue(Conflict.find(blanket, 1, LIMITS).isEmpty());
  }
}
