package lozengy.solver.problem;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntBinaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Nearness;
import lozengy.model.score.Points;

/** Compiles what pairs of pieces cost, layer by layer. */
final class PairCostsCompiler {

  private final Blanket blanket;
  private final Slots slots;
  private final Points points;
  private final CostScale scale;
  private final int layers;
  private final int[] pieceOf;
  private long constantCost;

  PairCostsCompiler(Blanket blanket, Slots slots, Points points, CostScale scale) {
    this.blanket = blanket;
    this.points = points;
    this.slots = slots;
    this.scale = scale;
    this.layers = blanket.layerCount();
    this.pieceOf = new int[blanket.pieceCount()];
    for (int piece = 0; piece < slots.orbits(); piece++) {
      for (int member : slots.members()[piece]) {
        pieceOf[member] = piece;
      }
    }
  }

  /** What repeats between images of one piece cost; known once compiled. */
  long constantCost() {
    return constantCost;
  }

  PairCosts compile() {
    Layout layout = blanket.layout();
    Map<Nearness, Pairs> pairs = new EnumMap<>(Nearness.class);
    int[] lightStart = new int[slots.count() + 1];
    for (Nearness nearness : Nearness.values()) {
      pairs.put(nearness, pairs(layout, nearness));
      count(lightStart, pairs.get(nearness), fromLayer(nearness));
    }
    prefixSums(lightStart);
    int total = lightStart[slots.count()];
    int[] lightSlot = new int[total];
    int[] lightCost = new int[total];
    int[] next = Arrays.copyOf(lightStart, slots.count());
    pairs.forEach((nearness, each) -> fill(each, nearness, next, lightSlot, lightCost));
    Pairs seams = pairs.get(Nearness.SEAM);
    int[] seamStart = new int[slots.count() + 1];
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
    PairCosts costs =
        new PairCosts(
            lightStart, lightSlot, lightCost, seamStart, seamSlot, byYarns(this::seamCost));
    return slots.tied() ? merged(costs) : costs;
  }

  /**
   * Pairs of the problem's pieces. Where images are one piece, a pair of images costs the same
   * whatever they show, and is left out. A seam between images has borders that match: they are
   * joined, or given by the look, which costs nothing.
   */
  private Pairs pairs(Layout layout, Nearness nearness) {
    Pairs pairs = nearness.pairs(layout);
    if (!slots.tied()) {
      return pairs;
    }
    int[] first = new int[pairs.size()];
    int[] second = new int[pairs.size()];
    int count = 0;
    for (int i = 0; i < pairs.size(); i++) {
      int one = pieceOf[pairs.first()[i]];
      int other = pieceOf[pairs.second()[i]];
      if (one != other) {
        first[count] = one;
        second[count++] = other;
        continue;
      }
      for (int layer = fromLayer(nearness); layer < slots.rounds(one); layer++) {
        constantCost += lightCost(layer, nearness);
      }
      if (nearness == Nearness.SEAM) {
        constantCost += seamCost(0, 0);
      }
    }
    return new Pairs(Arrays.copyOf(first, count), Arrays.copyOf(second, count));
  }

  /** The same costs with one light pair where two slots make several. */
  private PairCosts merged(PairCosts costs) {
    int[] start = new int[slots.count() + 1];
    int[] others = new int[costs.lightSlot().length];
    int[] sums = new int[others.length];
    int count = 0;
    for (int slot = 0; slot < slots.count(); slot++) {
      start[slot] = count;
      TreeMap<Integer, Integer> bySlot = new TreeMap<>();
      for (int i = costs.lightStart()[slot]; i < costs.lightStart()[slot + 1]; i++) {
        bySlot.merge(costs.lightSlot()[i], costs.lightCost()[i], Integer::sum);
      }
      for (Map.Entry<Integer, Integer> each : bySlot.entrySet()) {
        others[count] = each.getKey();
        sums[count++] = each.getValue();
      }
    }
    start[slots.count()] = count;
    return new PairCosts(
        start,
        Arrays.copyOf(others, count),
        Arrays.copyOf(sums, count),
        costs.seamStart(),
        costs.seamSlot(),
        costs.seamCost());
  }

  /** Borders on a seam have costs of their own. */
  private static int fromLayer(Nearness nearness) {
    return nearness == Nearness.SEAM ? 1 : 0;
  }

  private int lightCost(int layer, Nearness nearness) {
    return scale.units(points.repeat(layer) * nearness.weight());
  }

  /** What two rounds side by side in a piece cost, by their yarns. */
  int[] innerCost() {
    return byYarns((a, b) -> sideBySide(false, a, b));
  }

  private int[] byYarns(IntBinaryOperator cost) {
    int yarns = blanket.yarnCount();
    int[] costs = new int[yarns * yarns];
    Arrays.setAll(costs, i -> cost.applyAsInt(i / yarns, i % yarns));
    return costs;
  }

  /** What two borders on a seam cost, the rule aside; as much for any yarn beside itself. */
  private int seamCost(int yarn, int other) {
    return (yarn == other ? lightCost(0, Nearness.SEAM) : 0) + sideBySide(true, yarn, other);
  }

  private int sideBySide(boolean onSeams, int yarn, int other) {
    int cost = 0;
    for (Points.Pair pair : points.pairs()) {
      cost += pair.onSeams() == onSeams ? scale.units(pair.lost(yarn, other)) : 0;
    }
    return cost;
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

  private void fill(Pairs pairs, Nearness nearness, int[] next, int[] otherSlot, int[] cost) {
    int[] costOfLayer = new int[layers];
    for (int layer = 0; layer < layers; layer++) {
      costOfLayer[layer] = lightCost(layer, nearness);
    }
    for (int i = 0; i < pairs.size(); i++) {
      int first = pairs.first()[i];
      int second = pairs.second()[i];
      int shared = Math.min(slots.rounds(first), slots.rounds(second));
      for (int layer = fromLayer(nearness); layer < shared; layer++) {
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
