package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Preferences;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;

/** The examples, each solved once with a seed and a number of moves. */
final class SolvedExamples {

  private static final Map<String, Arrangement> SOLVED = new HashMap<>();

  private SolvedExamples() {}

  /** The arrangement of an example that can be done. */
  static synchronized Arrangement of(String name) {
    return SOLVED.computeIfAbsent(
        name, each -> assertInstanceOf(SolveResult.Found.class, solve(each), each).arrangement());
  }

  /** The arrangement of an example without its look, everything weighing as it does by default. */
  static synchronized Arrangement plain(String name) {
    Brief brief =
        ExampleBriefs.blanket(name).brief().withLook(Look.NONE).withPrefer(Preferences.DEFAULT);
    return SOLVED.computeIfAbsent(
        name + ", plain",
        each ->
            assertInstanceOf(SolveResult.Found.class, solve(Blanket.of(brief)), each)
                .arrangement());
  }

  /** How the solve of an example ends. */
  static SolveResult solve(String name) {
    return solve(ExampleBriefs.blanket(name));
  }

  private static SolveResult solve(Blanket blanket) {
    SolveOptions options = SolveOptions.defaults().withMoves(300_000).withThreads(2);
    return Solver.solve(blanket, Optional.empty(), options);
  }
}
