package lozengy.model.layout;

import java.util.List;
import lozengy.model.input.Words;

/**
 * A way from one lattice point to another, with all pairs of places that lie so to each other: the
 * second is {@code x} units to the right of the first and {@code y} down. Parallel arrays, in the
 * order of the first places; they are shared, for speed: read them only.
 *
 * @param x lattice units to the right, negative to the left; see {@link Place}
 * @param y lattice units down, 0 or more
 * @param from indices of the first places
 * @param to indices of the second places
 */
public record Offset(int x, int y, int[] from, int[] to) {

  /** {@return how many pairs of places lie so} */
  public int size() {
    return from.length;
  }

  /**
   * {@return the offset in places along a row and in rows, such as {@code 1 1/2 places to the right
   * and 3 rows down}} As pieces are named: on point a row lies half a diagonal below the one
   * before.
   *
   * @param setting the layout's setting
   */
  public String words(Setting setting) {
    String side = x > 0 ? " to the right" : " to the left";
    String along = x == 0 ? "" : places(Math.abs(x)) + side;
    int rows = setting == Setting.ON_POINT ? y : y / 2;
    String down = rows == 0 ? "" : Words.count(rows, "row") + " down";
    return String.join(
        " and ", List.of(along, down).stream().filter(part -> !part.isEmpty()).toList());
  }

  private static String places(int halves) {
    String whole = halves < 2 ? "" : String.valueOf(halves / 2);
    String half = halves % 2 == 0 ? "" : whole.isEmpty() ? "1/2" : " 1/2";
    return whole + half + (halves > 2 ? " places" : " place");
  }
}
