package lozengy.solver.alternatives;

import java.util.Arrays;
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

  /**
   * Copies both.
   *
   * @param found the arrangements, the best first
   * @param distances {@link Distance#between} of each two, 0 to 1
   */
  public Alternatives {
    found = List.copyOf(found);
    distances = copy(distances);
  }

  private static double[][] copy(double[][] rows) {
    return Arrays.stream(rows).map(double[]::clone).toArray(double[][]::new);
  }

  /** {@return the distances of each two, 0 to 1, as a copy} */
  @Override
  public double[][] distances() {
    return copy(distances);
  }

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
