package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Nulls;

/**
 * A fade that is asked for: yarns in an order along a direction.
 *
 * @param towards where the last of them lie
 * @param order the order of the yarns
 * @param yarns codes in their order, where it is stated; else empty
 * @param where the rounds that fade
 */
public record Fade(Towards towards, Order order, List<String> yarns, Where where) {

  /** A direction. */
  public enum Towards {
    /** To the right. */
    RIGHT("right", 1, 0),
    /** To the corner at the bottom right. */
    BOTTOM_RIGHT("bottom-right", 1, 1),
    /** To the bottom. */
    BOTTOM("bottom", 0, 1),
    /** To the corner at the bottom left. */
    BOTTOM_LEFT("bottom-left", -1, 1),
    /** To the left. */
    LEFT("left", -1, 0),
    /** To the corner at the top left. */
    TOP_LEFT("top-left", -1, -1),
    /** To the top. */
    TOP("top", 0, -1),
    /** To the corner at the top right. */
    TOP_RIGHT("top-right", 1, -1),
    /** From the centre out. */
    OUTLINE("outline", 0, 0),
    /** From the outline in. */
    CENTRE("centre", 0, 0);

    private final String word;
    private final int x;
    private final int y;

    Towards(String word, int x, int y) {
      this.word = word;
      this.x = x;
      this.y = y;
    }

    /** {@return the word used in files} */
    public String word() {
      return word;
    }

    /**
     * {@return how far a place lies in this direction; only the order of these numbers matters} A
     * diagonal runs from corner to corner.
     *
     * @param placeX lattice coordinate, 0 to {@code width}
     * @param placeY lattice coordinate, 0 to {@code height}
     * @param width the largest x of the lattice
     * @param height the largest y of the lattice
     */
    public long along(int placeX, int placeY, int width, int height) {
      long fromMiddleX = 2L * placeX - width;
      long fromMiddleY = 2L * placeY - height;
      long fromCentre = fromMiddleX * fromMiddleX + fromMiddleY * fromMiddleY;
      return switch (this) {
        case OUTLINE -> fromCentre;
        case CENTRE -> -fromCentre;
        default -> x * fromMiddleX * height + y * fromMiddleY * width;
      };
    }
  }

  /** An order of yarns. */
  public enum Order {
    /** The darkest first, by CIE L*. */
    DARK_TO_LIGHT("dark-to-light"),
    /** The lightest first, by CIE L*. */
    LIGHT_TO_DARK("light-to-dark"),
    /** As the yarns are listed. */
    STATED("");

    private final String word;

    Order(String word) {
      this.word = word;
    }

    /** {@return the word used in files; empty for a stated one, which is a list} */
    public String word() {
      return word;
    }
  }

  /**
   * Copies the list.
   *
   * @param towards where the last of them lie
   * @param order the order of the yarns
   * @param yarns codes in their order, where it is stated; else empty
   * @param where the rounds that fade
   */
  public Fade {
    Nulls.refuse("towards order yarns where", towards, order, yarns, where);
    yarns = List.copyOf(yarns);
    if (yarns.isEmpty() == (order == Order.STATED)) {
      throw new IllegalArgumentException("a stated order, and no other, lists its yarns");
    }
  }
}
