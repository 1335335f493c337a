package lozengy.solver.constraint;

import java.util.stream.Stream;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.strategy.AbstractStrategy;
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
   * Counts the arrangements that are valid; one of a pile as often as its pieces can be laid.
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
    AbstractStrategy<IntVar> choice = Search.lastConflict(Search.domOverWDegSearch(rounds));
    IntVar[] laid = model.allLaid();
    if (laid.length == 0) {
      solver.setSearch(choice);
    } else {
      // rounds leave open what lies where: without it a pile might fit nowhere
      solver.setSearch(choice, Search.inputOrderLBSearch(laid));
    }
    limits.on(solver);
    long found = 0;
    while (found < atMost && solver.solve()) {
      found++;
    }
    return new Count(found, found < atMost && Start.ended(solver));
  }
}
