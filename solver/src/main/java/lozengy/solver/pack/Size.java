package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.conflict.Root;

/** One of the sizes that a pack is to serve: what it asks for, and what a pack gives it. */
final class Size {

  private static final long MOVES_PER_ROUND = 4_000;
  private static final long LEAST_MOVES = 400_000;

  /** Points by which two totals do not differ. */
  private static final double SAME = 1e-9;

  private final Shades shades;
  private final PackOptions options;
  private final SolveOptions solving;
  private final long rounds;
  private double reached;
  private double wanted;

  /** What a pack gives: an arrangement as good as is wanted, or else whether none is possible. */
  record Trial(Optional<Arrangement> arrangement, boolean refuted) {}

  Size(Blanket blanket, PackOptions options) {
    this.options = options;
    this.shades = new Shades(blanket, options);
    long sum = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      sum += blanket.roundCount(piece);
    }
    this.rounds = sum;
    this.solving =
        SolveOptions.defaults()
            .withSeed(options.seed())
            .withThreads(options.threads())
            .withStop(options.stop())
            .endedByInterrupt()
            .withMoves(options.moves().orElse(Math.max(LEAST_MOVES, MOVES_PER_ROUND * rounds)));
  }

  Shades shades() {
    return shades;
  }

  /** Whether the work is to end. */
  boolean stopped() {
    return solving.stop().getAsBoolean();
  }

  long rounds() {
    return rounds;
  }

  /** Settles with plenty of yarn what is wanted; what ends the search, where no pack can do. */
  Optional<Packing> plenty() {
    Blanket plenty = shades.plenty(true);
    SolveResult most = Solver.solve(plenty, Optional.empty(), solving);
    if (most instanceof SolveResult.Impossible impossible) {
      Blanket free = shades.plenty(false);
      SolveResult unlimited = Solver.solve(free, Optional.empty(), solving);
      return Optional.of(
          unlimited instanceof SolveResult.Impossible whatever
              ? new Packing.Impossible(free, whatever, false)
              : new Packing.Impossible(plenty, impossible, true));
    }
    if (!(most instanceof SolveResult.Found found)) {
      return Optional.of(new Packing.Unfinished());
    }
    reached = found.arrangement().score().total();
    wanted = options.leastScore().orElse(Math.max(0, reached - options.marginPoints()));
    return wanted > reached + SAME
        ? Optional.of(new Packing.OutOfReach(wanted, reached, bound(found.arrangement())))
        : Optional.empty();
  }

  private static double bound(Arrangement arrangement) {
    return arrangement.bound().map(Arrangement.Bound::total).orElse(100.0);
  }

  /** Whether a direct argument speaks against a pack; it is known from then on. */
  boolean argued(int[] balls, Proposals known) {
    Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(shades.trial(balls)));
    for (List<Finding> each : findings.values()) {
      for (Finding finding : each) {
        finding.shortfall().ifPresent(shortfall -> known.learn(shades, balls, shortfall));
        known.refute(shades, balls, finding.yarns());
      }
    }
    return !findings.isEmpty();
  }

  /** Solves with exactly a pack. */
  Trial tried(int[] balls) {
    SolveResult result = Solver.solve(shades.trial(balls), Optional.empty(), solving);
    if (!(result instanceof SolveResult.Found found)) {
      return new Trial(Optional.empty(), result instanceof SolveResult.Impossible);
    }
    Arrangement arrangement = found.arrangement();
    boolean good = arrangement.score().total() >= wanted - SAME;
    return good && shades.bentWithin(used(arrangement))
        ? new Trial(Optional.of(arrangement), false)
        : new Trial(Optional.empty(), bound(arrangement) < wanted - SAME);
  }

  /** The fewest balls from which an arrangement can be worked. */
  int[] fewest(Arrangement arrangement) {
    return shades.fewest(used(arrangement));
  }

  private static long[] used(Arrangement arrangement) {
    return arrangement.blanket().usedMillimetres(arrangement.sequences());
  }

  /** A pack with an arrangement from it, held against the brief as it is. */
  Packing.Packed packed(int[] balls, Arrangement from, Packing.Proof proof) {
    Blanket packed = shades.packed(balls);
    if (!Check.faults(packed, from.sequences()).isEmpty()) {
      throw new IllegalStateException(
          "a pack does not hold what it was solved with: "
              + Check.faults(packed, from.sequences()).get(0));
    }
    // the bound is that of a shorter stock, and of a score without leeway
    Arrangement arrangement =
        new Arrangement(
            packed,
            from.sequences(),
            Optional.empty(),
            Scorer.score(packed, from.sequences(), Optional.empty()),
            Optional.empty(),
            Optional.empty());
    long[] used = packed.usedMillimetres(from.sequences());
    List<Packing.Shade> each = new ArrayList<>();
    for (int yarn = 0; yarn < used.length; yarn++) {
      each.add(
          new Packing.Shade(
              yarn,
              balls[yarn],
              shades.shared(yarn),
              used[yarn],
              packed.yarn(yarn).stockMillimetres() - used[yarn]));
    }
    return new Packing.Packed(each, arrangement, from.score().total(), wanted, reached, proof);
  }
}
