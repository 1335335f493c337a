package lozengy.model.brief;

import java.math.BigDecimal;
import lozengy.model.input.Nulls;
import lozengy.model.unit.Ratio;

/** How much yarn is used along a length. */
public sealed interface YarnRate {

  /**
   * So much a metre.
   *
   * @param metresPerMetre metres of yarn per metre of seam or outline, above 0
   */
  record PerMetre(double metresPerMetre) implements YarnRate {
    /**
     * Checks the number.
     *
     * @param metresPerMetre metres of yarn per metre of seam or outline, above 0
     * @throws IllegalArgumentException if negative or not finite
     */
    public PerMetre {
      if (!(metresPerMetre > 0 && Double.isFinite(metresPerMetre))) {
        throw new IllegalArgumentException("metres-per-metre must be above 0");
      }
    }
  }

  /**
   * As much as a strip took that was weighed or measured, without tails.
   *
   * @param millimetres length of the strip in mm, above 0; equal numbers are held alike
   * @param rounds how many rounds it has, one above the other, at least 1
   * @param takes yarn that it took; a weight is a length through the put-up of the yarn that is
   *     used
   */
  record Strip(BigDecimal millimetres, int rounds, YarnAmount takes) implements YarnRate {
    /**
     * Checks the numbers.
     *
     * @param millimetres length of the strip in mm, above 0
     * @param rounds how many rounds it has, one above the other, at least 1
     * @param takes yarn that it took
     * @throws IllegalArgumentException if the length is not above 0 or there is no round
     */
    public Strip {
      Nulls.refuse("millimetres takes", millimetres, takes);
      if (millimetres.signum() <= 0 || rounds < 1) {
        throw new IllegalArgumentException("a strip needs a length and a round");
      }
      millimetres = millimetres.stripTrailingZeros();
    }
  }

  /**
   * {@return the yarn along a length, in its unit}
   *
   * @param length the length
   * @param ball the put-up of the yarn; may be null where no weight comes in
   * @throws IllegalArgumentException if a strip was weighed and there is no put-up
   */
  default Ratio along(BigDecimal length, Ball ball) {
    if (this instanceof PerMetre each) {
      return Ratio.of(length.multiply(BigDecimal.valueOf(each.metresPerMetre())));
    }
    Strip strip = (Strip) this;
    return strip
        .takes()
        .millimetresIn(ball)
        .times(length)
        .dividedBy(strip.millimetres().multiply(BigDecimal.valueOf(strip.rounds())));
  }
}
