package lozengy.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Scorer;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.surplus.Surplus;
import lozengy.solver.surplus.Surplus.Exchange;

/**
 * Solves a blanket whose pile holds more pieces than there are places. A choice of what stays out
 * makes it a blanket as any other. The first choice that can be laid is bettered: a piece left out
 * for one that is laid, then a short search that begins with what lay there.
 */
final class SurplusSolving {

  /** One part of the budget finds a start, the others go to exchanges. */
  private static final int PARTS = 12;

  private static final int START_PARTS = 4;

  /** Choices that are all tried, and refuted, where the first one cannot be laid. */
  private static final int MOST_CHOICES = 64;

  /** Choices beyond, reached by random exchanges. */
  private static final int TRIES = 16;

  /** Exchanges looked at before each search; the best of them is taken. */
  private static final int LOOKS = 150;

  /** Where none is better by itself, one of the best few is taken by chance. */
  private static final int BEST_FEW = 5;

  private static final double SAME = 1e-9;

  private final Surplus surplus;
  private final Optional<Sequences> earlier;
  private final SolveOptions options;
  private final ProofEffort effort;
  private final OptionalLong moves;
  private final SplittableRandom random;
  private final long startNanos = System.nanoTime();
  private long spent;
  private Optional<Laid> best = Optional.empty();

  SurplusSolving(Surplus surplus, Optional<Sequences> earlier, SolveOptions options) {
    this.surplus = surplus;
    this.earlier = earlier;
    this.options = options;
    this.effort = ProofEffort.of(surplus.free(), options);
    this.moves =
        options.moves().isEmpty() && options.seconds().isEmpty()
            ? OptionalLong.of(SolveOptions.defaultMoves(surplus.free()))
            : options.moves();
    this.random = new SplittableRandom(options.seed());
  }

  /** What is laid, and how. */
  private record Laid(int[] out, Arrangement arrangement) {

    double objective() {
      return arrangement.score().objective();
    }
  }

  /** An exchange at one place, which breaks no rule there. */
  private record Look(int[] out, Sequences sequences, double objective) {}

  SolveResult solve() {
    int[] first = surplus.start(earlier);
    if (surplus.bordersNeverFit()) {
      Blanket judged = surplus.with(first);
      List<Refutation> refutations = Root.arguments(judged);
      if (!refutations.isEmpty()) {
        return new SolveResult.Impossible(refutations, Optional.empty(), Optional.of(judged));
      }
    }
    SolveResult start = solve(first, Optional.empty(), START_PARTS, PARTS);
    if (start instanceof SolveResult.Found found) {
      return better(new Laid(first, found.arrangement()));
    }
    return otherwise(first, start);
  }

  /** Tries other choices where the first one was not laid: all of them, where they are few. */
  private SolveResult otherwise(int[] first, SolveResult start) {
    Optional<List<int[]>> all = surplus.all(MOST_CHOICES);
    List<int[]> choices = all.orElseGet(() -> exchanged(first));
    boolean refuted = all.isPresent() && start instanceof SolveResult.Impossible;
    List<Fault> inTheWay = inTheWay(start);
    for (int[] out : choices) {
      if (Arrays.equals(out, first)) {
        continue;
      }
      if (over()) {
        refuted = false;
        break;
      }
      SolveResult result =
          solve(out, Optional.empty(), PARTS - START_PARTS, PARTS * choices.size());
      if (result instanceof SolveResult.Found found) {
        return better(new Laid(out, found.arrangement()));
      }
      refuted &= result instanceof SolveResult.Impossible;
      inTheWay = inTheWay.isEmpty() ? inTheWay(result) : inTheWay;
    }
    if (refuted && start instanceof SolveResult.Impossible impossible) {
      return new SolveResult.Impossible(
          impossible.refutations(), impossible.conflict(), Optional.of(surplus.with(first)));
    }
    return new SolveResult.Unfinished(inTheWay);
  }

  private static List<Fault> inTheWay(SolveResult result) {
    return result instanceof SolveResult.Unfinished unfinished ? unfinished.inTheWay() : List.of();
  }

  private List<int[]> exchanged(int[] first) {
    List<int[]> choices = new ArrayList<>();
    int[] out = first;
    for (int i = 0; i < TRIES; i++) {
      List<Exchange> exchanges = surplus.exchanges(out);
      out = exchanges.get(random.nextInt(exchanges.size())).of(out);
      choices.add(out);
    }
    return choices;
  }

