package lozengy.solver.explain.conflict;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Check;
import lozengy.model.check.RuleBook;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Start;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Assertions;
import lozengy.solver.search.Budget;
import lozengy.solver.search.Search;

/**
 * Settles whether a brief, or some of its lines, can hold: direct arguments first, then for whole
 * briefs the local search, then the constraint model within limits. The same question gets the same
 * answer on every machine, unless it is stopped.
 */
public final class ConsistencyOracle {

  /** What is settled. */
  public enum Verdict {
    /** There is an arrangement. */
    HOLDS,
    /** It is proved that there is none. */
    CONFLICTS,
    /** Neither was found within the limits. */
    OPEN
  }

  /**
   * What is settled of a whole brief.
   *
   * @param verdict whether it holds
   * @param witness a valid arrangement, where it holds
   */
  public record Settled(Verdict verdict, Optional<Sequences> witness) {
    private static final Settled CONFLICTS = new Settled(Verdict.CONFLICTS, Optional.empty());
    private static final Settled OPEN = new Settled(Verdict.OPEN, Optional.empty());
  }

  /** Moves of the local search for each round; what has a start is mostly found in far fewer. */
  private static final long MOVES_OF_ROUND = 2_000;

  private final long seed;
  private final Limits limits;

  /**
   * Makes an oracle.
   *
   * @param seed breaks ties
   * @param limits limits of each search on the constraint model; the stop ends the local search too
   */
  public ConsistencyOracle(long seed, Limits limits) {
    this.seed = seed;
    this.limits = limits;
  }

  /** {@return asked now and then; once true, all is to end} */
  public BooleanSupplier stop() {
    return limits.stop();
  }

  /**
   * {@return whether a whole brief can hold}
   *
   * @param blanket the brief made ready
   */
  public Settled settle(Blanket blanket) {
    return Root.findings(Requirements.all(blanket)).isEmpty()
        ? settleUnargued(blanket)
        : Settled.CONFLICTS;
  }

  /**
   * {@return whether a brief can hold that no direct argument speaks against}
   *
   * @param blanket the brief made ready
   */
  public Settled settleUnargued(Blanket blanket) {
    Optional<Sequences> found = searched(blanket);
    if (found.isPresent()) {
      return new Settled(Verdict.HOLDS, found);
    }
    if (!ConstraintModel.fits(blanket)) {
      return Settled.OPEN;
    }
    Start.Outcome outcome = Start.find(ConstraintModel.of(blanket), seed, limits);
    if (outcome instanceof Start.Solution start
        && Check.faults(blanket, start.sequences()).isEmpty()) {
      return new Settled(Verdict.HOLDS, Optional.of(start.sequences()));
    }
    return outcome instanceof Start.None
            || MeetingLines.conflict(blanket, RuleBook.lines(blanket), seed, limits)
        ? Settled.CONFLICTS
        : Settled.OPEN;
  }

  private Optional<Sequences> searched(Blanket blanket) {
    Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
    long moves = MOVES_OF_ROUND * problem.slots().count();
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), stop());
    try (Search search =
        new Search(
            problem,
            seed,
            Arrangement.Solved.USUAL_WALKERS,
            1,
            budget,
            () -> Long.MIN_VALUE,
            () -> {},
            Assertions.OFF)) {
      if (!search.start() && !search.startAgain()) {
        return Optional.empty();
      }
      Sequences sequences = problem.sequences(search.best());
      // what is told must be right by the model's own check
      return Check.faults(blanket, sequences).isEmpty() ? Optional.of(sequences) : Optional.empty();
    }
  }

  /**
   * {@return whether some lines of a brief can hold together}
   *
   * @param blanket the brief made ready
   * @param lines the lines
   */
  public Verdict settle(Blanket blanket, List<BriefLine> lines) {
    if (!Root.findings(Requirements.of(blanket, lines)).isEmpty()) {
      return Verdict.CONFLICTS;
    }
    if (!ConstraintModel.fits(blanket)) {
      return Verdict.OPEN;
    }
    ConstraintModel model = ConstraintModel.of(blanket, lines);
    boolean exact = model.exact();
    Start.Outcome outcome = Start.find(model, seed, limits);
    if (outcome instanceof Start.Solution) {
      return exact ? Verdict.HOLDS : Verdict.OPEN;
    }
    return outcome instanceof Start.None || MeetingLines.conflict(blanket, lines, seed, limits)
        ? Verdict.CONFLICTS
        : Verdict.OPEN;
  }
}
