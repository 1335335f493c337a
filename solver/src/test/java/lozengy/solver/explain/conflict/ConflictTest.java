package lozengy.solver.explain.conflict;

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
    Feasibility.Impossible impossible = (Feasibility.Impossible) Examining.of(blanket, 1, LIMITS);
    assertEquals(List.of(), impossible.refutations());
    Conflict conflict = impossible.conflict().orElseThrow();
    assertTrue(conflict.minimal());
    assertEquals(
        List.of(
            "rules.neighbour-borders",
            "motifs.square.rounds[1].tone",
            "pieces[1] r6c4",
            "pieces[2] r6c6",
            "pieces[3] r5c5"),
        conflict.lines().stream().map(line -> line.path().toString()).toList());
    assertEquals(
        List.of("borders-differ", "tone", "lock", "lock", "lock"),
        conflict.lines().stream().map(line -> line.subject().code()).toList());
  }

  @Test
  void saysThatItMayNotBeMinimalWhereLimitsWereTooNarrow() {
    Blanket blanket = hemmedIn();
    Conflict conflict = Examining.conflict(blanket, 1, Limits.of(1, 2)).orElseThrow();
    assertFalse(conflict.minimal());
  }

  @Test
  void findsNoneWhereABriefFits() {
    Blanket blanket =
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.DARK, 1_000_000)
            .build();
    assertTrue(Examining.conflict(blanket, 1, LIMITS).isEmpty());
  }
}
