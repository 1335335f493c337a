package lozengy.model.layout;

/**
 * The finished blanket's measures, before any edging, by geometry from the side of a square.
 *
 * @param sideCm side of a square
 * @param widthCm finished width over the outermost points
 * @param heightCm finished height over the outermost points
 * @param areaCm2 area of all pieces
 * @param seamLengthCm length of all seams together
 * @param outlineLengthCm length of the outline, zigzag where sides or corners are open
 */
public record Measures(
    double sideCm,
    double widthCm,
    double heightCm,
    double areaCm2,
    double seamLengthCm,
    double outlineLengthCm) {

  /**
   * Measures a layout of squares of one size.
   *
   * @param layout the layout
   * @param sideCm side of a square in cm, above 0
   * @return its measures
   */
  public static Measures of(Layout layout, double sideCm) {
    LayoutSize size = layout.size();
    boolean onPoint = size.setting() == Setting.ON_POINT;
    double diagonalCm = sideCm * Math.sqrt(2);
    double stepCm = onPoint ? diagonalCm : sideCm;
    double outlineCm = 2 * stepCm * ((double) size.across() + size.down());
    if (onPoint && !size.sideTriangles()) {
      // a triangle's long edge gives way to the two sides of squares that it would cover
      outlineCm += size.sidePlaces() * (2 * sideCm - diagonalCm);
    }
    if (onPoint && !size.cornerTriangles()) {
      // a corner's legs, half a diagonal each, give way to the side of the corner square
      outlineCm += 4 * (sideCm - diagonalCm);
    }
    return new Measures(
        sideCm,
        size.across() * stepCm,
        size.down() * stepCm,
        quarterSquares(layout) * sideCm * sideCm / 4,
        layout.seams().size() * sideCm,
        outlineCm);
  }

  private static long quarterSquares(Layout layout) {
    return layout.places().stream().mapToLong(place -> place.kind().quarterSquares()).sum();
  }
}
