package lozengy.model.check;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Pairs of yarns that two rounds may not have together; which round has which makes no difference.
 * Immutable.
 */
public final class YarnPairs {

  private final int yarns;
  private final boolean[] barred;

  private YarnPairs(int yarns, boolean[] barred) {
    this.yarns = yarns;
    this.barred = barred;
  }

  /** Whether two yarns may not meet; asked both ways round. */
  @FunctionalInterface
  public interface Barred {

    /**
     * {@return whether they may not}
     *
     * @param yarn the one yarn's index, from 0
     * @param other the other yarn's index, from 0
     */
    boolean test(int yarn, int other);
  }

  /**
   * Pairs that a test picks.
   *
   * @param yarns how many yarns there are
   * @param test which pairs are barred
   * @return the pairs
   */
  public static YarnPairs of(int yarns, Barred test) {
    boolean[] barred = new boolean[yarns * yarns];
    for (int yarn = 0; yarn < yarns; yarn++) {
      for (int other = 0; other < yarns; other++) {
        barred[yarn * yarns + other] = test.test(yarn, other) || test.test(other, yarn);
      }
    }
    return new YarnPairs(yarns, barred);
  }

  /**
   * Every yarn with itself.
   *
   * @param yarns how many yarns there are
   * @return the pairs
   */
  public static YarnPairs same(int yarns) {
    return of(yarns, (yarn, other) -> yarn == other);
  }

  /**
   * {@return these pairs and others}
   *
   * @param others pairs of the same yarns
   */
  public YarnPairs and(YarnPairs others) {
    return of(yarns, (yarn, other) -> bars(yarn, other) || others.bars(yarn, other));
  }

  /**
   * {@return whether two rounds may not have two yarns}
   *
   * @param yarn the one yarn's index, from 0
   * @param other the other yarn's index, from 0
   */
  public boolean bars(int yarn, int other) {
    return barred[yarn * yarns + other];
  }

  /**
   * {@return the yarns that may not meet a yarn, ascending}
   *
   * @param yarn the yarn's index, from 0
   */
  public int[] against(int yarn) {
    return IntStream.range(0, yarns).filter(other -> bars(yarn, other)).toArray();
  }

  /** {@return whether it is every yarn with itself, and no other pair} */
  public boolean isSame() {
    return equals(same(yarns));
  }

  /** {@return how many yarns there are} */
  public int yarns() {
    return yarns;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof YarnPairs that && Arrays.equals(barred, that.barred);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(barred);
  }
}
