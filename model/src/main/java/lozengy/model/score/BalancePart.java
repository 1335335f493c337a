package lozengy.model.score;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;

/**
 * Balance: how well each layer keeps the shares asked for. For a layer of P pieces with counts n
 * against targets t it is 100 (1 - sum|n - t| / 2P), and the figure is the layers' mean by their
 * weights. O(pieces x layers + layers x yarns).
 */
final class BalancePart implements ScorePart {

  private final Blanket blanket;
  private final Targets targets;
  private final int[][] counts;

  BalancePart(Blanket blanket, Sequences sequences, Targets targets) {
    this.blanket = blanket;
    this.targets = targets;
    this.counts = new int[blanket.layerCount()][];
    for (int layer = 0; layer < counts.length; layer++) {
      counts[layer] = Layers.counts(blanket, sequences, layer);
    }
  }

  @Override
  public Part part() {
    return Part.BALANCE;
  }

  @Override
  public double score() {
    double lost = 0;
    for (int layer = 0; layer < counts.length; layer++) {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        lost += points(layer, yarn);
      }
    }
    return Math.max(0, 100 - lost);
  }

  private double points(int layer, int yarn) {
    int pieces = targets.pieces()[layer];
    int off = Math.abs(counts[layer][yarn] - targets.counts()[layer][yarn]);
    return off == 0
        ? 0
        : 100.0 * Layers.weight(layer) * off / (2.0 * pieces * Layers.weights(targets));
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    for (int layer = 0; layer < counts.length; layer++) {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        double points = points(layer, yarn);
        if (points > 0) {
          losses.add(loss(points, layer, yarn));
        }
      }
    }
    return losses;
  }

  private Loss loss(double points, int layer, int yarn) {
    int off = counts[layer][yarn] - targets.counts()[layer][yarn];
    return new Loss(
        points,
        List.of(),
        () ->
            "%s is %d %s its share %s"
                .formatted(
                    blanket.yarn(yarn).name(),
                    Math.abs(off),
                    off < 0 ? "short of" : "over",
                    Layers.words(layer)));
  }
}
