package lozengy.model.layout;

import java.util.List;

/**
 * A row of pieces that is joined first, before the strips are joined to each other.
 *
 * @param number from 1, counted from the top left
 * @param pieces its pieces from left to right, at least one; each shares a seam with the next
 */
public record Strip(int number, List<Place> pieces) {

  /**
   * Copies the pieces.
   *
   * @param number from 1, counted from the top left
   * @param pieces its pieces from left to right, at least one; each shares a seam with the next
   * @throws IllegalArgumentException if there is none
   */
  public Strip {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("a strip has at least one piece");
    }
  }
}
