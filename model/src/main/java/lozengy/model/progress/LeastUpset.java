package lozengy.model.progress;

/**
 * How many rounds of a plan must change at least, of those that are free to change and had a yarn.
 *
 * @param rounds in every valid arrangement so many of them have another yarn, or more; proved
 * @param exact whether it is known that so few suffice
 */
public record LeastUpset(int rounds, boolean exact) {

  /**
   * Checks the range.
   *
   * @param rounds in every valid arrangement so many of them have another yarn, or more; proved
   * @param exact whether it is known that so few suffice
   * @throws IllegalArgumentException if the number is negative
   */
  public LeastUpset {
    if (rounds < 0) {
      throw new IllegalArgumentException("rounds must be 0 or more: " + rounds);
    }
  }
}
