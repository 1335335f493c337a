package lozengy.solver.problem;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.score.FadeMeasure;
import lozengy.model.score.OrderMeasure;
import lozengy.model.score.Scorer;
import lozengy.model.score.Targets;

/**
 * What the smallest steps of the score's parts are worth in points of the total, and from them the
 * size of a cost unit: small enough that the lightest repeat is some thousands of units, large
 * enough that sums over a slot's pairs fit an int.
 */
final class CostScale {

  /** Layer weights and pair weights of the score. */
  static final int BORDER_WEIGHT = 2;

  static final int OTHER_WEIGHT = 1;
  static final int SEAM_WEIGHT = 4;
  static final int TOUCH_WEIGHT = 2;
  static final int NEAR_WEIGHT = 1;

  /** A penalty of a broken rule, in lightest steps: beyond any gain that a step could bring. */
  private static final int HARD_STEPS = 48;

  /**
   * Points of fade, divided by the rounds that fade, that a round of a tenth of the ranks costs.
   */
  private static final double FADE_STEP = 3;

  private static final int UNITS_OF_STEP = 1 << 14;

  /**
   * Points of a step so light that 1,000 points are 2^53 units: finer weights are not told apart.
   */
  private static final double LEAST_STEP = 1000.0 * UNITS_OF_STEP / (1L << 53);

  final double spreadPoints;
  final double[] balancePoints;
  final double seamContrastPoints;
  final double innerContrastPoints;
  final double seamVisionPoints;
  final double copyPoints;
  final double fadePart;
  final Optional<FadeMeasure> fade;
  final double orderPart;
  final Optional<OrderMeasure> order;
  final double leewayPoints;
  final double keepPoints;
  final double unitsPerPoint;
  final int hardCost;
  final int stepCost;

  CostScale(Blanket blanket, Targets targets, Optional<Sequences> earlier) {
    Preferences prefer = blanket.brief().prefer();
    double weights = 0;
    for (Part part : Part.values()) {
      if (part != Part.KEEP || earlier.isPresent()) {
        weights += prefer.weight(part);
      }
    }
    double pointsOfWeight = weights > 0 ? 100 / weights : 0;
    double expected = Scorer.expectedRepeats(blanket);
    spreadPoints = expected > 0 ? prefer.weight(Part.SPREAD) * pointsOfWeight / expected : 0;
    int layers = targets.pieces().length;
    balancePoints = new double[layers];
    for (int layer = 0; layer < layers; layer++) {
      balancePoints[layer] =
          prefer.weight(Part.BALANCE)
              * pointsOfWeight
              * layerWeight(layer)
              / (layers + 1.0)
              / (2.0 * targets.pieces()[layer]);
    }
    int seams = Scorer.countedSeams(blanket).size();
    long inner = 0;
    long free = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      inner += blanket.roundCount(piece) - 1;
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        boolean planned = earlier.isEmpty() || earlier.get().yarn(piece, round) != Sequences.OPEN;
        free += planned && blanket.free(piece, round) ? 1 : 0;
      }
    }
    double contrast = prefer.weight(Part.CONTRAST) * pointsOfWeight;
    double halves = seams > 0 && inner > 0 ? 0.5 : 1;
    seamContrastPoints = seams > 0 ? contrast * halves / seams : 0;
    innerContrastPoints = inner > 0 ? contrast * halves / inner : 0;
    seamVisionPoints = seams > 0 ? prefer.weight(Part.COLOUR_VISION) * pointsOfWeight / seams : 0;
    fadePart = weights > 0 ? prefer.weight(Part.FADE) / weights : 0;
    fade = fadePart > 0 ? FadeMeasure.of(blanket) : Optional.empty();
    orderPart = weights > 0 ? prefer.weight(Part.ORDER) / weights : 0;
    order = orderPart > 0 ? OrderMeasure.of(blanket) : Optional.empty();
    copyPoints = prefer.weight(Part.VARIETY) * pointsOfWeight / blanket.orbits().leads().length;
    leewayPoints = prefer.weight(Part.LEEWAY) * pointsOfWeight;
    keepPoints =
        earlier.isPresent() && free > 0 ? prefer.weight(Part.KEEP) * pointsOfWeight / free : 0;
    double step = stepPoints();
    unitsPerPoint = UNITS_OF_STEP / step;
    stepCost = UNITS_OF_STEP;
    hardCost = HARD_STEPS * UNITS_OF_STEP;
  }

  /** The lightest repeat, but not so light that another part's step would be out of proportion. */
  private double stepPoints() {
    double others = Math.max(seamContrastPoints, innerContrastPoints);
    others = Math.max(others, seamVisionPoints);
    others = Math.max(others, Math.max(copyPoints, keepPoints));
    others = Math.max(others, fade.map(f -> FADE_STEP * fadePart / f.rounds()).orElse(0.0));
    others = Math.max(others, order.map(o -> orderPart * o.stepPoints()).orElse(0.0));
    for (double points : balancePoints) {
      others = Math.max(others, points);
    }
    double step = Math.max(spreadPoints, others / (spreadPoints > 0 ? 16 : 4));
    return step > 0 ? Math.max(step, LEAST_STEP) : 1;
  }

  /** Weight of a layer. */
  static int layerWeight(int layer) {
    return layer == 0 ? BORDER_WEIGHT : OTHER_WEIGHT;
  }

  /** Units of a loss in points. */
  int units(double points) {
    return Math.toIntExact(Math.round(points * unitsPerPoint));
  }
}
