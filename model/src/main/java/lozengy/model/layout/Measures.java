package lozengy.model.layout;

import java.util.Map;
import lozengy.model.brief.Motif;

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
   * Measures a layout by its motifs.
   *
   * @param layout the layout
   * @param motifs the motifs; of them only the square's edge is read
   * @return its measures
   * @throws IllegalArgumentException if there is no square motif, or its edge is not stated
   */
  public static Measures of(Layout layout, Map<PieceKind, Motif> motifs) {
    Motif square = motifs.get(PieceKind.SQUARE);
    if (square == null || square.edgeCm().isEmpty()) {
      throw new IllegalArgumentException("the square motif needs the length of its side");
    }
    return of(layout, square.edgeCm().getAsDouble());
  }

  /**
   * Measures a layout of squares of one size.
   *
   * @param layout the layout
   * @param sideCm side of a square in cm, above 0
   */
  static Measures of(Layout layout, double sideCm) {
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
