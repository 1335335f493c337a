package lozengy.model.yarn;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Ball;
import lozengy.model.unit.Ratio;

/**
 * What one yarn is needed for.
 *
 * @param yarn its index
 * @param neededMillimetres length in mm that counts against a stock that suffices, joining and
 *     edging included
 * @param stockMillimetres length in mm of the stock as the brief tells it, or as it was counted
 * @param work what of it is worked, still to be worked, and at hand now
 * @param ballsNeeded whole balls that must be at hand now so that it lasts, kept-back part
 *     included; empty where no put-up is stated, or all is kept back
 * @param lasts whether the stock less what is kept back suffices
 * @param purchase what must be bought, if it does not suffice, the yarn is not gone and not all is
 *     kept back
 */
public record YarnNeed(
    int yarn,
    long neededMillimetres,
    long stockMillimetres,
    YarnWork work,
    OptionalLong ballsNeeded,
    boolean lasts,
    Optional<Purchase> purchase) {

  private static final double ALL = 100;

  /**
   * The needs of all yarns.
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds; open rounds need none
   * @return one for each yarn, in the brief's order
   */
  public static List<YarnNeed> of(Blanket blanket, Sequences sequences) {
    long[] needed = blanket.usedMillimetres(sequences);
    List<YarnWork> work = YarnWork.of(blanket, sequences);
    List<YarnNeed> needs = new ArrayList<>();
    for (int yarn = 0; yarn < needed.length; yarn++) {
      needs.add(of(blanket, yarn, needed[yarn], work.get(yarn)));
    }
    return needs;
  }

  private static YarnNeed of(Blanket blanket, int yarn, long used, YarnWork work) {
    Optional<Ball> ball = blanket.yarn(yarn).ball();
    boolean enough = used <= blanket.yarns().usableMillimetres(yarn);
    // what is bought serves the pile's pieces first, as all stock does
    long needed = enough ? used : used + blanket.fixedUse().pileBeyondMillimetres(yarn);
    long missing = needed - blanket.yarns().usableMillimetres(yarn);
    double keepBack = blanket.brief().rules().keepBackPercent();
    if (keepBack >= ALL) {
      // no amount is enough
      return new YarnNeed(
          yarn,
          needed,
          blanket.yarn(yarn).stockMillimetres(),
          work,
          OptionalLong.empty(),
          missing <= 0,
          Optional.empty());
    }
    // what was worked since the stock was told is not at hand any more
    Ratio wanted =
        Purchase.withKeptBack(Math.max(0, needed), keepBack)
            .plus(Ratio.of(BigDecimal.valueOf(-Math.max(0, needed - work.toWorkMillimetres()))));
    return new YarnNeed(
        yarn,
        needed,
        blanket.yarn(yarn).stockMillimetres(),
        work,
        work.toWorkMillimetres() > 0
            ? Purchase.balls(wanted, ball)
            : ball.stream().mapToLong(each -> 0).findFirst(),
        missing <= 0,
        missing > 0 && !blanket.yarn(yarn).gone()
            ? Optional.of(Purchase.of(missing, keepBack, ball))
            : Optional.empty());
  }
}
