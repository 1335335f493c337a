package lozengy.model.score;

import java.util.List;

/**
 * A place that costs an arrangement points.
 *
 * @param points points of the total that it costs, above 0
 * @param words what is weak there, in words for a person
 * @param pieces indices of the pieces concerned; empty where it concerns the blanket
 */
public record WeakSpot(double points, String words, List<Integer> pieces) {

  /**
   * Copies the pieces.
   *
   * @param points points of the total that it costs, above 0
   * @param words what is weak there, in words for a person
   * @param pieces indices of the pieces concerned; empty where it concerns the blanket
   */
  public WeakSpot {
    pieces = List.copyOf(pieces);
  }
}
