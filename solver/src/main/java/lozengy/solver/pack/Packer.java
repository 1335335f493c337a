package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.input.Nulls;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.pack.Packing.Failed;

/**
 * Finds the least pack from which an arrangement of a wanted score can be worked. In turns, a small
 * model proposes a pack of least cost; the brief is solved with exactly that stock, and what speaks
 * against the pack becomes known (a decomposition in the manner of Benders, 1962; see Hooker and
 * Ottosson, "Logic-based Benders decomposition", Mathematical Programming 96, 2003).
 *
 * <p>A pack is refuted by a direct argument, by a bound on the score below the one wanted, or by
 * solving exactly; whatever has no more of any shade is refuted with it. The pack found is proved
 * the least where all that cost less are refuted; mostly by totals alone ({@link Floors}). The
 * stock of the brief plays no part: a pack is for whoever begins with nothing.
 */
public final class Packer {

  private static final long MOVES_PER_ROUND = 4_000;
  private static final long LEAST_MOVES = 400_000;

  /** Solves in all, and those of packs of one cost before more is spent. */
  private static final int MOST_SOLVES = 24;

  private static final int SOLVES_OF_A_COST = 2;
  private static final int MOST_PROPOSALS = 400;

  /** Points by which two totals do not differ. */
  private static final double SAME = 1e-9;

  private final Shades shades;
  private final PackOptions options;
  private final SolveOptions solving;
  private final Proposals proposals;
  private final List<Failed> failed = new ArrayList<>();
  private int solves;
  private double reached;
  private double wanted;

  /** What a cheaper pack costs of which it is not proved that it does not do. */
  private long open = Long.MAX_VALUE;

  /** A pack with an arrangement from it. */
  private record Hit(int[] balls, Arrangement arrangement) {}

  private Packer(Blanket blanket, PackOptions options) {
    this.options = options;
    this.shades = new Shades(blanket, options.goal(), options.bendPercent());
    this.proposals = new Proposals(shades);
    SolveOptions usual =
        SolveOptions.defaults()
            .withSeed(options.seed())
            .withThreads(options.threads())
            .withStop(options.stop())
            .endedByInterrupt();
    long rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece);
    }
    this.solving =
        usual.withMoves(options.moves().orElse(Math.max(LEAST_MOVES, MOVES_PER_ROUND * rounds)));
  }

  /**
   * Finds a pack.
   *
   * @param blanket the brief made ready; less than all of it is kept back; every yarn that is not
   *     gone has a put-up, and a price where that is the goal
   * @param options what it is to be good for
   * @return the pack, or why there is none; if the calling thread is interrupted, what is known by
   *     then, and the thread stays interrupted
   */
  public static Packing find(Blanket blanket, PackOptions options) {
    Nulls.refuse("blanket options", blanket, options);
    return new Packer(blanket, options).find();
  }

  private Packing find() {
    Blanket plenty = shades.plenty(true);
    SolveResult most = Solver.solve(plenty, Optional.empty(), solving);
    if (most instanceof SolveResult.Impossible impossible) {
      Blanket free = shades.plenty(false);
      SolveResult unlimited = Solver.solve(free, Optional.empty(), solving);
      return unlimited instanceof SolveResult.Impossible whatever
          ? new Packing.Impossible(free, whatever, false)
          : new Packing.Impossible(plenty, impossible, true);
    }
    if (!(most instanceof SolveResult.Found found)) {
      return new Packing.Unfinished();
    }
    reached = found.arrangement().score().total();
    OptionalDouble asked = options.leastScore();
    wanted = asked.orElse(Math.max(0, reached - options.marginPoints()));
    if (wanted > reached + SAME) {
      return new Packing.OutOfReach(wanted, reached, bound(found.arrangement()));
    }
    Optional<Hit> hit = search();
    return hit.isPresent() ? packed(hit.get()) : new Packing.Unfinished();
  }

  private static double bound(Arrangement arrangement) {
    return arrangement.bound().map(Arrangement.Bound::total).orElse(100.0);
  }

  private Optional<Hit> search() {
    int ofCost = 0;
    long step = cheapestBall();
    for (int turn = 0; turn < MOST_PROPOSALS && solves < MOST_SOLVES && !stopped(); turn++) {
      Optional<int[]> proposed = proposals.next();
      if (proposed.isEmpty()) {
        return Optional.empty();
      }
      int[] balls = proposed.get();
      if (argued(balls)) {
        continue;
      }
      Optional<Hit> hit = settle(balls);
      if (hit.isPresent()) {
        return Optional.of(step > cheapestBall() ? withoutNeedless(hit.get()) : hit.get());
      }
      if (open < Long.MAX_VALUE && ++ofCost == SOLVES_OF_A_COST) {
        long cost = shades.cost(balls);
        proposals.atLeast(cost + step);
        step *= 2;
        ofCost = 0;
      }
    }
    return Optional.empty();
  }

  private boolean stopped() {
    return solving.stop().getAsBoolean();
  }

  private long cheapestBall() {
    long cheapest = Long.MAX_VALUE;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      cheapest = Math.min(cheapest, Math.max(1, shades.cost(yarn)));
    }
    return cheapest;
  }

  /** Whether a direct argument speaks against a pack; it is known from then on. */
  private boolean argued(int[] balls) {
    Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(shades.trial(balls)));
    for (List<Finding> each : findings.values()) {
      for (Finding finding : each) {
        finding.shortfall().ifPresent(shortfall -> proposals.learn(balls, shortfall));
        proposals.refute(balls, finding.yarns());
      }
    }
    return !findings.isEmpty();
  }

  /** Solves with exactly a pack; where that fails, nothing smaller is proposed any more. */
  private Optional<Hit> settle(int[] balls) {
    solves++;
    SolveResult result = Solver.solve(shades.trial(balls), Optional.empty(), solving);
    boolean refuted = result instanceof SolveResult.Impossible;
    if (result instanceof SolveResult.Found found) {
      Arrangement arrangement = found.arrangement();
      Blanket trial = arrangement.blanket();
      boolean good = arrangement.score().total() >= wanted - SAME;
      if (good && shades.bentWithin(trial.usedMillimetres(arrangement.sequences()))) {
        return Optional.of(new Hit(balls, arrangement));
      }
      refuted = bound(arrangement) < wanted - SAME;
    }
    BitSet all = new BitSet();
    all.set(0, balls.length);
    proposals.refute(balls, all);
    failed.add(new Failed(Arrays.stream(balls).sum(), refuted));
    if (!refuted) {
      open = Math.min(open, shades.cost(balls));
    }
    return Optional.empty();
  }

  /** The same without balls of which it is seen that it does without. */
  private Hit withoutNeedless(Hit found) {
    Hit best = found;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      while (best.balls()[yarn] > shades.least(yarn) && solves < MOST_SOLVES && !stopped()) {
        int[] fewer = best.balls().clone();
        fewer[yarn]--;
        Optional<Hit> hit = argued(fewer) ? Optional.empty() : settle(fewer);
        if (hit.isEmpty()) {
          break;
        }
        best = hit.get();
      }
    }
    return best;
  }

  private Packing packed(Hit hit) {
    Blanket packed = shades.packed(hit.balls());
    Arrangement from = hit.arrangement();
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
              hit.balls()[yarn],
              shades.shared(yarn),
              used[yarn],
              packed.stockMillimetres(yarn) - used[yarn]));
    }
    long cost = shades.cost(hit.balls());
    boolean least = cost <= proposals.floor() || proposals.complete() && open >= cost;
    return new Packing.Packed(
        each, arrangement, from.score().total(), wanted, reached, least, proposals.floor(), failed);
  }
}
