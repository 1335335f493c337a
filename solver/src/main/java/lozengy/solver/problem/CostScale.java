package lozengy.solver.problem;

import java.util.stream.DoubleStream;
import lozengy.model.brief.Part;
import lozengy.model.score.Points;

/**
 * The size of a cost unit: small enough that the lightest repeat is some thousands of units, large
 * enough that sums over a slot's pairs fit an int.
 */
final class CostScale {

  /** Units of the lightest step. */
  static final int STEP_COST = 1 << 14;

  /** A penalty of a broken rule, in lightest steps: beyond any gain that a step could bring. */
  static final int HARD_COST = 48 * STEP_COST;

  /**
   * Points of fade, divided by the rounds that fade, that a round of a tenth of the ranks costs.
   */
  private static final double FADE_STEP = 3;

  /**
   * Points of a step so light that 1,000 points are 2^53 units: finer weights are not told apart.
   */
  private static final double LEAST_STEP = 1000.0 * STEP_COST / (1L << 53);

  final double unitsPerPoint;

  CostScale(Points points) {
    this.unitsPerPoint = STEP_COST / stepPoints(points);
  }

  /** The lightest repeat, but not so light that another part's step would be out of proportion. */
  private static double stepPoints(Points points) {
    DoubleStream.Builder others = DoubleStream.builder().add(points.copy()).add(points.changed());
    points.pairs().forEach(pair -> others.add(pair.points()));
    points.fade().ifPresent(f -> others.add(FADE_STEP * points.share(Part.FADE) / f.rounds()));
    points.order().ifPresent(o -> others.add(points.share(Part.ORDER) * o.stepPoints()));
    for (int layer = 0; layer < points.targets().pieces().length; layer++) {
      others.add(points.balance(layer));
    }
    double most = others.build().max().getAsDouble();
    double step = Math.max(points.repeat(), most / (points.repeat() > 0 ? 16 : 4));
    return step > 0 ? Math.max(step, LEAST_STEP) : 1;
  }

  /** Units of a loss in points. */
  int units(double points) {
    return Math.toIntExact(Math.round(points * unitsPerPoint));
  }
}
