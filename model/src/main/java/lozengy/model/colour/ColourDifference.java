package lozengy.model.colour;

/** Differences between colours. */
public final class ColourDifference {

  private static final double TWENTY_FIVE_TO_THE_7TH = 6103515625.0;

  /**
   * Hues half a circle apart sit on a jump of the formula; this many degrees keep rounding from
   * deciding which side such a pair falls on.
   */
  private static final double HUE_TIE_DEGREES = 1e-9;

  private ColourDifference() {}

  /**
   * {@return the CIEDE2000 difference with kL = kC = kH = 1} Symmetric; 0 only for equal colours.
   *
   * <p>Source: G. Sharma, W. Wu and E. N. Dalal, "The CIEDE2000 Color-Difference Formula:
   * Implementation Notes, Supplementary Test Data, and Mathematical Observations", Color Research
   * and Application 30(1), 2005, 21-30. The names follow theirs.
   *
   * @param first the one colour
   * @param second the other colour
   */
  public static double ciede2000(Lab first, Lab second) {
    double meanC = (chroma(first.a(), first.b()) + chroma(second.a(), second.b())) / 2;
    double g = 0.5 * (1 - saturation(meanC));
    double a1 = (1 + g) * first.a();
    double a2 = (1 + g) * second.a();
    double c1 = chroma(a1, first.b());
    double c2 = chroma(a2, second.b());
    double h1 = hueDegrees(a1, first.b());
    double h2 = hueDegrees(a2, second.b());
    boolean grey = c1 * c2 == 0;
    boolean acrossZero = Math.abs(h2 - h1) > 180 + HUE_TIE_DEGREES;

    double deltaL = second.lightness() - first.lightness();
    double deltaC = c2 - c1;
    double deltaHue = grey ? 0 : h2 - h1;
    if (!grey && acrossZero) {
      deltaHue += h2 > h1 ? -360 : 360;
    }
    double deltaH = 2 * Math.sqrt(c1 * c2) * sinDegrees(deltaHue / 2);

    double l = (first.lightness() + second.lightness()) / 2;
    double c = (c1 + c2) / 2;
    double h = meanHue(h1, h2, grey, acrossZero);
    double t =
        1
            - 0.17 * cosDegrees(h - 30)
            + 0.24 * cosDegrees(2 * h)
            + 0.32 * cosDegrees(3 * h + 6)
            - 0.20 * cosDegrees(4 * h - 63);
    double fromMid = (l - 50) * (l - 50);
    double sl = 1 + 0.015 * fromMid / Math.sqrt(20 + fromMid);
    double sc = 1 + 0.045 * c;
    double sh = 1 + 0.015 * c * t;
    double fromBlue = (h - 275) / 25;
    double theta = 30 * StrictMath.exp(-fromBlue * fromBlue);
    double rt = -sinDegrees(2 * theta) * 2 * saturation(c);

    double byL = deltaL / sl;
    double byC = deltaC / sc;
    double byH = deltaH / sh;
    return Math.sqrt(byL * byL + byC * byC + byH * byH + rt * byC * byH);
  }

  /** With no hue on one side, the sum is the other's hue. */
  private static double meanHue(double h1, double h2, boolean grey, boolean acrossZero) {
    double sum = h1 + h2;
    if (grey) {
      return sum;
    }
    if (!acrossZero) {
      return sum / 2;
    }
    return (sum < 360 ? sum + 360 : sum - 360) / 2;
  }

  private static double saturation(double chroma) {
    double c7 = StrictMath.pow(chroma, 7);
    return Math.sqrt(c7 / (c7 + TWENTY_FIVE_TO_THE_7TH));
  }

  private static double chroma(double a, double b) {
    return Math.sqrt(a * a + b * b);
  }

  /** 0 up to 360; 0 for a grey. */
  private static double hueDegrees(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double degrees = StrictMath.toDegrees(StrictMath.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double sinDegrees(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }

  private static double cosDegrees(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }
}
