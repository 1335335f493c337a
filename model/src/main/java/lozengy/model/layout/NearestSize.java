package lozengy.model.layout;

import java.util.Optional;

/**
 * The layout whose finished blanket, before any edging, comes nearest to a size that is wanted.
 *
 * @param size the layout
 * @param widthCm its finished width over the outermost points
 * @param heightCm its finished height over the outermost points
 * @param near whether both are off by no more than {@link #MOST_OFF_PERCENT}
 */
public record NearestSize(LayoutSize size, double widthCm, double heightCm, boolean near) {

  /** Beyond this a blanket is of another size; our own choice. */
  public static final double MOST_OFF_PERCENT = 15;

  /** More squares than any blanket is planned with. */
  private static final int MOST_SQUARES = 1_000_000;

  /**
   * Finds it; width and height do not depend on each other, so each is nearest by itself.
   *
   * @param like how squares stand and what fills the outline
   * @param sideCm side of a square in cm, above 0
   * @param widthCm the width that is wanted, in cm, above 0
   * @param heightCm the height that is wanted, in cm, above 0
   * @return the nearest layout; empty where it has more squares than any blanket is planned with
   */
  public static Optional<NearestSize> of(
      LayoutSize like, double sideCm, double widthCm, double heightCm) {
    double stepCm = like.setting() == Setting.ON_POINT ? sideCm * Math.sqrt(2) : sideCm;
    double across = Math.max(1, Math.rint(widthCm / stepCm));
    double down = Math.max(1, Math.rint(heightCm / stepCm));
    if (across * down > MOST_SQUARES) {
      return Optional.empty();
    }
    LayoutSize size =
        new LayoutSize(
            like.setting(), (int) across, (int) down, like.sideTriangles(), like.cornerTriangles());
    double width = across * stepCm;
    double height = down * stepCm;
    return Optional.of(
        new NearestSize(size, width, height, near(width, widthCm) && near(height, heightCm)));
  }

  private static boolean near(double found, double wanted) {
    return Math.abs(found - wanted) * 100 <= wanted * MOST_OFF_PERCENT;
  }
}
