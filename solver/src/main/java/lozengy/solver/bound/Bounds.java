package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Points;
import lozengy.model.score.Score;
import lozengy.model.score.Targets;

/**
 * Proves a total that no valid arrangement of a blanket exceeds.
 *
 * <p>The proof holds together as told in the package's description. Deterministic by {@link
 * BoundLimits}: stages, not clocks. Each stage goes on from what the one before found and spends
 * about three times as much, and from the third on keeps what those proved of repeats, and ends
 * where a stage proved next to nothing; the least bound of all stages counts, so more stages never
 * give a worse one.
 */
public final class Bounds {

  /** Rounds of the first stage's program; each further stage has twice as many. */
  private static final int ROUNDS = 60;

  /** Share of what the last stage found in what a stage takes for likely. */
  private static final double FRESH = 0.5;

  /** Stages whose floors of repeats give way to the next stage's. */
  private static final int ROUGH = 2;

  /**
   * Points that a stage must prove, once floors are no longer rough, for a further one to be worth
   * its effort.
   */
  private static final double WORTH = 0.02;

  /** Most pieces for which it matters that they are whole. */
  private static final int MOST_WHOLE = 2_000;

  private final Blanket blanket;
  private final Points points;
  private final Targets targets;
  private final PieceGroups groups;
  private final double certain;
  private final LayerRepeats[] layers;
  private final List<List<RepeatFloor>> floors = new ArrayList<>();
  private final int[] over;
  private final BooleanSupplier stop;
  private final double[][][] wanted;
  private double[] multipliers = new double[0];
  private Optional<double[][][]> counts = Optional.empty();
  private double best = 100;
  private boolean open = true;
  private boolean settled;
  private boolean joint;

  private Bounds(Blanket blanket, Points points, BooleanSupplier stop) {
    this.blanket = blanket;
    this.points = points;
    this.targets = points.targets();
    this.stop = stop;
    this.groups = PieceGroups.of(blanket);
    this.certain =
        100
            - points.ofPairs()
            - points.whole(Part.LEEWAY)
            - points.whole(Part.VARIETY) * (1 - VarietyCap.of(blanket, groups));
    this.layers = new LayerRepeats[blanket.layerCount()];
    this.wanted = new double[layers.length][PieceKind.values().length][blanket.yarnCount()];
    this.over = new int[layers.length];
    for (int layer = 0; layer < layers.length; layer++) {
      double balance = points.balance(layer);
      double repeat = points.repeat(layer);
      layers[layer] = new LayerRepeats(blanket, layer, repeat == 0 ? 0 : balance / repeat);
      if (balance > 0 && blanket.pieceCount() <= MOST_WHOLE) {
        over[layer] = new WholeCounts(blanket, targets, layer).over();
      }
    }
  }

  /**
   * Bounds the total of all valid arrangements.
   *
   * @param blanket the blanket
   * @param limits how much effort to spend
   * @param stop asked now and then; once true, what is proved so far is given
   * @return the bound, 0 to 100, with its proof in words
   */
  public static Bound of(Blanket blanket, BoundLimits limits, BooleanSupplier stop) {
    if (blanket.brief().prefer().weightOfTotal() == 0 || blanket.pieceCount() == 0) {
      return new Bound(100, "no part of the score weighs");
    }
    Bounds bounds = new Bounds(blanket, Points.of(blanket), stop);
    for (int stage = 0; stage <= limits.stages() && !bounds.done(); stage++) {
      double before = bounds.best;
      bounds.run(stage);
      bounds.settled = stage >= ROUGH && before - bounds.best < WORTH;
    }
    return bounds.bound();
  }

  /**
   * {@return a figure that no valid arrangement's objective exceeds, from one that no total
   * exceeds}
   *
   * @param blanket the blanket
   * @param earlier the sequences that would be solved from
   * @param total a total that no valid arrangement exceeds, 0 to 100
   */
  public static double ofObjective(Blanket blanket, Sequences earlier, double total) {
    return Score.objective(total, PartBounds.keep(blanket, earlier), blanket.brief().prefer());
  }

  private boolean done() {
    return !open || settled || stop.getAsBoolean();
  }

  private Bound bound() {
    return new Bound(
        Math.max(0, best),
        joint
            ? "counts, seams, stock and repeats bounded together by a convex program"
            : "no part of the score exceeds 100");
  }

  private void run(int stage) {
    for (int layer = 0; layer < layers.length; layer++) {
      addFloor(stage, layer);
    }
    ScoreProgram score = new ScoreProgram(blanket, points, groups, floors, over, certain);
    PrimalDual search = new PrimalDual(score.program(), multipliers);
    search.improve(ROUNDS << stage, stop);
    multipliers = search.bestMultipliers();
    counts = Optional.of(score.counts(search));
    // nothing is below 0: then no arrangement has a spread above 0
    open = search.best() >= 0;
    // where repeats outweigh the expected ones, spread is 0 and not below
    double withoutSpread =
        points.whole(Part.SPREAD) == 0 ? 0 : 100 - points.whole(Part.SPREAD) + DualBound.MARGIN;
    double most = Math.max(search.best(), withoutSpread);
    if (most < best) {
      best = most;
      joint = true;
    }
  }

  /** Floors of all stages hold, but those of the first are rough and only slow the program. */
  private void addFloor(int stage, int layer) {
    RepeatFloor floor =
        points.repeat(layer) == 0
            ? layers[layer].none()
            : layers[layer].at(stage, wanted(stage, layer), stop);
    if (stage == 0) {
      floors.add(new ArrayList<>());
    } else if (stage <= ROUGH) {
      floors.get(layer).clear();
    }
    floors.get(layer).add(floor);
  }

  /**
   * By kind of piece, how often each yarn is likely to show in a layer. Part of what was likely at
   * earlier stages remains, for a program's best point leaps from stage to stage (P. Wentges,
   * International Transactions in Operational Research 4, 1997, of prices; from memory).
   */
  private double[][] wanted(int stage, int layer) {
    double[][] now = counts.isPresent() ? counts.get()[layer] : expected(layer);
    double part = stage == 0 ? 1 : FRESH;
    for (int kind = 0; kind < now.length; kind++) {
      for (int yarn = 0; yarn < now[kind].length; yarn++) {
        wanted[layer][kind][yarn] += part * (now[kind][yarn] - wanted[layer][kind][yarn]);
      }
    }
    return wanted[layer];
  }

  private double[][] expected(int layer) {
    double[][] may = new double[PieceKind.values().length][blanket.yarnCount()];
    double[] all = new double[blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int round = blanket.roundCount(piece) - 1 - layer;
      for (int yarn = 0; yarn < all.length && round >= 0; yarn++) {
        if (blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)) {
          may[blanket.kind(piece).ordinal()][yarn]++;
          all[yarn]++;
        }
      }
    }
    for (double[] counts : may) {
      for (int yarn = 0; yarn < all.length; yarn++) {
        counts[yarn] *= all[yarn] == 0 ? 0 : targets.counts()[layer][yarn] / all[yarn];
      }
    }
    return may;
  }
}
