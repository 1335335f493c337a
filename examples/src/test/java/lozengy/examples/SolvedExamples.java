package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import lozengy.model.arrangement.Arrangement;
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

  /** How the solve of an example ends. */
  static SolveResult solve(String name) {
    SolveOptions options =
        new SolveOptions(
            1, OptionalLong.of(300_000), OptionalDouble.empty(), 2, () -> false, progress -> {});
    return Solver.solve(ExampleBriefs.blanket(name), Optional.empty(), options);
  }
}
