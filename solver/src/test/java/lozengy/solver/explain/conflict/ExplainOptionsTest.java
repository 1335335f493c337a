package lozengy.solver.explain.conflict;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lozengy.model.blanket.Blanket;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.Limits;
import org.junit.jupiter.api.Test;

/** 200,000 dead ends and rounds for each smaller search: from 30 dead ends to 2,000. */
class ExplainOptionsTest {

  private static Blanket squares(int across, int down) {
    return BlanketBuilder.straight(across, down)
        .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(1000))
        .yarns(2, Tone.DARK, 1_000_000)
        .build();
  }

  @Test
  void smallerSearchesOfLargerBlanketsMayFailLess() {
    ExplainOptions options = ExplainOptions.of(1, () -> false);
    assertEquals(2_000, options.each(squares(2, 2)).fails());
    // 200,000 by 1 and 2 rounds of 200 pieces
    assertEquals(498, options.each(squares(20, 10)).fails());
    assertEquals(30, options.each(squares(80, 50)).fails());
    Limits each = new ExplainOptions(1, 7, 20, () -> true).each(squares(2, 2));
    assertEquals(20, each.fails());
    assertEquals(7, each.nodes());
    assertEquals(true, each.stop().getAsBoolean());
  }
}
