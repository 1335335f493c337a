package lozengy.report.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.report.Json;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solving;

/**
 * A line solved with one seed after another.
 *
 * @param best the result whose objective is the highest, of equal ones the first; where none was
 *     found, that nothing fits, or else the first
 * @param tried each seed with its result, for programs
 */
record SeedRuns(SolveResult best, List<Map<String, Object>> tried) {

  /**
   * Solves, with no further seed once it is proved that nothing fits or that nothing is better, or
   * the user stops it.
   *
   * @param options how to solve, with the first seed
   * @param seeds how many seeds at most, at least 1
   */
  static SeedRuns of(
      Solving solving,
      Blanket blanket,
      Optional<Sequences> earlier,
      SolveOptions options,
      int seeds) {
    SolveResult best = null;
    List<Map<String, Object>> tried = new ArrayList<>();
    for (int i = 0; i < seeds; i++) {
      long seed = options.seed() + i;
      SolveResult result = solving.solve(blanket, earlier, options.withSeed(seed));
      tried.add(
          Json.object("seed", seed, "outcome", outcome(result), "objective", objective(result)));
      best = best == null || better(result, best) ? result : best;
      if (settled(best) || options.stop().getAsBoolean()) {
        break;
      }
    }
    return new SeedRuns(best, tried);
  }

  private static boolean better(SolveResult result, SolveResult best) {
    return objective(result).orElse(-1.0) > objective(best).orElse(-1.0)
        || result instanceof SolveResult.Impossible;
  }

  private static Optional<Double> objective(SolveResult result) {
    return result instanceof SolveResult.Found found
        ? Optional.of(found.arrangement().score().objective())
        : Optional.empty();
  }

  private static boolean settled(SolveResult result) {
    return result instanceof SolveResult.Impossible
        || result instanceof SolveResult.Found found
            && found
                .arrangement()
                .solved()
                .filter(solved -> solved.proof().equals(Arrangement.Solved.OPTIMAL))
                .isPresent();
  }

  private static String outcome(SolveResult result) {
    if (result instanceof SolveResult.Found) {
      return "found";
    }
    return result instanceof SolveResult.Impossible ? "impossible" : "unfinished";
  }

  /** What was tried, where several seeds were. */
  Optional<List<Map<String, Object>>> data() {
    return Optional.of(tried).filter(each -> each.size() > 1);
  }
}
