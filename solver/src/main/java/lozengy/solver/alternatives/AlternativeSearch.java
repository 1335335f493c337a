package lozengy.solver.alternatives;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.check.Check;
import lozengy.model.input.Nulls;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.ProgressListener;
import lozengy.solver.SolveOptions;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Assertions;
import lozengy.solver.search.Budget;
import lozengy.solver.search.Search;

/**
 * Looks for arrangements beside a first one, one after the other. Each is searched for with a seed
 * of its own, and every round that shows what an earlier one shows there, as it stands or turned or
 * mirrored, costs a little. What falls too far below the best, or comes too close to an earlier
 * one, is searched for again with another seed and a smaller such cost. Each search spends as much
 * as the first one did.
 *
 * <p>Where planning again, each begins with the earlier plan, as the first did.
 */
public final class AlternativeSearch {

  /** Two arrangements of which a smaller share of rounds differs count as the same. */
  public static final double LEAST_APART = 0.1;

  /** Points that showing all that the earlier ones show would cost, try by try. */
  private static final double[] SHUN_POINTS = {20, 6, 2, 0};

  private final Blanket blanket;
  private final Optional<Sequences> earlier;
  private final SolveOptions options;
  private final Arrangement.Choice choice;
  private final Distance distance;
  private final List<Arrangement> found = new ArrayList<>();
  private long seed;

  private AlternativeSearch(
      Arrangement first,
      Optional<Sequences> earlier,
      SolveOptions options,
      Arrangement.Choice choice) {
    this.blanket = first.blanket();
    this.earlier = earlier;
    this.options = options;
    this.choice = choice;
    this.distance = new Distance(blanket);
    this.seed = options.seed();
    found.add(first);
  }

  /**
   * Finds alternatives. The same first arrangement, seed and moves give the same ones.
   *
   * @param first the first, as {@link lozengy.solver.Solver} found it
   * @param earlier what it was solved from, for the part keep
   * @param options as it was solved with; limits hold for each search
   * @param count how many are wanted, the first included, at least 1
   * @param withinPoints how far below the best of them each may be in what is maximised, in points,
   *     0 or more
   * @return as many as were found, the first among them unless better ones leave it too far behind
   */
  public static Alternatives find(
      Arrangement first,
      Optional<Sequences> earlier,
      SolveOptions options,
      int count,
      double withinPoints) {
    return find(first, earlier, options, count, withinPoints, alternative -> {});
  }

  /**
   * Finds alternatives, and hands out each as it comes. If the calling thread is interrupted, the
   * search ends with those found so far, and the thread stays interrupted.
   *
   * @param first the first, as {@link lozengy.solver.Solver} found it
   * @param earlier what it was solved from, for the part keep
   * @param options as it was solved with; limits hold for each search
   * @param count how many are wanted, the first included, at least 1
   * @param withinPoints how far below the best of them each may be in what is maximised, in points,
   *     0 or more
   * @param comes told of each but the first as it is found, on the calling thread; if a better one
   *     comes later, it may not be among those returned
   * @return as many as were found, the first among them unless better ones leave it too far behind
   * @throws IllegalArgumentException if a number is out of its range, or the earlier sequences are
   *     those of another layout
   */
  public static Alternatives find(
      Arrangement first,
      Optional<Sequences> earlier,
      SolveOptions options,
      int count,
      double withinPoints,
      Consumer<Arrangement> comes) {
    Nulls.refuse("first earlier options comes", first, earlier, options, comes);
    earlier.ifPresent(sequences -> Shape.require(first.blanket(), sequences));
    if (count < 1 || !(withinPoints >= 0 && Double.isFinite(withinPoints))) {
      throw new IllegalArgumentException(
          count + " arrangements within " + withinPoints + " points: at least 1, and 0 or more");
    }
    SolveOptions ended = options.endedByInterrupt();
    AlternativeSearch search =
        new AlternativeSearch(first, earlier, ended, new Arrangement.Choice(count, withinPoints));
    for (int i = 1; i < count && !ended.stop().getAsBoolean(); i++) {
      search.findNext().ifPresent(comes);
    }
    return search.result();
  }

  private Optional<Arrangement> findNext() {
    for (double shunPoints : SHUN_POINTS) {
      seed++;
      Optional<Arrangement> candidate =
          options.stop().getAsBoolean() ? Optional.empty() : search(shunPoints);
      if (candidate.isPresent() && fits(candidate.get())) {
        found.add(candidate.get());
        return candidate;
      }
    }
    return Optional.empty();
  }

