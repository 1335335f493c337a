package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.score.Layers;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;

/**
 * What a unit of each part's measure is worth in points of the total.
 *
 * @param balance points for each layer lost by a piece more or less than wanted
 * @param repeats points for each layer lost by a unit of weight of repeats; 0 if none is expected
 * @param seam points for a seam of full contrast
 * @param seamVision points for a seam that people of any colour vision can tell apart
 * @param vision points of colour vision where a blanket has no seam
 * @param step points for two rounds side by side of full contrast
 * @param contrast points of contrast where a blanket has neither
 * @param variety points of full variety
 * @param leeway points of full leeway of all yarns
 * @param spread points of full spread
 * @param allBalance points of full balance
 * @param unbounded points of the parts that nobody bounds: fade and order
 */
record Weights(
    double[] balance,
    double[] repeats,
    double seam,
    double seamVision,
    double vision,
    double step,
    double contrast,
    double variety,
    double leeway,
    double spread,
    double allBalance,
    double unbounded) {

  /** The weights of a blanket, or null if no part of the total weighs. */
  static Weights of(Blanket blanket, Targets targets) {
    double sum = blanket.brief().prefer().weightOfTotal();
    if (sum == 0) {
      return null;
    }
    int layers = blanket.layerCount();
    double expected = Scorer.expectedRepeats(blanket);
    double layerWeights = 0;
    for (int layer = 0; layer < layers; layer++) {
      layerWeights += targets.pieces()[layer] == 0 ? 0 : Layers.weight(layer);
    }
    double[] balance = new double[layers];
    double[] repeats = new double[layers];
    for (int layer = 0; layer < layers; layer++) {
      int pieces = targets.pieces()[layer];
      if (pieces > 0) {
        balance[layer] =
            points(blanket, Part.BALANCE, sum) * Layers.weight(layer) / (2 * pieces * layerWeights);
      }
      if (expected > 0) {
        repeats[layer] =
            points(blanket, Part.SPREAD, sum) * Layers.spreadWeight(blanket, layer) / expected;
      }
    }
    int steps = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      steps += blanket.roundCount(piece) - 1;
    }
    int seams = Scorer.countedSeams(blanket).size();
    int means = (seams == 0 ? 0 : 1) + (steps == 0 ? 0 : 1);
    double contrast = points(blanket, Part.CONTRAST, sum);
    double vision = points(blanket, Part.COLOUR_VISION, sum);
    return new Weights(
        balance,
        repeats,
        seams == 0 ? 0 : contrast / means / seams,
        seams == 0 ? 0 : vision / seams,
        seams == 0 ? vision : 0,
        steps == 0 ? 0 : contrast / means / steps,
        means == 0 ? contrast : 0,
        points(blanket, Part.VARIETY, sum),
        points(blanket, Part.LEEWAY, sum),
        points(blanket, Part.SPREAD, sum),
        points(blanket, Part.BALANCE, sum),
        points(blanket, Part.FADE, sum) + points(blanket, Part.ORDER, sum));
  }

  private static double points(Blanket blanket, Part part, double sum) {
    return 100 * blanket.brief().prefer().weight(part) / sum;
  }
}
