package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import lozengy.solver.RandomBriefs;
import lozengy.solver.problem.Problem;
import org.junit.jupiter.api.Test;

/** The best go on: by broken rules, then by cost; what is handed out is forgotten. */
class ElitePoolTest {

  @Test
  void handsOutThoseThatBreakTheFewestRulesAndOfThoseTheCheapest() {
    Problem problem = RandomDraws.problem(RandomBriefs.of(4, 3, 6)).orElseThrow();
    SplittableRandom random = new SplittableRandom(4);
    ElitePool pool = new ElitePool();
    List<int[]> kept = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Walker one = at(problem, RandomDraws.of(problem, random, true));
      Walker other = at(problem, RandomDraws.of(problem, random, false));
      kept.add(one.state().yarn.clone());
      kept.add(other.state().yarn.clone());
      pool.keep(List.of(one, other));
      // a pool keeps where they stood, not where they go
      one.restart(RandomDraws.of(problem, random, false));
    }
    kept.sort(
        Comparator.<int[]>comparingLong(yarn -> Cost.of(problem, yarn, 1).hard())
            .thenComparingLong(yarn -> Cost.of(problem, yarn, 1).total()));
    List<int[]> best = pool.takeBest(5);
    assertEquals(5, best.size());
    for (int i = 0; i < best.size(); i++) {
      assertArrayEquals(kept.get(i), best.get(i), "the " + (i + 1) + "th");
    }
    assertTrue(pool.takeBest(5).isEmpty());
  }

  private static Walker at(Problem problem, int[] yarn) {
    Walker walker = new Walker(problem, 1, Assertions.OFF);
    walker.restart(yarn);
    return walker;
  }
}
