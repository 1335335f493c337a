package lozengy.solver.problem;

import java.util.Arrays;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Pairs;
import lozengy.model.score.ColourVisionSeams;
import lozengy.model.score.Layers;
import lozengy.model.score.Scorer;

/** Compiles what pairs of pieces cost, layer by layer. */
final class PairCostsCompiler {

  private final Blanket blanket;
  private final Slots slots;
  private final CostScale scale;
  private final int layers;

  PairCostsCompiler(Blanket blanket, Slots slots, CostScale scale) {
    this.blanket = blanket;
    this.slots = slots;
    this.scale = scale;
    this.layers = blanket.layerCount();
  }

  PairCosts compile() {
    Layout layout = blanket.layout();
    int[] lightStart = new int[slots.count() + 1];
    count(lightStart, layout.seams(), 1);
    count(lightStart, layout.touches(), 0);
    count(lightStart, layout.near(), 0);
    prefixSums(lightStart);
    int total = lightStart[slots.count()];
    int[] lightSlot = new int[total];
    int[] lightCost = new int[total];
    int[] next = Arrays.copyOf(lightStart, slots.count());
    fill(layout.seams(), 1, CostScale.SEAM_WEIGHT, next, lightSlot, lightCost);
    fill(layout.touches(), 0, CostScale.TOUCH_WEIGHT, next, lightSlot, lightCost);
    fill(layout.near(), 0, CostScale.NEAR_WEIGHT, next, lightSlot, lightCost);
    int[] seamStart = new int[slots.count() + 1];
    Pairs seams = layout.seams();
    for (int i = 0; i < seams.size(); i++) {
      seamStart[slots.border(seams.first()[i])]++;
      seamStart[slots.border(seams.second()[i])]++;
    }
    prefixSums(seamStart);
    int[] seamSlot = new int[2 * seams.size()];
    int[] nextSeam = Arrays.copyOf(seamStart, slots.count());
    for (int i = 0; i < seams.size(); i++) {
      int first = slots.border(seams.first()[i]);
      int second = slots.border(seams.second()[i]);
      seamSlot[nextSeam[first]++] = second;
      seamSlot[nextSeam[second]++] = first;
    }
    return new PairCosts(lightStart, lightSlot, lightCost, seamStart, seamSlot, seamCost());
  }

  private int[] seamCost() {
    int yarns = blanket.yarnCount();
    int[] cost = new int[yarns * yarns];
    int repeat =
        scale.units(scale.spreadPoints * Layers.spreadWeight(blanket, 0) * CostScale.SEAM_WEIGHT);
    for (int a = 0; a < yarns; a++) {
      for (int b = 0; b < yarns; b++) {
        double contrast = Scorer.contrast(blanket, a, b);
        cost[a * yarns + b] =
            (a == b ? repeat : 0)
                + scale.units(scale.seamContrastPoints * (1 - contrast))
                + seamVision(a, b)
                + (blanket.bordersClash(a, b) ? scale.hardCost : 0);
      }
    }
    return cost;
  }

  private int seamVision(int yarn, int other) {
    return scale.seamVisionPoints == 0
        ? 0
        : scale.units(
            scale.seamVisionPoints * (1 - ColourVisionSeams.toldApart(blanket, yarn, other)));
  }

  private void count(int[] counts, Pairs pairs, int fromLayer) {
    for (int i = 0; i < pairs.size(); i++) {
      int first = pairs.first()[i];
      int second = pairs.second()[i];
      int shared = Math.min(slots.rounds(first), slots.rounds(second));
      for (int layer = fromLayer; layer < shared; layer++) {
        counts[slots.border(first) - layer]++;
        counts[slots.border(second) - layer]++;
      }
    }
  }

  private void fill(
      Pairs pairs, int fromLayer, int weight, int[] next, int[] otherSlot, int[] cost) {
    int[] costOfLayer = new int[layers];
    for (int layer = 0; layer < layers; layer++) {
      costOfLayer[layer] =
          scale.units(scale.spreadPoints * Layers.spreadWeight(blanket, layer) * weight);
    }
    for (int i = 0; i < pairs.size(); i++) {
      int first = pairs.first()[i];
      int second = pairs.second()[i];
      int shared = Math.min(slots.rounds(first), slots.rounds(second));
      for (int layer = fromLayer; layer < shared; layer++) {
        int a = slots.border(first) - layer;
        int b = slots.border(second) - layer;
        otherSlot[next[a]] = b;
        cost[next[a]++] = costOfLayer[layer];
        otherSlot[next[b]] = a;
        cost[next[b]++] = costOfLayer[layer];
      }
    }
  }

  /** Turns counts into starts: afterwards entry i is the sum of the counts before i. */
  private static void prefixSums(int[] counts) {
    int sum = 0;
    for (int i = 0; i < counts.length; i++) {
      int count = counts[i];
      counts[i] = sum;
      sum += count;
    }
  }
}
