package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import lozengy.model.blanket.Sequences;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.SearchState;
import org.chocosolver.solver.search.restart.LubyCutoff;
import org.chocosolver.solver.search.restart.Restarter;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.variables.DomOverWDeg;
import org.chocosolver.solver.search.strategy.strategy.AbstractStrategy;
import org.chocosolver.solver.search.strategy.strategy.IntStrategy;
import org.chocosolver.solver.variables.IntVar;

/**
 * Looks for a first valid arrangement. Where yarn is short, it first decides how many rounds of
 * each class take each yarn, which is what tight stock is about, and then which rounds these are.
 * The same model, seed and limits give the same result.
 */
public final class Start {

  private static final int RESTART_AFTER_FAILS = 500;

  private Start() {}

  /** How the look ended. */
  public sealed interface Outcome {}

  /**
   * An arrangement was found.
   *
   * @param sequences complete; valid if the model is exact
   */
  public record Solution(Sequences sequences) implements Outcome {}

  /** The whole tree was searched: there is none. */
  public record None() implements Outcome {}

  /** A limit came first. */
  public record Limited() implements Outcome {}

  /**
   * Looks for an arrangement.
   *
   * @param model a fresh model; it is used up
   * @param seed breaks ties
   * @param limits when to stop
   * @return an arrangement, or that there is none, or that neither was settled
   */
  public static Outcome find(ConstraintModel model, long seed, Limits limits) {
    Solver solver = model.model().getSolver();
    solver.setSearch(strategies(model, seed));
    solver.addRestarter(
        new Restarter(
            new LubyCutoff(RESTART_AFTER_FAILS),
            c -> solver.getFailCount() >= c,
            Integer.MAX_VALUE,
            true));
    limits.on(solver);
    if (solver.solve()) {
      return new Solution(model.read());
    }
    return ended(solver) ? new None() : new Limited();
  }

  /** Whether the tree was searched to its end, by no limit cut short. */
  static boolean ended(Solver solver) {
    return solver.getSearchState() == SearchState.TERMINATED && !solver.isStopCriterionMet();
  }

  private static AbstractStrategy<?>[] strategies(ConstraintModel model, long seed) {
    Random random = new Random(seed);
    List<AbstractStrategy<?>> strategies = new ArrayList<>();
    CountSelector counts = new CountSelector(model, random);
    if (!counts.isEmpty()) {
      strategies.add(new IntStrategy(counts.variables(), counts, counts));
    }
    IntVar[] laid =
        Stream.of(model.allLaid()).filter(v -> !v.isInstantiated()).toArray(IntVar[]::new);
    if (laid.length > 0) {
      AbstractStrategy<IntVar> choice =
          new IntStrategy(
              laid, new DomOverWDeg<>(laid, seed), new PileValueSelector(model.blanket(), random));
      strategies.add(Search.lastConflict(choice));
    }
    IntVar[] rounds =
        Stream.of(model.pieces())
            .flatMap(Stream::of)
            .filter(variable -> !variable.isInstantiated())
            .toArray(IntVar[]::new);
    if (rounds.length > 0) {
      AbstractStrategy<IntVar> choice =
          new IntStrategy(
              rounds, new DomOverWDeg<>(rounds, seed), new YarnValueSelector(model, random));
      strategies.add(Search.lastConflict(choice));
    }
    return strategies.isEmpty()
        ? new AbstractStrategy<?>[] {Search.inputOrderLBSearch(model.model().intVar(0))}
        : strategies.toArray(AbstractStrategy<?>[]::new);
  }
}
