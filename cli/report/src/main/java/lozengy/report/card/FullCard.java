package lozengy.report.card;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.card.ScoreCard;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.PartBounds;

/**
 * A score card with what each part of the score can be at best.
 *
 * @param arrangement the arrangement
 * @param card its card
 * @param best for each part a figure that none exceeds, the others left aside, with its proof
 * @param keepAtMost what keep does not exceed; empty where there is no earlier arrangement
 * @param kept for each part a figure that none exceeds in which every other part that weighs is at
 *     least as good as here
 */
public record FullCard(
    Arrangement arrangement,
    ScoreCard card,
    Map<Part, Bound> best,
    Optional<Double> keepAtMost,
    Map<Part, Double> kept) {

  /** Pieces beyond which a bound is worked out in one stage. */
  private static final int MANY_PIECES = 600;

  /** Works it out from a complete arrangement. */
  public static FullCard of(Arrangement arrangement) {
    ScoreCard card =
        ScoreCard.of(arrangement.blanket(), arrangement.sequences(), arrangement.earlier());
    BoundLimits limits = new BoundLimits(arrangement.blanket().pieceCount() > MANY_PIECES ? 0 : 1);
    Blanket blanket = arrangement.blanket();
    Map<Part, Double> figures = new EnumMap<>(card.score().parts());
    figures.remove(Part.KEEP);
    Map<Part, Bound> best = PartBounds.of(blanket, figures.keySet(), limits, () -> false);
    Map<Part, Double> kept =
        PartBounds.othersKept(blanket, figures, arrangement.bound(), limits, () -> false);
    best.forEach((part, bound) -> kept.merge(part, bound.total(), Math::min));
    Optional<Double> keep = arrangement.earlier().map(earlier -> PartBounds.keep(blanket, earlier));
    return new FullCard(arrangement, card, best, keep, kept);
  }

  /** The weight of a part. */
  double weight(Part part) {
    return arrangement.blanket().brief().prefer().weight(part);
  }

  /** What a part costs the total, in points. */
  double cost(Part part) {
    double weights = arrangement.blanket().brief().prefer().weightOfTotal();
    return weights == 0 ? 0 : weight(part) * (100 - card.score().parts().get(part)) / weights;
  }
}
