package lozengy.report;

import java.util.Arrays;
import java.util.List;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;

/** Which seams join pieces to strips, and which join the strips. */
public final class SeamKinds {

  private static final String WITHIN = "within-strip";
  private static final String BETWEEN = "between-strips";

  /** The words for both. */
  public static final List<String> WORDS = List.of(WITHIN, BETWEEN);

  private final int[] strips;

  private SeamKinds(int[] strips) {
    this.strips = strips;
  }

  /** Those of a layout. O(pieces). */
  public static SeamKinds of(Layout layout) {
    int[] strips = new int[layout.places().size()];
    Arrays.fill(strips, -1);
    for (Strip strip : Strips.of(layout)) {
      strip.pieces().forEach(piece -> strips[piece.index()] = strip.number());
    }
    return new SeamKinds(strips);
  }

  /**
   * The word for a seam.
   *
   * @param first a piece on it
   * @param second the other
   */
  public String of(int first, int second) {
    return strips[first] == strips[second] ? WITHIN : BETWEEN;
  }
}
