package lozengy.report.chart;

import lozengy.model.colour.Srgb;

/** Chooses text colours that read on a yarn's colour. */
public final class Ink {

  /** Near black. */
  public static final String DARK = "#1a1a1a";

  /** White. */
  public static final String LIGHT = "#ffffff";

  private static final double DARK_LUMINANCE = luminance(Srgb.parse(DARK));

  private Ink() {}

  /** Of near black and white, the one with the greater contrast ratio (WCAG 2.2). */
  public static String on(Srgb background) {
    double luminance = luminance(background);
    double ratioDark = (luminance + 0.05) / (DARK_LUMINANCE + 0.05);
    double ratioLight = 1.05 / (luminance + 0.05);
    return ratioDark >= ratioLight ? DARK : LIGHT;
  }

  /** A colour as it is seen through the veil over what is not worked yet. */
  public static Srgb veiled(Srgb colour) {
    return new Srgb(veiled(colour.red()), veiled(colour.green()), veiled(colour.blue()));
  }

  private static int veiled(int channel) {
    return (int) Math.round(channel + (255 - channel) * Fabric.VEIL);
  }

  /** Relative luminance, 0 to 1, as WCAG 2.2 defines it. */
  private static double luminance(Srgb colour) {
    return 0.2126 * linear(colour.red())
        + 0.7152 * linear(colour.green())
        + 0.0722 * linear(colour.blue());
  }

  private static double linear(int channel) {
    double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
