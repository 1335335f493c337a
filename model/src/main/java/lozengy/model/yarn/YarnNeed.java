package lozengy.model.yarn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;

/**
 * What one yarn is needed for.
 *
 * @param yarn its index
 * @param neededMillimetres length in mm that is needed, joining and edging included
 * @param stockMillimetres length in mm at hand
 * @param ballsNeeded whole balls that suffice by themselves, kept-back part included; empty where
 *     no put-up is stated
 * @param purchase what must be bought, if the stock less what is kept back does not suffice
 */
public record YarnNeed(
    int yarn,
    long neededMillimetres,
    long stockMillimetres,
    OptionalLong ballsNeeded,
    Optional<Purchase> purchase) {

  /**
   * The needs of all yarns.
   *
   * @param blanket the blanket
   * @param neededMillimetres length in mm needed of each yarn
   * @return one for each yarn, in the brief's order
   */
  public static List<YarnNeed> of(Blanket blanket, long[] neededMillimetres) {
    List<YarnNeed> needs = new ArrayList<>();
    for (int yarn = 0; yarn < neededMillimetres.length; yarn++) {
      needs.add(of(blanket, yarn, neededMillimetres[yarn]));
    }
    return needs;
  }

  private static YarnNeed of(Blanket blanket, int yarn, long needed) {
    Optional<Ball> ball = blanket.yarn(yarn).ball();
    long missing = needed - blanket.usableMillimetres(yarn);
    double keepBack = blanket.brief().rules().keepBackPercent();
    return new YarnNeed(
        yarn,
        needed,
        blanket.stockMillimetres(yarn),
        Purchase.balls(Purchase.withKeptBack(Math.max(0, needed), keepBack), ball),
        missing > 0 ? Optional.of(Purchase.of(missing, keepBack, ball)) : Optional.empty());
  }
}
