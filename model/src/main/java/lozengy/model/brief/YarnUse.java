package lozengy.model.brief;

import static java.math.MathContext.DECIMAL128;

import java.math.BigDecimal;
import java.util.Optional;
import lozengy.model.input.Nulls;
import lozengy.model.unit.Ratio;

/**
 * Yarn used along a length: joining along the seams, edging along the outline.
 *
 * @param yarn code of the yarn
 * @param rate how much of it a round takes along a length
 * @param rounds how many rounds are worked, one above the other, at least 1; each along the same
 *     length
 * @param minutesPerMetre how long a round takes along a metre, in minutes above 0, where stated
 */
public record YarnUse(String yarn, YarnRate rate, int rounds, Optional<BigDecimal> minutesPerMetre)
    implements Joining {

  /**
   * Checks the number.
   *
   * @param yarn code of the yarn
   * @param rate how much of it a round takes along a length
   * @param rounds how many rounds are worked, one above the other, at least 1; each along the same
   *     length
   * @param minutesPerMetre how long a round takes along a metre, in minutes above 0, where stated
   * @throws IllegalArgumentException if there is no round
   */
  public YarnUse {
    Nulls.refuse("yarn rate minutesPerMetre", yarn, rate, minutesPerMetre);
    if (rounds < 1) {
      throw new IllegalArgumentException("there must be a round at least");
    }
    minutesPerMetre = minutesPerMetre.map(BigDecimal::stripTrailingZeros);
  }

  /**
   * One round at so much a metre.
   *
   * @param yarn code of the yarn
   * @param metresPerMetre metres of yarn per metre of seam or outline, above 0
   * @throws IllegalArgumentException if negative or not finite
   */
  public YarnUse(String yarn, double metresPerMetre) {
    this(yarn, new YarnRate.PerMetre(metresPerMetre), 1, Optional.empty());
  }

  /**
   * {@return the yarn that all rounds take along a length, in its unit}
   *
   * @param length the length
   * @param ball the put-up of the yarn; may be null where no weight comes in
   * @throws IllegalArgumentException if a strip was weighed and there is no put-up
   */
  public Ratio along(BigDecimal length, Ball ball) {
    return rate.along(length, ball).times(BigDecimal.valueOf(rounds));
  }

  /**
   * {@return how long all rounds take along a length, in minutes; empty where that is not stated}
   *
   * @param metres the length in m
   */
  @Override
  public Optional<BigDecimal> minutes(BigDecimal metres) {
    return minutesPerMetre.map(each -> each.multiply(metres).multiply(BigDecimal.valueOf(rounds)));
  }

  /**
   * {@return the same in another yarn} What a strip weighed in this one becomes a length, which is
   * the same in the other.
   *
   * @param code the other yarn's code
   * @param ball put-up of this one
   */
  public YarnUse in(String code, Optional<Ball> ball) {
    if (!weighed()) {
      return new YarnUse(code, rate, rounds, minutesPerMetre);
    }
    YarnRate.Strip strip = (YarnRate.Strip) rate;
    Ratio millimetres = strip.takes().millimetresIn(ball.orElse(null));
    YarnAmount length =
        new YarnAmount.Length(millimetres.over().divide(millimetres.under(), DECIMAL128));
    return new YarnUse(
        code,
        new YarnRate.Strip(strip.millimetres(), strip.rounds(), length),
        rounds,
        minutesPerMetre);
  }
}
