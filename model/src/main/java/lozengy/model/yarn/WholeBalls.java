package lozengy.model.yarn;

import java.math.BigDecimal;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.ForSale;
import lozengy.model.unit.Ratio;

/**
 * Whole balls of one put-up, for hands that may take more than is reckoned: what of them may be
 * used, and how many hold a length.
 *
 * @param ball the put-up
 * @param keepBackPercent part that stays untouched, 0 or more and below 100
 * @param looserPercent by how much more than is reckoned hands may take, in per cent, 0 or more
 */
public record WholeBalls(Ball ball, double keepBackPercent, BigDecimal looserPercent) {

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  /**
   * {@return the balls of a put-up for whoever works a brief: with what it keeps back, and with its
   * looser hands where it is for sale}
   *
   * @param brief the brief
   * @param ball the put-up
   */
  public static WholeBalls of(Brief brief, Ball ball) {
    return new WholeBalls(
        ball,
        brief.rules().keepBackPercent(),
        brief.forSale().map(ForSale::looserPercent).orElse(BigDecimal.ZERO));
  }

  /**
   * {@return what of so many may be used, as it is reckoned, in mm; rounded up as all stock is}
   *
   * @param balls how many, 0 or more
   */
  public long usableMillimetres(long balls) {
    return Ratio.of(ball.millimetres().multiply(BigDecimal.valueOf(balls)))
        .times(HUNDRED.subtract(BigDecimal.valueOf(keepBackPercent)))
        .dividedBy(HUNDRED.add(looserPercent))
        .up();
  }

  /**
   * {@return the fewest of which so much may be used}
   *
   * @param millimetres length in mm as it is reckoned; nothing is needed below 1
   */
  public long fewest(long millimetres) {
    if (millimetres <= 0) {
      return 0;
    }
    long balls = Math.max(0, millimetres / Math.max(1, usableMillimetres(1)) - 1);
    while (usableMillimetres(balls) < millimetres) {
      balls++;
    }
    return balls;
  }
}
