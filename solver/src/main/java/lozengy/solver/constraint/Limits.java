package lozengy.solver.constraint;

import java.util.function.BooleanSupplier;
import org.chocosolver.solver.Solver;

/**
 * How much a constraint search may do. Nodes and fails make it end at the same point on every
 * machine; the stop is for a person's patience.
 *
 * @param nodes most nodes of the search tree, at least 1
 * @param fails most dead ends, at least 1
 * @param stop asked at every node; once true, the search ends
 */
public record Limits(long nodes, long fails, BooleanSupplier stop) {

  /**
   * Checks the ranges.
   *
   * @param nodes most nodes of the search tree, at least 1
   * @param fails most dead ends, at least 1
   * @param stop asked at every node; once true, the search ends
   * @throws IllegalArgumentException if a number is below 1
   */
  public Limits {
    if (nodes < 1 || fails < 1) {
      throw new IllegalArgumentException("nodes and fails must be at least 1");
    }
  }

  /**
   * Limits without a stop.
   *
   * @param nodes most nodes of the search tree, at least 1
   * @param fails most dead ends, at least 1
   * @return the limits
   */
  public static Limits of(long nodes, long fails) {
    return new Limits(nodes, fails, () -> false);
  }

  /** Sets them on a Choco solver. */
  void on(Solver solver) {
    solver.limitNode(nodes);
    solver.limitFail(fails);
    solver.limitSearch(stop::getAsBoolean);
  }
}
