package lozengy.benchmarks.peer;

import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Layers;
import lozengy.model.score.Nearness;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;

/**
 * What the score loses by each thing that an arrangement falls short in, in whole units, so that a
 * solver over integers can add it up: total = 100 - units / unitsPerPoint, but for the rounding of
 * each amount to whole units. One difference remains: spread does not fall below 0, these losses
 * do; that is so only of arrangements that repeat more than a random shuffle.
 */
final class Losses {

  private final Blanket blanket;
  private final double unitsPerPoint;
  private final double expectedRepeats;
  private final Targets targets;
  private final Optional<Sequences> earlier;
  private final int steps;

  /**
   * Makes them for a blanket.
   *
   * @param blanket the blanket
   * @param earlier sequences to stay close to, where planning again
   * @param unitsPerPoint how many units make a point of the total
   */
  Losses(Blanket blanket, Optional<Sequences> earlier, double unitsPerPoint) {
    this.blanket = blanket;
    this.earlier = earlier;
    this.unitsPerPoint = unitsPerPoint;
    this.expectedRepeats = Scorer.expectedRepeats(blanket);
    this.targets = Targets.of(blanket);
    int count = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      count += blanket.roundCount(piece) - 1;
    }
    this.steps = count;
  }

  /** The total that a sum of losses leaves. */
  double total(double units) {
    return 100 - units / unitsPerPoint;
  }

  /** How often a layer should show a yarn. */
  int target(int layer, int yarn) {
    return targets.counts()[layer][yarn];
  }

  /** Spread: a pair of pieces that show the same yarn in a layer. */
  long repeat(int layer, Nearness nearness) {
    double weight = Layers.weight(layer) * nearness.weight();
    return expectedRepeats == 0 ? 0 : units(Part.SPREAD, weight / expectedRepeats);
  }

  /** Balance: one of a yarn over its target in a layer, and so one of another under. */
  long overTarget(int layer) {
    int weights = 0;
    for (int each = 0; each < blanket.layerCount(); each++) {
      weights += targets.pieces()[each] == 0 ? 0 : Layers.weight(each);
    }
    double pieces = targets.pieces()[layer];
    return units(Part.BALANCE, Layers.weight(layer) / pieces / weights);
  }

  /** Contrast: two borders on a seam. */
  long seam(int yarn, int other) {
    return contrast(yarn, other, blanket.layout().seams().size());
  }

  /** Contrast: two adjacent rounds of a piece. */
  long step(int yarn, int other) {
    return contrast(yarn, other, steps);
  }

  private long contrast(int yarn, int other, int count) {
    Pairs seams = blanket.layout().seams();
    int means = (seams.size() == 0 ? 0 : 1) + (steps == 0 ? 0 : 1);
    double contrast = Math.min(1, blanket.difference(yarn, other) / Scorer.FULL_CONTRAST);
    return units(Part.CONTRAST, (1 - contrast) / count / means);
  }

  /** Variety: a piece whose sequence an earlier piece has. */
  long copy() {
    return units(Part.VARIETY, 1.0 / blanket.pieceCount());
  }

  /** Keep: a round that has another yarn than before, of those that count. */
  long changed(int counting) {
    return units(Part.KEEP, 1.0 / counting);
  }

  /** Leeway: nothing left of a yarn. */
  long noLeeway() {
    return units(Part.LEEWAY, 1.0 / blanket.yarnCount());
  }

  private long units(Part part, double ofPart) {
    Preferences prefer = blanket.brief().prefer();
    double weights = 0;
    for (Map.Entry<Part, Double> weight : prefer.weights().entrySet()) {
      boolean counts = weight.getKey() != Part.KEEP || earlier.isPresent();
      weights += counts ? weight.getValue() : 0;
    }
    double points = weights == 0 ? 0 : 100 * prefer.weight(part) / weights;
    return Math.round(points * ofPart * unitsPerPoint);
  }
}