  /** Exchanges pieces and searches on, in turns, while the budget lasts. */
  private SolveResult better(Laid start) {
    best = Optional.of(start);
    for (int part = START_PARTS; part < PARTS && !over(); part++) {
      Laid now = best.get();
      List<Look> looks = looks(now);
      boolean climbs = !looks.isEmpty() && looks.get(0).objective() > now.objective() + SAME;
      int taken = climbs ? 0 : random.nextInt(Math.max(1, Math.min(BEST_FEW, looks.size())));
      // where no exchange can be made on the spot, the search goes on with what is laid
      Look look =
          looks.isEmpty()
              ? new Look(now.out(), now.arrangement().sequences(), now.objective())
              : looks.get(taken);
      SolveResult result = solve(look.out(), Optional.of(look.sequences()), 1, PARTS);
      if (result instanceof SolveResult.Found found) {
        Laid laid = new Laid(look.out(), found.arrangement());
        best = laid.objective() > now.objective() + SAME ? Optional.of(laid) : best;
      }
    }
    return new SolveResult.Found(unbounded(best.get().arrangement()), Optional.empty());
  }

  /** Exchanges on the spot that break no rule, the best first. */
  private List<Look> looks(Laid laid) {
    List<Exchange> exchanges = surplus.exchanges(laid.out());
    List<int[]> all = new ArrayList<>();
    Sequences now = laid.arrangement().sequences();
    for (int i = 0; i < exchanges.size(); i++) {
      for (int place : surplus.places(exchanges.get(i).goes(), now)) {
        all.add(new int[] {i, place});
      }
    }
    List<Look> looks = new ArrayList<>();
    for (int i = 0; i < Math.min(LOOKS, all.size()) && !over(); i++) {
      int other = i + random.nextInt(all.size() - i);
      int[] drawn = all.get(other);
      all.set(other, all.get(i));
      Exchange exchange = exchanges.get(drawn[0]);
      Sequences sequences = now.copy();
      int[] yarns = surplus.yarns(exchange.in());
      for (int round = 0; round < yarns.length; round++) {
        sequences.set(drawn[1], round, yarns[round]);
      }
      int[] out = exchange.of(laid.out());
      Blanket blanket = surplus.with(out);
      if (Check.faults(blanket, sequences).isEmpty()) {
        double objective = Scorer.score(blanket, sequences, earlier).objective();
        looks.add(new Look(out, sequences, objective));
      }
    }
    looks.sort((one, two) -> Double.compare(two.objective(), one.objective()));
    return looks;
  }

  private SolveResult solve(int[] out, Optional<Sequences> start, int parts, int of) {
    OptionalLong some =
        moves.isPresent() ? OptionalLong.of(moves.getAsLong() * parts / of) : OptionalLong.empty();
    OptionalDouble seconds =
        options.seconds().isPresent()
            ? OptionalDouble.of(options.searchSeconds().getAsDouble() * parts / of)
            : OptionalDouble.empty();
    long[] last = new long[1];
    double begun = elapsedSeconds();
    ProgressListener counting =
        progress -> {
          last[0] = progress.moves();
          options.listener().progress(ofAll(progress, begun));
        };
    SolveResult result =
        Solver.solveChoice(
            surplus.with(out),
            earlier,
            start,
            new SolveOptions(
                options.seed(),
                some,
                options.walkers(),
                seconds,
                0,
                options.threads(),
                options.stop(),
                counting),
            effort);
    spent +=
        result instanceof SolveResult.Found found
            ? found.arrangement().solved().orElseThrow().moves()
            : last[0];
    return result;
  }

  /** The progress of the solve of one choice, as one of all choices tried so far. */
  private ProgressListener.Progress ofAll(ProgressListener.Progress one, double begun) {
    boolean better = best.isEmpty() || one.score() > best.get().objective();
    return new ProgressListener.Progress(
        begun + one.seconds(),
        spent + one.moves(),
        better ? one.score() : best.get().objective(),
        100,
        better ? one.incumbent() : () -> best.map(each -> incumbent(each.arrangement())));
  }

  private Incumbent incumbent(Arrangement found) {
    return new Incumbent(
        found.blanket(),
        found.sequences(),
        earlier,
        Optional.empty(),
        options.seed(),
        spent,
        options.walkers(found.blanket()),
        found.solved().flatMap(Arrangement.Solved::seconds));
  }

  private double elapsedSeconds() {
    return (System.nanoTime() - startNanos) / 1e9;
  }

  private boolean over() {
    return options.stop().getAsBoolean()
        || options.seconds().isPresent()
            && elapsedSeconds() >= options.searchSeconds().getAsDouble();
  }

  /**
   * A bound is one of a single choice, and so no bound of what was asked. The same moves again give
   * the same arrangement, for they are shared out alike.
   */
  private Arrangement unbounded(Arrangement found) {
    Arrangement.Solved solved = found.solved().orElseThrow();
    long told = moves.isPresent() && !over() ? moves.getAsLong() : spent;
    return new Arrangement(
        found.blanket(),
        found.sequences(),
        earlier,
        found.score(),
        Optional.empty(),
        Optional.of(
            new Arrangement.Solved(
                    solved.seed(),
                    told,
                    options.seconds().isPresent()
                        ? Optional.of(options.seconds().getAsDouble())
                        : Optional.empty(),
                    solved.version(),
                    Arrangement.Solved.UNPROVED)
                .withWalkers(solved.walkers())));
  }
}
