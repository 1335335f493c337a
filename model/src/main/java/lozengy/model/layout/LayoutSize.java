package lozengy.model.layout;

import lozengy.model.input.Nulls;

/**
 * What a brief says of a layout.
 *
 * @param setting how the squares stand
 * @param across squares in the first row, at least 1
 * @param down rows (on point, rows of the outer squares), at least 1
 * @param sideTriangles whether triangles fill the sides; on point only
 * @param cornerTriangles whether triangles fill the corners; on point only
 */
public record LayoutSize(
    Setting setting, int across, int down, boolean sideTriangles, boolean cornerTriangles) {

  /**
   * Checks the numbers.
   *
   * @param setting how the squares stand
   * @param across squares in the first row, at least 1
   * @param down rows (on point, rows of the outer squares), at least 1
   * @param sideTriangles whether triangles fill the sides; on point only
   * @param cornerTriangles whether triangles fill the corners; on point only
   * @throws IllegalArgumentException if a number is below 1, or a straight setting asks for
   *     triangles
   */
  public LayoutSize {
    Nulls.refuse("setting", setting);
    if (across < 1 || down < 1) {
      throw new IllegalArgumentException("across and down must be at least 1");
    }
    if (setting == Setting.STRAIGHT && (sideTriangles || cornerTriangles)) {
      throw new IllegalArgumentException("a straight setting has no triangles");
    }
  }

  /** {@return how many squares, by the formula; does not build the layout} */
  public long squares() {
    long outer = (long) across * down;
    return setting == Setting.STRAIGHT ? outer : outer + (across - 1L) * (down - 1L);
  }

  /** {@return how many pieces of all kinds, by the formula; does not build the layout} */
  public long pieces() {
    return squares() + (sideTriangles ? sidePlaces() : 0) + (cornerTriangles ? 4 : 0);
  }

  /**
   * {@return how many places along the sides a triangle can fill, filled or open; 0 when straight}
   */
  public long sidePlaces() {
    return setting == Setting.STRAIGHT ? 0 : 2L * (across + (long) down - 2);
  }
}
