package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.Targets;

/**
 * Proves a total that no valid arrangement of a blanket exceeds.
 *
 * <p>The proof holds together as told in the package's description. Deterministic by {@link
 * BoundLimits}: stages, not clocks. Each stage starts from what the one before found and spends
 * about three times as much; the least bound of all stages counts, so more stages never give a
 * worse one.
 */
public final class Bounds {

  /** Rounds of the first stage's program; each further stage has twice as many. */
  private static final int ROUNDS = 10;

  private final Blanket blanket;
  private final Targets targets;
  private final Weights weights;
  private final PieceGroups groups;
  private final double certain;
  private final LayerRepeats[] layers;
  private final RepeatFloor[] floors;
  private final BooleanSupplier stop;
  private List<LeewayRange> ranges;
  private double best = 100;
  private boolean joint;

  private Bounds(
      Blanket blanket,
      Targets targets,
      Weights weights,
      Optional<Sequences> earlier,
      BooleanSupplier stop) {
    this.blanket = blanket;
    this.targets = targets;
    this.weights = weights;
    this.stop = stop;
    this.groups = PieceGroups.of(blanket);
    this.certain =
        weights.allBalance()
            + weights.spread()
            + weights.contrast()
            + weights.vision()
            + weights.variety() * VarietyCap.of(blanket, groups)
            + earlier.map(before -> weights.keep() * KeepCap.of(blanket, before)).orElse(0.0);
    this.ranges = List.of(LeewayRange.upTo(LeewayCap.of(blanket, groups)));
    this.layers = new LayerRepeats[blanket.layerCount()];
    this.floors = new RepeatFloor[layers.length];
    for (int layer = 0; layer < layers.length; layer++) {
      double unit =
          weights.repeats()[layer] == 0 ? 0 : weights.balance()[layer] / weights.repeats()[layer];
      layers[layer] = new LayerRepeats(blanket, layer, unit);
    }
  }

  /**
   * Bounds the total of all valid arrangements.
   *
   * @param blanket the blanket
   * @param earlier the sequences that would be solved from; only whether there are any matters
   * @param limits how much effort to spend
   * @param stop asked now and then; once true, what is proved so far is given
   * @return the bound, 0 to 100, with its proof in words
   */
  public static Bound of(
      Blanket blanket, Optional<Sequences> earlier, BoundLimits limits, BooleanSupplier stop) {
    Targets targets = Targets.of(blanket);
    Weights weights = Weights.of(blanket, targets, earlier.isPresent());
    if (weights == null || blanket.pieceCount() == 0) {
      return new Bound(100, "no part of the score weighs");
    }
    Bounds bounds = new Bounds(blanket, targets, weights, earlier, stop);
    for (int stage = 0;
        stage <= limits.stages() && bounds.open() && !stop.getAsBoolean();
        stage++) {
      bounds.run(stage);
    }
    return bounds.bound();
  }

  private Bound bound() {
    return new Bound(
        Math.max(0, best),
        joint
            ? "counts, seams, stock and repeats bounded together by a linear program"
            : "no part of the score exceeds 100");
  }

  /** Whether some leeway may still be that of a valid arrangement. */
  private boolean open() {
    return !ranges.isEmpty();
  }

  private void run(int stage) {
    for (int layer = 0; layer < layers.length; layer++) {
      floors[layer] =
          weights.repeats()[layer] == 0
              ? layers[layer].none()
              : layers[layer].at(stage, wanted(layer), stop);
    }
    int rounds = ROUNDS << stage;
    List<LeewayRange> improved = new ArrayList<>();
    for (LeewayRange range : ranges) {
      improved.add(improve(range, rounds));
    }
    improved.sort(Comparator.comparingDouble(LeewayRange::bound).reversed());
    LeewayRange top = improved.get(0);
    if (weights.leeway() > 0 && top.worthSplitting()) {
      improved.set(0, improve(top.below(), rounds));
      improved.add(improve(top.above(), rounds));
    }
    double most = improved.stream().mapToDouble(LeewayRange::bound).max().orElse(100);
    ranges = improved.stream().filter(range -> !range.empty()).toList();
    // where repeats outweigh the expected ones, spread is 0 and not below
    most = most < 0 ? 0 : Math.max(most, 100 - weights.spread());
    if (most < best) {
      best = most;
      joint = true;
    }
  }

  private double[] wanted(int layer) {
    double[] counts = Arrays.stream(targets.counts()[layer]).asDoubleStream().toArray();
    LeewayRange top = ranges.get(0);
    for (LeewayRange range : ranges) {
      top = range.bound() > top.bound() ? range : top;
    }
    if (top.counts().length > 0) {
      for (int yarn = 0; yarn < counts.length; yarn++) {
        double likely = top.counts()[layer][yarn];
        counts[yarn] = Math.abs(likely - counts[yarn]) > 1 ? likely : counts[yarn];
      }
    }
    return counts;
  }

  private LeewayRange improve(LeewayRange range, int rounds) {
    ScoreProgram score =
        new ScoreProgram(
            blanket, targets, weights, groups, floors, certain, range.low(), range.high());
    PrimalDual search = new PrimalDual(score.program(), range.multipliers());
    search.improve(rounds, stop);
    return new LeewayRange(
        range.low(),
        range.high(),
        search.bestMultipliers(),
        Math.min(range.bound(), search.best()),
        score.leeway(search),
        score.counts(search));
  }
}
