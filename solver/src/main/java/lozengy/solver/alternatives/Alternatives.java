package lozengy.solver.alternatives;

import java.util.List;
import lozengy.model.arrangement.Arrangement;

/**
 * Arrangements to choose from.
 *
 * @param found the arrangements, the best first; no two are closer than {@link
 *     AlternativeSearch#LEAST_APART}
 * @param distances {@link Distance#between} of each two, 0 to 1
 */
public record Alternatives(List<Arrangement> found, double[][] distances) {

  /** {@return the smallest distance between two of them; 1 where there are fewer than two} */
  public double leastDistance() {
    double least = 1;
    for (int i = 0; i < distances.length; i++) {
      for (int j = 0; j < i; j++) {
        least = Math.min(least, distances[i][j]);
      }
    }
    return least;
  }
}
