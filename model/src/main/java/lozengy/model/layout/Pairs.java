package lozengy.model.layout;

/**
 * Pairs of places of one class, as parallel arrays; {@code first[i] < second[i]}, sorted by first
 * and then second. The arrays are shared, for speed: read them only.
 *
 * @param first indices of the first places
 * @param second indices of the second places
 */
public record Pairs(int[] first, int[] second) {

  /** {@return how many pairs} */
  public int size() {
    return first.length;
  }
}
