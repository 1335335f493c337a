package lozengy.model.colour;

/**
 * Turns sRGB into CIE L*a*b* under D65.
 *
 * <p>Transfer curve of IEC 61966-2-1; matrix in its exact rational form, derived from the sRGB
 * primaries and the white x = 0.3127, y = 0.3290 (printed in W3C CSS Color 4); epsilon and kappa of
 * CIE 15. The same white serves both steps, so that every grey has a* = b* = 0. {@link StrictMath}
 * gives the same figures on every machine.
 */
public final class LabColours {

  private static final double[][] XYZ_OF_LINEAR = {
    {506752.0 / 1228815, 87881.0 / 245763, 12673.0 / 70218},
    {87098.0 / 409605, 175762.0 / 245763, 12673.0 / 175545},
    {7918.0 / 409605, 87881.0 / 737289, 1001167.0 / 1053270}
  };

  private static final double WHITE_X = 0.3127 / 0.3290;
  private static final double WHITE_Z = (1 - 0.3127 - 0.3290) / 0.3290;
  private static final double EPSILON = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;

  private LabColours() {}

  /**
   * {@return the colour in L*a*b*}
   *
   * @param colour the colour in sRGB
   */
  public static Lab of(Srgb colour) {
    return of(colour.red() / 255.0, colour.green() / 255.0, colour.blue() / 255.0);
  }

  /** The colour with these channels, each 0 to 1, in L*a*b*. */
  static Lab of(double red, double green, double blue) {
    return ofLinear(linear(red), linear(green), linear(blue));
  }

  /** The colour with these channels, each 0 to 1 and freed of the transfer curve, in L*a*b*. */
  static Lab ofLinear(double red, double green, double blue) {
    double[] xyz = xyzOfLinear(red, green, blue);
    double fx = cubeRootAboveDark(xyz[0] / WHITE_X);
    double fy = cubeRootAboveDark(xyz[1]);
    double fz = cubeRootAboveDark(xyz[2] / WHITE_Z);
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  /** The colour with these channels, each 0 to 1, in CIE XYZ with Y = 1 for white. */
  static double[] xyz(double red, double green, double blue) {
    return xyzOfLinear(linear(red), linear(green), linear(blue));
  }

  private static double[] xyzOfLinear(double red, double green, double blue) {
    double[] xyz = new double[3];
    for (int i = 0; i < xyz.length; i++) {
      double[] row = XYZ_OF_LINEAR[i];
      xyz[i] = row[0] * red + row[1] * green + row[2] * blue;
    }
    return xyz;
  }

  /** A channel, 0 to 1, freed of the sRGB transfer curve. */
  static double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : StrictMath.pow((channel + 0.055) / 1.055, 2.4);
  }

  /** CIE 15's f: the cube root, with a straight line near black. */
  private static double cubeRootAboveDark(double ratio) {
    return ratio > EPSILON ? StrictMath.cbrt(ratio) : (KAPPA * ratio + 16) / 116;
  }
}
