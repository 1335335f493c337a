package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lozengy.model.blanket.Blanket;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** What is told of memory: for pieces, rounds, and each walker's costs, and half as much again. */
class MemoryNeedTest {

  @Test
  void countsPiecesRoundsAndCosts() {
    Blanket blanket =
        BlanketBuilder.straight(4, 3)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(1000))
            .yarns(5, Tone.DARK, 100_000)
            .build();
    assertEquals((long) (1.5 * (12 * 1000 + 24 * 300 + 24 * 5 * 4)), MemoryNeed.bytes(blanket, 1));
    assertEquals(
        (long) (1.5 * (12 * 1000 + 24 * 300 + 3 * 24 * 5 * 4)), MemoryNeed.bytes(blanket, 3));
  }
}
