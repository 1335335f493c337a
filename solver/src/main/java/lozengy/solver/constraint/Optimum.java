package lozengy.solver.constraint;

import java.util.Optional;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.Scorer;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainRandom;
import org.chocosolver.solver.search.strategy.selectors.variables.DomOverWDeg;
import org.chocosolver.solver.search.strategy.strategy.IntStrategy;
import org.chocosolver.solver.variables.IntVar;

/**
 * Looks for the best arrangement of a small brief and proves it best, by branch and bound on the
 * exact score.
 *
 * <p>For very small briefs only. Measured on one core of a small machine: 5 squares of three rounds
 * in 6 yarns take 3 s, 9 squares of two rounds in 6 yarns 3 s; 9 squares of three rounds in 8 yarns
 * are not settled in 20 s.
 */
public final class Optimum {

  private Optimum() {}

  /**
   * What was found.
   *
   * @param best the best arrangement met, which may be the known one; empty if none was met
   * @param objective what it reaches of what is maximised, 0 to 100: its total, or with keep
   *     weighed in where it is solved from an earlier one; NaN if none was met
   * @param bound what no valid arrangement exceeds of that; equal to {@code objective} if the best
   *     is proved best, 100 if nothing is proved
   */
  public record Result(Optional<Sequences> best, double objective, double bound) {}

  /**
   * Searches. The loss in the model is rounded down, so an arrangement that is only as good as the
   * best may look a little better than it is. These are kept out first; once nothing better than
   * that margin is left, they are looked through too. Where the score has a part that the model
   * does not state, nothing is searched and nothing proved.
   *
   * @param blanket a blanket small enough for the model
   * @param earlier what it is solved from, for the part keep
   * @param known a valid arrangement to start from, where there is one
   * @param seed breaks ties
   * @param limits when to stop
   * @return the best arrangement that was found, and whether none is better
   */
  public static Result maximise(
      Blanket blanket,
      Optional<Sequences> earlier,
      Optional<Sequences> known,
      long seed,
      Limits limits) {
    Climb climb = new Climb(blanket, earlier, known);
    if (!climb.run(true, seed, limits)) {
      return climb.result(100);
    }
    double margin = climb.marginPoints();
    boolean exact = climb.run(false, seed, limits);
    return climb.result(exact ? climb.objective : Math.min(100, climb.objective + margin));
  }

  private static final class Climb {

    private final Blanket blanket;
    private final Optional<Sequences> earlier;
    private Optional<Sequences> best;
    private double objective;
    private int rounding;

    Climb(Blanket blanket, Optional<Sequences> earlier, Optional<Sequences> known) {
      this.blanket = blanket;
      this.earlier = earlier;
      this.best = known;
      this.objective =
          known.map(k -> Scorer.score(blanket, k, earlier).objective()).orElse(Double.NaN);
    }

    /** Searches for better; true if none is left, those within the margin perhaps left out. */
    boolean run(boolean beyondMargin, long seed, Limits limits) {
      ConstraintModel constraints = ConstraintModel.of(blanket);
      // with a pile, what lies where is not gone through
      boolean whole = constraints.exact() && constraints.allLaid().length == 0;
      if (!whole || !ScoreLoss.states(constraints)) {
        return false;
      }
      ScoreLoss loss = ScoreLoss.of(constraints, earlier);
      rounding = loss.rounding();
      IntVar lost = loss.total();
      Solver solver = constraints.model().getSolver();
      constraints.model().setObjective(false, lost);
      solver.getObjectiveManager().setCutComputer(value -> mostLoss(beyondMargin));
      IntVar[] rounds =
          Stream.of(constraints.pieces()).flatMap(Stream::of).distinct().toArray(IntVar[]::new);
      // The rounds can leave the loss a unit of play; its least value is what it may be at best.
      solver.setSearch(
          Search.lastConflict(
              new IntStrategy(rounds, new DomOverWDeg<>(rounds, seed), new IntDomainRandom(seed))),
          Search.inputOrderLBSearch(lost));
      limits.on(solver);
      if (best.isPresent()) {
        constraints.model().arithm(lost, "<=", mostLoss(beyondMargin)).post();
      }
      while (solver.solve()) {
        keepIfBetter(constraints.read());
      }
      return Start.ended(solver);
    }

    private void keepIfBetter(Sequences sequences) {
      double reached = Scorer.score(blanket, sequences, earlier).objective();
      if (!(reached <= objective)) {
        best = Optional.of(sequences);
        objective = reached;
      }
    }

    /** The most units that an arrangement better than the best can lose. */
    private int mostLoss(boolean beyondMargin) {
      if (best.isEmpty()) {
        return IntVar.MAX_INT_BOUND;
      }
      double units = (100 - objective) * ScoreLoss.UNITS_PER_POINT;
      int most = (int) Math.floor(units + 1e-3);
      return beyondMargin ? most - rounding - 1 : most;
    }

    /** What a better one that is still hidden in the margin can be better at most. */
    double marginPoints() {
      return (rounding + 2.0) / ScoreLoss.UNITS_PER_POINT;
    }

    Result result(double bound) {
      return new Result(best, objective, best.isEmpty() ? 100 : Math.max(objective, bound));
    }
  }
}
