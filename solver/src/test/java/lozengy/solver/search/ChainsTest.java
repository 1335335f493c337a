package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Chains go along whatever clashes: centres too, where a brief asks that they differ. */
class ChainsTest {

  private static final double ANY_LOSS = 1e12;

  @Test
  void aChainOfCentresExchangesAllThatHangTogether() {
    Blanket blanket =
        BlanketBuilder.straight(5, 4)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(1000, Tone.LIGHT),
                BlanketBuilder.round(1000, Tone.DARK))
            .yarns(2, Tone.LIGHT, 1_000_000)
            .yarns(2, Tone.DARK, 1_000_000)
            .build();
    blanket =
        Blanket.of(blanket.brief().withRules(blanket.brief().rules().withCentresDiffer(true)));
    Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
    Sequences chessboard = blanket.open();
    for (int piece = 0; piece < chessboard.pieces(); piece++) {
      int side = (blanket.place(piece).x() + blanket.place(piece).y()) / 2 % 2;
      chessboard.set(piece, 0, side);
      chessboard.set(piece, 1, 2 + side);
    }
    State state = new State(problem);
    state.reset(problem.assignment(chessboard));
    assertEquals(0, state.hard());
    Draws draws = new Draws(1);
    Chains chains = new Chains(state, draws, new Acceptance(state, draws, null), true);
    int before = state.yarn[0];
    for (int tries = 0; tries < 20 && state.yarn[0] == before; tries++) {
      chains.exchange(0, ANY_LOSS);
    }
    assertNotEquals(before, state.yarn[0]);
    assertEquals(0, state.hard());
    for (int piece = 0; piece < chessboard.pieces(); piece++) {
      assertEquals(1 - chessboard.yarn(piece, 0), state.yarn[2 * piece]);
    }
  }

  /** Two shades of one class side by side clash: the second border of the chain stays as it is. */
  @Test
  void aBorderThatClashesAndKeepsItsYarnCostsNothing() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
            .yarn(Tone.DARK, new Srgb(20, 20, 90), 5000)
            .yarn(Tone.DARK, new Srgb(21, 21, 91), 3000)
            .yarn(Tone.DARK, new Srgb(160, 20, 20), 4000)
            .minContrast(8)
            .build();
    Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
    int made = 0;
    for (long seed = 1; seed <= 20; seed++) {
      State state = new State(problem);
      state.reset(new int[] {0, 0});
      Draws draws = new Draws(seed);
      Audit audit = new Audit(Assertions.FULL, state, seed);
      new Chains(state, draws, new Acceptance(state, draws, audit), true).exchange(0, ANY_LOSS);
      made += state.yarn[0] == 1 && state.yarn[1] == 0 ? 1 : 0;
      assertEquals(Cost.of(problem, state.yarn, 1).total(), state.cost());
    }
    assertTrue(made > 3, made + " made");
  }
}
