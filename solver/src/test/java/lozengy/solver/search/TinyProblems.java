package lozengy.solver.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;

/** Problems so small that all their assignments can be tried. */
final class TinyProblems {

  private TinyProblems() {}

  /** The problem of a tiny blanket, if it has some assignments, and no more than so many. */
  static Optional<Problem> of(long seed, int mostWays) {
    Problem problem = ProblemCompiler.compile(TinyBlankets.of(seed), Optional.empty());
    long ways = 1;
    for (int slot : problem.slots().free()) {
      ways = Math.min(mostWays + 1, ways * problem.domains().yarns(slot).length);
    }
    boolean some = ways > 1 && ways <= mostWays && !problem.domains().anyEmpty();
    return some ? Optional.of(problem) : Optional.empty();
  }

  /** Visits every assignment. */
  static void all(Problem problem, Consumer<int[]> visit) {
    all(problem, problem.slots().fixedYarn().clone(), 0, visit);
  }

  private static void all(Problem problem, int[] yarn, int next, Consumer<int[]> visit) {
    int[] free = problem.slots().free();
    if (next == free.length) {
      visit.accept(yarn);
      return;
    }
    for (int each : problem.domains().yarns(free[next])) {
      yarn[free[next]] = each;
      all(problem, yarn, next + 1, visit);
    }
  }

  /** By group and yarn, how many slots of the group have it. */
  static int[][] counts(Problem problem, List<int[]> groups, int[] yarn) {
    int[][] counts = new int[groups.size()][problem.yarns()];
    for (int group = 0; group < counts.length; group++) {
      for (int slot : groups.get(group)) {
        counts[group][yarn[slot]]++;
      }
    }
    return counts;
  }
}
