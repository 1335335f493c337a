package lozengy.solver;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.check.Check;
import lozengy.model.input.Nulls;
import lozengy.model.score.Scorer;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Optimum;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.conflict.Feasibility;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Assertions;
import lozengy.solver.search.Budget;
import lozengy.solver.search.Search;
import lozengy.solver.surplus.Surplus;

/** Solves briefs: root check, start, search, and the check of what comes out. */
public final class Solver {

  /** Bits up to which a brief is taken to be small enough to be settled exactly. */
  private static final double MOST_BITS = 48;

  private static final String PROOF_BY_SEARCH = "every other arrangement ruled out";

  /** Points by which whole cost units may round a total. */
  private static final double COST_ROUNDING = 1e-3;

  /** Points of the objective by which two arrangements do not differ. */
  private static final double SAME = 1e-9;

  private final Blanket blanket;
  private final Optional<Sequences> earlier;
  private final Optional<Sequences> given;
  private final boolean proves;
  private final SolveOptions options;
  private final ProofEffort effort;
  private final int walkers;
  private final boolean unlimited;
  private final Budget budget;
  private Search running;
  private Proving proving;
  private boolean improving;
  private Optional<Sequences> repaired = Optional.empty();

  private Solver(
      Blanket blanket,
      Optional<Sequences> earlier,
      Optional<Sequences> given,
      boolean proves,
      SolveOptions options,
      ProofEffort effort) {
    this.blanket = blanket;
    this.earlier = earlier;
    this.given = given;
    this.proves = proves;
    this.options = options;
    this.effort = effort;
    this.walkers = options.walkers(blanket);
    this.unlimited = options.moves().isEmpty() && options.seconds().isEmpty();
    OptionalLong moves =
        unlimited ? OptionalLong.of(SolveOptions.defaultMoves(blanket)) : options.moves();
    this.budget = new Budget(moves, options.searchSeconds(), options.stop());
  }

  /**
   * Solves a blanket. Where its pile holds more pieces than there are places, what stays out is
   * chosen, whatever the brief said before: the arrangement's brief says so. If the calling thread
   * is interrupted, the search ends with the best so far, and the thread stays interrupted.
   *
   * @param blanket the blanket
   * @param earlier sequences to start from and to stay close to (part keep), of the same layout,
   *     where planning again. The answer is at least as good, keep included, as they are where they
   *     break no rule. Without a limit of moves or seconds it then ends soon once little gets
   *     better
   * @param options seed, limits, listener
   * @return an arrangement that breaks no rule; or that there is none, proved; or that none was
   *     found
   * @throws IllegalArgumentException if the earlier sequences are those of another layout, or name
   *     yarns that the brief has not
   * @throws TooLargeException before anything is done, if that needs more memory than Java may use
   */
  public static SolveResult solve(
      Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    requireFitting(blanket, earlier, options);
    return solveUntilInterrupted(blanket, earlier, options.endedByInterrupt());
  }

  /**
   * Begins to solve a blanket on a thread of its own.
   *
   * @param blanket the blanket
   * @param earlier sequences to start from, as {@link #solve} takes them
   * @param options seed, limits, listener
   * @return the solve, which goes on
   * @throws IllegalArgumentException if the earlier sequences are those of another layout, or name
   *     yarns that the brief has not
   * @throws TooLargeException before anything is done, if that needs more memory than Java may use
   */
  public static RunningSolve start(
      Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    requireFitting(blanket, earlier, options);
    return RunningSolve.start(blanket, earlier, options);
  }

  private static void requireFitting(
      Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    Nulls.refuse("blanket earlier options", blanket, earlier, options);
    earlier.ifPresent(sequences -> Shape.require(blanket, sequences));
    TooLargeException.requireRoom(
        blanket, options.walkers(blanket), Runtime.getRuntime().maxMemory());
  }

  private static SolveResult solveUntilInterrupted(
      Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    Optional<Surplus> surplus = Surplus.of(blanket);
    if (surplus.isPresent() && surplus.get().any()) {
      return new SurplusSolving(surplus.get(), earlier, options).solve();
    }
    Blanket free = surplus.map(Surplus::free).orElse(blanket);
    ProofEffort effort = ProofEffort.of(free, options);
    return new Solver(free, earlier, Optional.empty(), true, options, effort).solve();
  }

