package lozengy.model.yarn;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.brief.Ball;
import lozengy.model.unit.Ratio;

/**
 * What must be bought so that a yarn, or one of several, lasts.
 *
 * @param missingMillimetres length in mm to be bought, above 0, kept-back part included
 * @param balls whole balls that hold it; empty where no put-up is stated
 */
public record Purchase(long missingMillimetres, OptionalLong balls) {

  private static final long TENTH = 100;

  /**
   * The purchase that makes up for too little.
   *
   * @param shortMillimetres length in mm that is wanted beyond what may be used, above 0
   * @param keepBackPercent part of every stock that stays untouched, 0 or more and below 100
   * @param ball what is on a ball, where stated
   */
  static Purchase of(long shortMillimetres, double keepBackPercent, Optional<Ball> ball) {
    long missing = withKeptBack(shortMillimetres, keepBackPercent).up();
    return new Purchase(missing, balls(Ratio.of(BigDecimal.valueOf(missing)), ball));
  }

  /**
   * {@return what must be bought in mm, rounded up to a tenth of a metre, as people are told it}
   */
  public long toldMillimetres() {
    return (missingMillimetres + TENTH - 1) / TENTH * TENTH;
  }

  /** The length in mm of which so much may be used. */
  static Ratio withKeptBack(long usedMillimetres, double keepBackPercent) {
    return Ratio.of(BigDecimal.valueOf(usedMillimetres).movePointRight(2))
        .dividedBy(new BigDecimal(100).subtract(BigDecimal.valueOf(keepBackPercent)));
  }

  /** Whole balls that hold a length in mm; empty where no put-up is stated. */
  static OptionalLong balls(Ratio millimetres, Optional<Ball> ball) {
    return ball.map(each -> millimetres.dividedBy(each.millimetres()).up()).stream()
        .mapToLong(Long::longValue)
        .findAny();
  }
}
