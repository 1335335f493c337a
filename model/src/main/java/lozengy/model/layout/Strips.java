package lozengy.model.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The strips of a layout, in joining order.
 *
 * <p>On point a strip is a diagonal row that rises from its left end to its right end, with the
 * triangles at its ends; strips are counted from the top left corner to the bottom right corner.
 * The top right and bottom left corners end the strips of their squares. The top left and bottom
 * right corners lie along a strip, not at an end: each is a strip of its own, the first and the
 * last. Straight, a strip is a row.
 *
 * <p>Every piece is in one strip, and each strip shares seams with the next; but on point, with the
 * sides open, the squares of a layout that is one across or one down meet at corner points only.
 */
public final class Strips {

  private Strips() {}

  /**
   * {@return the strips of a layout, in joining order; O(pieces log pieces) time}
   *
   * @param layout the layout
   */
  public static List<Strip> of(Layout layout) {
    boolean onPoint = layout.size().setting() == Setting.ON_POINT;
    List<List<Place>> rows = new ArrayList<>();
    for (Place place : layout.places()) {
      // on point x + y is even, straight y is odd: either way one row for every second number
      int row = (onPoint ? place.x() + place.y() : place.y()) / 2;
      while (rows.size() <= row) {
        rows.add(new ArrayList<>());
      }
      rows.get(row).add(place);
    }
    List<Strip> strips = new ArrayList<>();
    for (List<Place> row : rows) {
      if (!row.isEmpty()) {
        row.sort(Comparator.comparingInt(Place::x));
        strips.add(new Strip(strips.size() + 1, row));
      }
    }
    return List.copyOf(strips);
  }
}
