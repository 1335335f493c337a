package lozengy.model.layout;

import java.util.Map;
import lozengy.model.brief.Motif;

/**
 * The finished blanket's measures, before any edging.
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

  /** Measures a layout by its motifs. */
  public static Measures of(Layout layout, Map<PieceKind, Motif> motifs) {
    throw new UnsupportedOperationException("not written yet");
  }
}
