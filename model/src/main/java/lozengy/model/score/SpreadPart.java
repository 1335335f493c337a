package lozengy.model.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.layout.Pairs;

/**
 * Spread: how rarely a yarn comes again close by. With E the weight of the pairs that show the same
 * yarn in the same layer, by layer and nearness, and E0 its average if each layer's target counts
 * were shuffled, the figure is 100 (1 - E/E0), not below 0; 100 where E0 is 0. Borders that the
 * look gives are left out. O(layers x pairs).
 */
final class SpreadPart implements ScorePart {

  private final Blanket blanket;
  private final Sequences sequences;
  private final double repeats;
  private final double expected;

  SpreadPart(Blanket blanket, Sequences sequences, Targets targets) {
    this.blanket = blanket;
    this.sequences = sequences;
    long weighted = 0;
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      weighted += Layers.spreadWeight(blanket, layer) * repeats(blanket, sequences, layer);
    }
    this.repeats = weighted;
    this.expected = expected(blanket, targets);
  }

  /** E of one layer, before the layer's weight. */
  static long repeats(Blanket blanket, Sequences sequences, int layer) {
    long repeats = 0;
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int pair = 0; pair < pairs.size(); pair++) {
        if (repeated(sequences, pairs, pair, layer)) {
          repeats += nearness.weight();
        }
      }
    }
    return repeats;
  }

  private static boolean repeated(Sequences sequences, Pairs pairs, int pair, int layer) {
    int yarn = Layers.yarn(sequences, pairs.first()[pair], layer);
    return yarn != Layers.NONE && yarn == Layers.yarn(sequences, pairs.second()[pair], layer);
  }

  /** E0: over all layers, with their weights. */
  static double expected(Blanket blanket, Targets targets) {
    double expected = 0;
    for (int layer = 0; layer < blanket.layerCount(); layer++) {
      expected +=
          Layers.spreadWeight(blanket, layer)
              * joins(blanket, layer).expected(targets.counts()[layer]);
    }
    return expected;
  }

  /** The pairs of pieces that both have a layer, by their weights. */
  static JoinCounts joins(Blanket blanket, int layer) {
    int[] positions = new int[blanket.pieceCount()];
    Arrays.fill(positions, Layers.NONE);
    int count = 0;
    for (int piece = 0; piece < positions.length; piece++) {
      if (layer < blanket.roundCount(piece)) {
        positions[piece] = count++;
      }
    }
    JoinCounts joins = new JoinCounts(count);
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int pair = 0; pair < pairs.size(); pair++) {
        int first = positions[pairs.first()[pair]];
        int second = positions[pairs.second()[pair]];
        if (first != Layers.NONE && second != Layers.NONE) {
          joins.join(first, second, nearness.weight());
        }
      }
    }
    return joins;
  }

  @Override
  public Part part() {
    return Part.SPREAD;
  }

  @Override
  public double score() {
    return expected == 0 ? 100 : Math.max(0, 100 * (1 - repeats / expected));
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    double lost = 100 - score();
    for (int layer = 0; lost > 0 && layer < blanket.layerCount(); layer++) {
      for (Nearness nearness : Nearness.values()) {
        Pairs pairs = nearness.pairs(blanket.layout());
        double weight = Layers.spreadWeight(blanket, layer) * nearness.weight();
        double points = lost * weight / repeats;
        for (int pair = 0; weight > 0 && pair < pairs.size(); pair++) {
          if (repeated(sequences, pairs, pair, layer)) {
            losses.add(loss(points, layer, nearness, pairs.first()[pair], pairs.second()[pair]));
          }
        }
      }
    }
    return losses;
  }

  private Loss loss(double points, int layer, Nearness nearness, int first, int second) {
    String name = blanket.yarn(Layers.yarn(sequences, first, layer)).name();
    String meets = nearness == Nearness.NEAR ? "comes again" : "meets " + name;
    String where = layer == 0 ? "" : ", " + Layers.words(layer);
    return new Loss(
        points,
        List.of(first, second),
        () ->
            "%s %s %s%s: %s, %s"
                .formatted(
                    name,
                    meets,
                    nearness.words(),
                    where,
                    blanket.place(first).name(),
                    blanket.place(second).name()));
  }
}
