package lozengy.model.stitch;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * How thick a yarn is, by the categories 1 to 5 of the Craft Yarn Council's Standards and
 * Guidelines; 0, 6 and 7 differ between its printings. The thicknesses in mm are our own, rough,
 * without a source.
 */
public enum YarnWeight {
  /** Category 1. */
  SUPER_FINE("1.4"),
  /** Category 2. */
  FINE("1.7"),
  /** Category 3. */
  LIGHT("2.1"),
  /** Category 4. */
  MEDIUM("2.8"),
  /** Category 5. */
  BULKY("3.6");

  private final BigDecimal thickness;

  YarnWeight(String thickness) {
    this.thickness = new BigDecimal(thickness);
  }

  /** {@return the word used in files} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** {@return the standard's number of the category, 1 to 5} */
  public int category() {
    return ordinal() + 1;
  }

  /** {@return how thick the yarn is, in mm; rough} */
  public BigDecimal thicknessMillimetres() {
    return thickness;
  }
}