  private boolean fits(Arrangement candidate) {
    return isNear(candidate)
        && found.stream()
            .allMatch(
                other -> distance.between(other.sequences(), candidate.sequences()) >= LEAST_APART);
  }

  /**
   * Whether the total is near enough to the best one, or where planning again to the first one's:
   * what differs from that keeps less of the plan before, and so is worse with keep weighed in.
   */
  private boolean isNear(Arrangement candidate) {
    double best = earlier.isEmpty() ? best() : found.get(0).score().total();
    return candidate.score().total() >= best - choice.withinPoints();
  }

  private double best() {
    return found.stream().mapToDouble(each -> each.score().objective()).max().orElse(0);
  }

  private Optional<Arrangement> search(double shunPoints) {
    Problem plain = ProblemCompiler.compile(blanket, earlier);
    Problem problem = plain.withCosts(plain.costs().withUnary(shunning(plain, shunPoints)));
    Budget budget = new Budget(moves(), options.searchSeconds(), options.stop());
    try (Search search =
        new Search(
            problem,
            seed,
            options.walkers(blanket),
            options.threads(),
            budget,
            () -> Long.MIN_VALUE,
            () -> tell(budget),
            Assertions.OFF)) {
      boolean started = earlier.isPresent() && search.startFromEarlier(false);
      if (!started && !search.start()) {
        search.startFrom(problem.assignment(found.get(0).sequences()));
      }
      search.improve();
      return Optional.ofNullable(search.best())
          .map(problem::sequences)
          .map(sequences -> arrangement(sequences, budget));
    }
  }

  private OptionalLong moves() {
    boolean unlimited = options.moves().isEmpty() && options.seconds().isEmpty();
    return unlimited ? OptionalLong.of(SolveOptions.defaultMoves(blanket)) : options.moves();
  }

  private void tell(Budget budget) {
    Arrangement first = found.get(0);
    double proved =
        first.bound().map(bound -> bound.objective().orElse(bound.total())).orElse(100.0);
    options
        .listener()
        .progress(
            new ProgressListener.Progress(budget.elapsedSeconds(), budget.spent(), best(), proved));
  }

  /** The problem's own costs of single rounds, and that of showing what others show there. */
  private int[] shunning(Problem problem, double points) {
    int yarns = problem.yarns();
    int slots = problem.slots().count();
    int[] own = problem.costs().unary();
    int[] cost = own == null ? new int[slots * yarns] : own.clone();
    int images = found.size() * distance.symmetries().size();
    int free = problem.slots().free().length;
    long shunned =
        Math.round(points * problem.prices().unitsPerPoint() / Math.max(1, free * images));
    int each = (int) Math.min(shunned, Integer.MAX_VALUE / (4 * images));
    for (Arrangement other : found) {
      for (int[] symmetry : distance.symmetries()) {
        for (int slot : problem.slots().free()) {
          int piece = problem.slots().orbit()[slot];
          int round = slot - problem.slots().orbitStart()[piece];
          int lead = problem.slots().lead()[piece];
          cost[slot * yarns + other.sequences().yarn(symmetry[lead], round)] += each;
        }
      }
    }
    return cost;
  }

  private Arrangement arrangement(Sequences sequences, Budget budget) {
    if (!Check.faults(blanket, sequences).isEmpty()) {
      throw new IllegalStateException(
          "The search took an arrangement for valid that breaks a rule: "
              + Check.faults(blanket, sequences).get(0));
    }
    Score score = Scorer.score(blanket, sequences, earlier);
    Arrangement first = found.get(0);
    boolean whole = options.seconds().isEmpty() && !options.stop().getAsBoolean();
    Optional<Arrangement.Solved> solved =
        first
            .solved()
            .map(
                each ->
                    new Arrangement.Solved(
                        options.seed(),
                        whole ? moves().orElseThrow() : budget.spent(),
                        options.walkers(blanket),
                        each.seconds(),
                        each.version(),
                        Arrangement.Solved.UNPROVED,
                        Optional.of(choice)));
    return new Arrangement(blanket, sequences, earlier, score, first.bound(), solved);
  }

  private Alternatives result() {
    List<Arrangement> kept =
        found.stream()
            .filter(this::isNear)
            .sorted(
                Comparator.comparingDouble((Arrangement each) -> each.score().objective())
                    .reversed())
            .toList();
    double[][] distances = new double[kept.size()][kept.size()];
    for (int i = 0; i < distances.length; i++) {
      for (int j = 0; j < i; j++) {
        distances[i][j] = distance.between(kept.get(i).sequences(), kept.get(j).sequences());
        distances[j][i] = distances[i][j];
      }
    }
    return new Alternatives(kept, distances);
  }
}
