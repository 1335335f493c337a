package lozengy.model.brief;

import java.math.BigDecimal;
import lozengy.model.input.Nulls;

/**
 * The plan goes to others with a pack of yarn: whoever works it begins with nothing.
 *
 * @param looserPercent by how much more yarn than is reckoned their hands may take, in per cent, 0
 *     or more; the pack suffices for them too
 */
public record ForSale(BigDecimal looserPercent) {

  /**
   * Equal numbers are held alike.
   *
   * @param looserPercent by how much more yarn than is reckoned their hands may take
   */
  public ForSale {
    Nulls.refuse("looserPercent", looserPercent);
    Nulls.refuse("looserPercent", looserPercent);
    looserPercent = looserPercent.stripTrailingZeros();
  }
}