  /**
   * Solves a blanket with one choice of what stays out of its pile, without a bound, which would
   * say nothing of other choices. Where sequences that break no rule are given, it begins with
   * them, and the answer is at least as good.
   */
  static SolveResult solveChoice(
      Blanket blanket,
      Optional<Sequences> earlier,
      Optional<Sequences> given,
      SolveOptions options,
      ProofEffort effort) {
    return new Solver(blanket, earlier, given, false, options, effort).solve();
  }

  private SolveResult solve() {
    if (!blanket.pile().isEmpty()) {
      // a pile that finds no places by its locks alone cannot even be dealt
      List<Refutation> refutations = Root.arguments(blanket);
      if (!refutations.isEmpty()) {
        return new SolveResult.Impossible(refutations, Optional.empty());
      }
    }
    Problem problem = ProblemCompiler.compile(blanket, earlier);
    if (problem.pile().isEmpty() && problem.domains().anyEmpty()) {
      return new SolveResult.Impossible(Root.arguments(blanket), Optional.empty());
    }
    try (Search search =
        new Search(
            problem,
            options.seed(),
            walkers,
            options.threads(),
            budget,
            () -> floorCost(problem),
            () -> tell(problem),
            Assertions.OFF)) {
      running = search;
      if (proves && options.seconds().isEmpty()) {
        // beside the first deals, for it often takes longest of all
        prove();
      }
      Optional<SolveResult> impossible =
          startsFromGiven(problem) || startsFromEarlier(problem) || startsValid(problem)
              ? Optional.empty()
              : startOtherwise(problem);
      return impossible.isPresent() ? impossible.get() : improve(problem);
    } finally {
      if (proving != null) {
        proving.close();
      }
    }
  }

  private void prove() {
    proving =
        new Proving(blanket, earlier, options.moves(), options.searchSeconds(), this::timeIsUp);
  }

  /** Whether sequences to begin with were given. */
  private boolean startsFromGiven(Problem problem) {
    given.ifPresent(start -> running.startFrom(problem.assignment(start)));
    repaired = given;
    return given.isPresent();
  }

  /** Whether the earlier plan, repaired where it cannot stand, is valid. */
  private boolean startsFromEarlier(Problem problem) {
    if (earlier.isEmpty() || !running.startFromEarlier(unlimited)) {
      return false;
    }
    Sequences start = problem.sequences(running.best());
    if (!Check.faults(blanket, start).isEmpty()) {
      return false;
    }
    repaired = Optional.of(start);
    return true;
  }

  /**
   * Whether one of the first deals is valid. The search takes locks as they are, so that locks that
   * break a rule among themselves show only in the check.
   */
  private boolean startsValid(Problem problem) {
    return running.start() && Check.faults(blanket, problem.sequences(running.best())).isEmpty();
  }

  /**
   * Where the first deals are not valid: direct arguments against the brief, more deals, and the
   * constraint model, in turns.
   *
   * @return that nothing fits; empty if that is not proved
   */
  private Optional<SolveResult> startOtherwise(Problem problem) {
    if (options.stop().getAsBoolean() && running.best() == null) {
      return Optional.empty();
    }
    List<Refutation> refutations = Root.arguments(blanket);
    if (!refutations.isEmpty()) {
      return Optional.of(new SolveResult.Impossible(refutations, Optional.empty()));
    }
    if (running.startAgain()) {
      return Optional.empty();
    }
    Limits limits = effort.forStart(this::timeIsUp);
    Feasibility.Answer answer = Feasibility.search(blanket, options.seed(), limits);
    if (answer instanceof Feasibility.Fits fits) {
      running.startFrom(problem.assignment(fits.start()));
    }
    return answer instanceof Feasibility.Impossible impossible
        ? Optional.of(new SolveResult.Impossible(impossible.refutations(), impossible.conflict()))
        : Optional.empty();
  }

  private SolveResult improve(Problem problem) {
    improving = true;
    if (!proves) {
      running.improve();
      return found(problem, Optional::empty);
    }
    if (proving == null) {
      prove();
    }
    Optional<SolveResult> settled = settle(problem);
    if (settled.isPresent()) {
      return settled.get();
    }
    running.improve();
    return found(problem, proving::bound);
  }

  private SolveResult found(Problem problem, Supplier<Optional<Bound>> bound) {
    int[] best = running.best();
    if (best == null) {
      return new SolveResult.Unfinished(
          Check.faults(blanket, problem.sequences(running.nearest())));
    }
    Arrangement arrangement = incumbent(truly(problem.sequences(best)), bound.get()).arrangement();
    return new SolveResult.Found(arrangement, unsettled(problem, arrangement));
  }

