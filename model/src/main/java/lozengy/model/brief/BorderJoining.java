package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Optional;
import lozengy.model.input.Nulls;

/**
 * Seams that are worked in the borders' yarns: half of each in that of the one piece, half in that
 * of the other. The end of a border's yarn is left long for it, so that no tail comes on top.
 *
 * @param rate how much yarn is used along a seam
 * @param minutesPerMetre how long it takes along a metre, in minutes above 0, where stated
 */
public record BorderJoining(YarnRate rate, Optional<BigDecimal> minutesPerMetre)
    implements Joining {

  /**
   * Holds equal numbers alike.
   *
   * @param rate how much yarn is used along a seam
   * @param minutesPerMetre how long it takes along a metre, in minutes above 0, where stated
   */
  public BorderJoining {
    Nulls.refuse("rate minutesPerMetre", rate, minutesPerMetre);
    minutesPerMetre = minutesPerMetre.map(BigDecimal::stripTrailingZeros);
  }

  @Override
  public Optional<BigDecimal> minutes(BigDecimal metres) {
    return minutesPerMetre.map(each -> each.multiply(metres));
  }
}
