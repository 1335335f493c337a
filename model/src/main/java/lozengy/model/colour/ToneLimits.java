package lozengy.model.colour;

/**
 * The L* at which a yarn's tone changes: below {@code darkBelow} it is dark, from {@code lightFrom}
 * on it is light, in between it is mid.
 *
 * @param darkBelow L*, 0 to 100
 * @param lightFrom L*, {@code darkBelow} to 100
 */
public record ToneLimits(double darkBelow, double lightFrom) {

  /** Thirds of the lightness range, widened for mids; our own choice, open to a brief's change. */
  public static final ToneLimits DEFAULT = new ToneLimits(42, 68);

  /**
   * Checks the order of the limits.
   *
   * @param darkBelow L*, 0 to 100
   * @param lightFrom L*, {@code darkBelow} to 100
   * @throws IllegalArgumentException if a limit is outside 0 to 100 or they are out of order
   */
  public ToneLimits {
    if (!(darkBelow >= 0 && darkBelow <= lightFrom && lightFrom <= 100)) {
      throw new IllegalArgumentException(
          "Tone limits must satisfy 0 <= dark-below <= light-from <= 100: "
              + darkBelow
              + ", "
              + lightFrom);
    }
  }

  /**
   * {@return the tone of a yarn with this lightness L*}
   *
   * @param lightness CIE L*, 0 to 100
   */
  public Tone toneOf(double lightness) {
    if (lightness < darkBelow) {
      return Tone.DARK;
    }
    return lightness < lightFrom ? Tone.MID : Tone.LIGHT;
  }
}
