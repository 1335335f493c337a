package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Assertions;
import lozengy.solver.search.Budget;
import lozengy.solver.search.Search;
import org.junit.jupiter.api.Test;

/** Centres that differ on a seam, with no more than two yarns for them. */
class CentresTest {

  /** Beyond what the exact model takes on, so that the search is alone with it. */
  private static final int MANY = 40;

  private static Blanket twoCentres(int across, int down) {
    BlanketBuilder builder =
        BlanketBuilder.filled(across, down)
            .yarns(2, Tone.LIGHT, 1_000_000_000L)
            .yarns(6, Tone.DARK, 1_000_000_000L);
    for (PieceKind kind : PieceKind.values()) {
      builder.motif(
          kind,
          BlanketBuilder.round(1000, Tone.LIGHT),
          BlanketBuilder.round(1000, Tone.DARK),
          BlanketBuilder.round(1000, Tone.DARK));
    }
    Blanket blanket = builder.build();
    return Blanket.of(blanket.brief().withRules(blanket.brief().rules().withCentresDiffer(true)));
  }

  @Test
  void twoCentreYarnsAreSolved() {
    Blanket blanket = twoCentres(6, 8);
    SolveOptions options = SolveOptions.defaults().withMoves(300_000).withThreads(1);
    SolveResult.Found found =
        assertInstanceOf(SolveResult.Found.class, Solver.solve(blanket, Optional.empty(), options));
    assertEquals(List.of(), Check.faults(blanket, found.arrangement().sequences()));
  }

  @Test
  void theSearchAloneFindsAStartForManyPieces() {
    Blanket blanket = twoCentres(MANY, MANY);
    Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
    Budget budget = new Budget(OptionalLong.of(3_000_000), OptionalDouble.empty(), () -> false);
    try (Search search =
        new Search(problem, 1, 2, 1, budget, () -> Long.MIN_VALUE, () -> {}, Assertions.OFF)) {
      assertTrue(search.start(), "no start found");
      assertEquals(List.of(), Check.faults(blanket, problem.sequences(search.best())));
    }
  }

  @Test
  void oneCentreYarnIsProvedImpossible() {
    Blanket one =
        BlanketBuilder.straight(2, 1)
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(1000, Tone.LIGHT),
                BlanketBuilder.round(1000, Tone.DARK))
            .yarns(1, Tone.LIGHT, 1_000_000)
            .yarns(2, Tone.DARK, 1_000_000)
            .build();
    assertTrue(Root.arguments(one).isEmpty());
    Blanket blanket =
        Blanket.of(one.brief().withRules(one.brief().rules().withCentresDiffer(true)));
    assertEquals(1, Root.arguments(blanket).size());
  }
}
