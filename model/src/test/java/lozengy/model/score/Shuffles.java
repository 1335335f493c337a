package lozengy.model.score;

import java.util.Arrays;
import java.util.function.Consumer;

/** Every distinct order of some numbers, for exact averages over shuffles. */
final class Shuffles {

  private Shuffles() {}

  /** Hands out each distinct order once; the array is reused. */
  static void each(int[] numbers, Consumer<int[]> to) {
    int[] order = numbers.clone();
    Arrays.sort(order);
    do {
      to.accept(order);
    } while (next(order));
  }

  /** The next order in the dictionary's sense, in place; false after the last. */
  private static boolean next(int[] order) {
    int left = order.length - 2;
    while (left >= 0 && order[left] >= order[left + 1]) {
      left--;
    }
    if (left < 0) {
      return false;
    }
    int right = order.length - 1;
    while (order[right] <= order[left]) {
      right--;
    }
    swap(order, left, right);
    for (int i = left + 1, j = order.length - 1; i < j; i++, j--) {
      swap(order, i, j);
    }
    return true;
  }

  private static void swap(int[] order, int i, int j) {
    int kept = order[i];
    order[i] = order[j];
    order[j] = kept;
  }
}
