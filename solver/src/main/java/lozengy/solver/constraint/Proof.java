package lozengy.solver.constraint;

import java.util.stream.Stream;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/** Settles small briefs by searching their whole tree. */
public final class Proof {

  private Proof() {}

  /**
   * How many arrangements a brief has.
   *
   * @param arrangements how many were met
   * @param complete whether these are all; false if a limit came first
   */
  public record Count(long arrangements, boolean complete) {}

  /**
   * Counts the arrangements that are valid.
   *
   * @param model a fresh, exact model; it is used up
   * @param atMost stops counting here, at least 1
   * @param limits when to stop
   * @return how many there are, and whether all were counted
   * @throws IllegalArgumentException if the model is not exact
   */
  public static Count count(ConstraintModel model, long atMost, Limits limits) {
    if (!model.exact()) {
      throw new IllegalArgumentException("the model states a rule more weakly than it is");
    }
    Solver solver = model.model().getSolver();
    IntVar[] rounds =
        Stream.of(model.pieces()).flatMap(Stream::of).distinct().toArray(IntVar[]::new);
    // no restarts: they would meet arrangements twice
    solver.setSearch(Search.lastConflict(Search.domOverWDegSearch(rounds)));
    limits.on(solver);
    long found = 0;
    while (found < atMost && solver.solve()) {
      found++;
    }
    return new Count(found, found < atMost && Start.ended(solver));
  }
}
