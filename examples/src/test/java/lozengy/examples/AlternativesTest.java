package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.alternatives.AlternativeSearch;
import lozengy.solver.alternatives.Alternatives;
import org.junit.jupiter.api.Test;

class AlternativesTest {

  private static final double WITHIN_POINTS = 1;

  /** With half of the moves that a throw is given if none are said. */
  @Test
  void theDemoHasFiveThatDifferInMostRounds() {
    Alternatives found = find("saltmarsh-throw", 5, 4_000_000);
    assertEquals(5, found.found().size());
    double best = found.found().get(0).score().total();
    for (Arrangement each : found.found()) {
      assertTrue(each.score().total() >= best - WITHIN_POINTS, each.score().toString());
      assertEquals(List.of(), Check.faults(each.blanket(), each.sequences()));
    }
    assertTrue(found.leastDistance() >= 0.6, "only " + found.leastDistance() + " apart");
  }

  @Test
  void theSameCallGivesTheSame() {
    Alternatives once = find("cushion", 3, 200_000);
    Alternatives again = find("cushion", 3, 200_000);
    assertTrue(once.found().size() > 1);
    assertEquals(once.found().size(), again.found().size());
    for (int i = 0; i < once.found().size(); i++) {
      assertEquals(once.found().get(i).sequences(), again.found().get(i).sequences());
    }
  }

  private static Alternatives find(String name, int count, long moves) {
    Blanket blanket = ExampleBriefs.blanket(name);
    SolveOptions options = SolveOptions.defaults().withMoves(moves).withThreads(2);
    SolveResult first = Solver.solve(blanket, Optional.empty(), options);
    Arrangement arrangement = ((SolveResult.Found) first).arrangement();
    return AlternativeSearch.find(arrangement, Optional.empty(), options, count, WITHIN_POINTS);
  }
}
