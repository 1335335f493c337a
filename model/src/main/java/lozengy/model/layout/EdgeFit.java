package lozengy.model.layout;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a side triangle, as measured, fits the place that it fills. On point its long edge spans the
 * diagonal of a square, side x sqrt 2; a shorter edge draws the outline in, a longer one ruffles
 * it. Neither is refused: worked edges give, and how much is right is the maker's to say.
 *
 * @param sideCm side of a square
 * @param measuredCm the side triangle's long edge as measured
 * @param triangles how many side triangles the layout has
 * @param outlineCm length of the outline by geometry
 */
public record EdgeFit(double sideCm, double measuredCm, long triangles, double outlineCm) {

  /** A difference below this many per cent is within what a tape measure tells; our own choice. */
  private static final double FITS_WITHIN_PERCENT = 0.5;

  /**
   * Holds the measured side triangle against the layout.
   *
   * @param layout the layout
   * @param measures its measures
   * @param edgeCm the side triangle's long edge as measured, in cm, where it is stated
   * @return the fit; empty where the layout has no side triangle or its edge is not stated
   */
  public static Optional<EdgeFit> of(Layout layout, Measures measures, OptionalDouble edgeCm) {
    long triangles = layout.size().sideTriangles() ? layout.size().sidePlaces() : 0;
    if (edgeCm.isEmpty() || triangles == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new EdgeFit(
            measures.sideCm(), edgeCm.getAsDouble(), triangles, measures.outlineLengthCm()));
  }

  /** {@return what the long edge spans by geometry, in cm} */
  public double spanCm() {
    return sideCm * Math.sqrt(2);
  }

  /**
   * {@return by how much one triangle's edge is longer than its span, in % of it; below 0 if
   * shorter}
   */
  public double trianglePercent() {
    return 100 * (measuredCm - spanCm()) / spanCm();
  }

  /**
   * {@return by how much all triangles together lengthen the outline, in cm; below 0 if they
   * shorten it}
   */
  public double outlineChangeCm() {
    return triangles * (measuredCm - spanCm());
  }

  /**
   * {@return by how much all triangles together lengthen the outline, in % of it; below 0 if
   * shorter}
   */
  public double outlinePercent() {
    return 100 * outlineChangeCm() / outlineCm;
  }

  /** {@return whether the edge matches, as far as a tape measure tells} */
  public boolean fits() {
    return Math.abs(trianglePercent()) < FITS_WITHIN_PERCENT;
  }
}
