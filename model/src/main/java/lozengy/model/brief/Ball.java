package lozengy.model.brief;

/**
 * A yarn's put-up.
 *
 * @param grams weight of a ball in g, above 0
 * @param millimetres length of yarn on a ball in mm, above 0
 */
public record Ball(double grams, long millimetres) {

  /**
   * Checks the range.
   *
   * @param grams weight of a ball in g, above 0
   * @param millimetres length of yarn on a ball in mm, above 0
   * @throws IllegalArgumentException if a number is not above 0
   */
  public Ball {
    if (!(grams > 0 && Double.isFinite(grams)) || millimetres <= 0) {
      throw new IllegalArgumentException("a ball's grams and metres must be above 0");
    }
  }
}
