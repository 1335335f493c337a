package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Optional;

/** What the seams are worked in: one yarn, or the yarns of the borders that meet there. */
public sealed interface Joining permits YarnUse, BorderJoining {

  /** {@return how much yarn is used along a seam} */
  YarnRate rate();

  /**
   * {@return how long it takes, in minutes; empty where that is not stated}
   *
   * @param metres the length in m
   */
  Optional<BigDecimal> minutes(BigDecimal metres);

  /** {@return whether yarns need put-ups, because a strip was weighed} */
  default boolean weighed() {
    return rate() instanceof YarnRate.Strip strip && strip.takes() instanceof YarnAmount.Weight;
  }
}
