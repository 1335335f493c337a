package lozengy.model.colour;

import java.util.Locale;

/**
 * Colour vision that lacks one kind of cone, as a matrix on linear RGB.
 *
 * <p>Source: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A Physiologically-based Model
 * for Simulation of Color Vision Deficiency", IEEE Transactions on Visualization and Computer
 * Graphics 15(6), 2009, 1291-1298; the matrices of severity 1.0, digit for digit as in two open
 * libraries that cite it (colour-science and culori). Each row adds up to 1, so greys stay. The
 * blue-type matrix is the least certain of the three.
 */
public enum Deficiency {
  /** Protan: the cones for long waves are missing. */
  RED(
      new double[][] {
        {0.152286, 1.052583, -0.204868},
        {0.114503, 0.786281, 0.099216},
        {-0.003882, -0.048116, 1.051998}
      }),
  /** Deutan: the cones for middle waves are missing. */
  GREEN(
      new double[][] {
        {0.367322, 0.860646, -0.227968},
        {0.280085, 0.672501, 0.047413},
        {-0.011820, 0.042940, 0.968881}
      }),
  /** Tritan: the cones for short waves are missing. */
  BLUE(
      new double[][] {
        {1.255528, -0.076749, -0.178779},
        {-0.078411, 0.930809, 0.147602},
        {0.004733, 0.691367, 0.303900}
      });

  private final double[][] matrix;

  Deficiency(double[][] matrix) {
    this.matrix = matrix;
  }

  /** {@return the word used on the terminal and in files, {@code red-type}} */
  public String word() {
    return name().toLowerCase(Locale.ROOT) + "-type";
  }

  /**
   * The channels as seen, linear, each cut to 0 to 1.
   *
   * @param colour a colour
   */
  double[] seenLinear(Srgb colour) {
    double red = LabColours.linear(colour.red() / 255.0);
    double green = LabColours.linear(colour.green() / 255.0);
    double blue = LabColours.linear(colour.blue() / 255.0);
    double[] seen = new double[3];
    for (int channel = 0; channel < seen.length; channel++) {
      double[] row = matrix[channel];
      double value = row[0] * red + row[1] * green + row[2] * blue;
      seen[channel] = Math.max(0, Math.min(1, value));
    }
    return seen;
  }

  /**
   * {@return the colour as seen, in L*a*b*}
   *
   * @param colour the colour as most people see it
   */
  public Lab seen(Srgb colour) {
    double[] linear = seenLinear(colour);
    return LabColours.ofLinear(linear[0], linear[1], linear[2]);
  }
}
