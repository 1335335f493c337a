package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where walkers have come to at the end of a leg, so that the best can go on. */
final class ElitePool {

  private record Elite(long hard, long cost, int[] assignment) {}

  private final List<Elite> elites = new ArrayList<>();

  /** Keeps where each walker stands. */
  void keep(List<Walker> walkers) {
    for (Walker walker : walkers) {
      State state = walker.state();
      elites.add(new Elite(state.hard(), state.cost(), state.yarn.clone()));
    }
  }

  /**
   * Hands out the assignments that break the fewest rules and of those the cheapest, and forgets
   * all.
   */
  List<int[]> takeBest(int most) {
    List<int[]> best =
        elites.stream()
            .sorted(Comparator.comparingLong(Elite::hard).thenComparingLong(Elite::cost))
            .limit(most)
            .map(Elite::assignment)
            .toList();
    elites.clear();
    return best;
  }
}
