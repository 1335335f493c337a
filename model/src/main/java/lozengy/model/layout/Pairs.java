package lozengy.model.layout;

import java.util.stream.IntStream;

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

  /** Whether a pair is exempt from what is asked of the others. */
  @FunctionalInterface
  public interface Exempt {

    /**
     * {@return whether it is}
     *
     * @param first the index of the first place
     * @param second the index of the second place
     */
    boolean test(int first, int second);
  }

  /**
   * {@return these pairs but for those that are exempt, in their order} O(pairs).
   *
   * @param exempt which are left out
   */
  public Pairs without(Exempt exempt) {
    int[] kept =
        IntStream.range(0, size()).filter(i -> !exempt.test(first[i], second[i])).toArray();
    return new Pairs(
        IntStream.of(kept).map(i -> first[i]).toArray(),
        IntStream.of(kept).map(i -> second[i]).toArray());
  }
}
