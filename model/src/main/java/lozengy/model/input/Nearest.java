package lozengy.model.input;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds what a mistyped word may have meant. */
public final class Nearest {

  private Nearest() {}

  /**
   * {@return the candidate nearest to a word by optimal string alignment (changes, additions,
   * omissions and swaps of neighbours, case aside), if it is near: at most a third of the longer
   * length, or one} Ties go to the earlier candidate. O(candidates x length²), for lengths of a
   * name's.
   *
   * @param word the word
   * @param candidates what may be meant
   */
  public static Optional<String> to(String word, Collection<String> candidates) {
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String candidate : candidates) {
      int longer = Math.max(word.length(), candidate.length());
      int near = Math.max(1, longer / 3);
      if (Math.abs(word.length() - candidate.length()) > near) {
        continue;
      }
      int distance = distance(fold(word), fold(candidate));
      if (distance <= near && distance < least && distance < longer) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  private static String fold(String word) {
    return word.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    int[] next = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      next[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        next[j] = Math.min(Math.min(row[j], next[j - 1]) + 1, row[j - 1] + change);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          next[j] = Math.min(next[j], before[j - 2] + 1);
        }
      }
      int[] free = before;
      before = row;
      row = next;
      next = free;
    }
    return row[b.length()];
  }
}