  /** What was found, or the repaired plan unless that is truly worse: costs are rounded. */
  private Sequences truly(Sequences found) {
    boolean better = repaired.isEmpty() || objective(found) > objective(repaired.get()) + SAME;
    return better ? found : repaired.get();
  }

  private double objective(Sequences sequences) {
    return Scorer.score(blanket, sequences, earlier).objective();
  }

  /** Settles a small brief exactly, where that is within reach. */
  private Optional<SolveResult> settle(Problem problem) {
    boolean small = problem.domains().bits(problem.slots().free()) <= MOST_BITS;
    if (!small || !problem.pile().isEmpty()) {
      return Optional.empty();
    }
    running.improve(ProofEffort.MOVES_BEFORE_OPTIMUM);
    Optional<Sequences> known =
        Optional.ofNullable(running.best()).map(problem::sequences).map(this::truly);
    Limits limits = effort.forOptimum(this::timeIsUp);
    Optimum.Result result = Optimum.maximise(blanket, earlier, known, options.seed(), limits);
    if (result.best().isEmpty()) {
      return Optional.empty();
    }
    Sequences best = truly(result.best().get());
    if (result.bound() > result.objective()) {
      running.startFrom(problem.assignment(best));
      return Optional.empty();
    }
    return Optional.of(
        new SolveResult.Found(
            incumbent(best, settled(result.objective())).arrangement(), Optional.empty()));
  }

  /** The bound of a brief that is settled; with keep weighed in, that is none of the total. */
  private Optional<Bound> settled(double objective) {
    if (earlier.isEmpty()) {
      return Optional.of(new Bound(objective, PROOF_BY_SEARCH));
    }
    Bound none = new Bound(100, PROOF_BY_SEARCH);
    Bound proved = proving.bound().orElse(none);
    return Optional.of(new Bound(proved.total(), proved.proof(), Optional.of(objective)));
  }

  private Optional<SolveResult.Unsettled> unsettled(Problem problem, Arrangement arrangement) {
    if (running.apart().isEmpty() || arrangement.bound().isEmpty()) {
      return Optional.empty();
    }
    return SolveResult.Unsettled.of(
        running.apart().getAsLong() / problem.prices().unitsPerPoint(),
        arrangement.bound().orElseThrow().total() - arrangement.score().total(),
        budget.spent());
  }

  /** The cost of a total as high as the bound, and a little more, for costs are rounded. */
  private long floorCost(Problem problem) {
    // under a time limit the proof begins once there is a start
    if (proving == null || options.seconds().isPresent() && !proving.done()) {
      return Long.MIN_VALUE;
    }
    while (!proving.await()) {
      tell(problem);
    }
    double proved = objective(proving.bound());
    return (long) ((100 - proved + COST_ROUNDING) * problem.prices().unitsPerPoint());
  }

  /** What a bound leaves to what is maximised. */
  private static double objective(Optional<Bound> bound) {
    return bound.map(each -> each.objective().orElse(each.total())).orElse(100.0);
  }

  private boolean timeIsUp() {
    return options.stop().getAsBoolean()
        || options.seconds().isPresent()
            && budget.elapsedSeconds() >= options.searchSeconds().getAsDouble();
  }

  private void tell(Problem problem) {
    long best = running.bestCost();
    double proved = proving != null && proving.done() ? objective(proving.bound()) : 100;
    double score =
        best == Long.MAX_VALUE ? Double.NaN : 100 - best / problem.prices().unitsPerPoint();
    ProgressListener.Progress progress =
        new ProgressListener.Progress(
            budget.elapsedSeconds(), budget.spent(), score, proved, () -> incumbent(problem));
    options.listener().progress(progress);
  }

  /** The best so far, once the search has begun from something valid. */
  private Optional<Incumbent> incumbent(Problem problem) {
    if (!improving || running.best() == null) {
      return Optional.empty();
    }
    Optional<Bound> bound = proving != null && proving.done() ? proving.bound() : Optional.empty();
    return Optional.of(incumbent(problem.sequences(running.best()), bound));
  }

  private Incumbent incumbent(Sequences sequences, Optional<Bound> bound) {
    return new Incumbent(
        blanket,
        sequences.frozen(),
        earlier,
        bound,
        options.seed(),
        budget.spent(),
        walkers,
        options.seconds().isPresent()
            ? Optional.of(options.seconds().getAsDouble())
            : Optional.empty());
  }
}
