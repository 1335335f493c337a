package lozengy.model.making;

import java.util.Locale;

/** An order in which a blanket can be worked. */
public enum WorkOrder {
  /** Yarn by yarn, as the make list goes, each picked up seldom; joined when all is worked. */
  BALL,
  /** Strip by strip, piece by piece: each is finished, and each strip joined once it is whole. */
  STRIP,
  /** Round by round: all centres, yarn by yarn, then all second rounds; joined at the end. */
  ROUND;

  /** {@return the word used by options and files} */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
