package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where walkers have come to at the end of a leg, so that the best can go on. */
final class Standings {

  private record Standing(long hard, long cost, int[] assignment) {}

  private final List<Standing> standings = new ArrayList<>();

  /** Keeps where each walker stands. */
  void keep(List<Walker> walkers) {
    for (Walker walker : walkers) {
      State state = walker.state();
      standings.add(new Standing(state.hard(), state.cost(), state.yarn.clone()));
    }
  }

  /**
   * Hands out the assignments that break the fewest rules and of those the cheapest, and forgets
   * all.
   */
  List<int[]> takeBest(int most) {
    List<int[]> best =
        standings.stream()
            .sorted(Comparator.comparingLong(Standing::hard).thenComparingLong(Standing::cost))
            .limit(most)
            .map(Standing::assignment)
            .toList();
    standings.clear();
    return best;
  }
}
