package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;

/**
 * Lists the sequences that a piece may show by what its rounds may take and may not have together.
 */
public final class SequenceLister {

  private final int[][] yarns;
  private final Within within;
  private final int atMost;
  private final List<List<Integer>> found = new ArrayList<>();
  private long steps;

  /** What rounds of the piece may not have together. */
  @FunctionalInterface
  public interface Within {

    /**
     * {@return whether two of its rounds may not have two yarns}
     *
     * @param round the one round, from 0 at the centre
     * @param yarn its yarn
     * @param other the other round
     * @param otherYarn its yarn
     */
    boolean bars(int round, int yarn, int other, int otherYarn);
  }

  private SequenceLister(int[][] yarns, Within within, int atMost) {
    this.yarns = yarns;
    this.within = within;
    this.atMost = atMost;
  }

  /**
   * Lists sequences.
   *
   * @param yarns the yarns that each round may take, centre first
   * @param within what its rounds may not have together
   * @param atMost how many to list at most, at least 1
   * @return the sequences; as many as {@code atMost} if there are more, or if the search for them
   *     was given up, so that a shorter list is all of them
   */
  public static List<List<Integer>> list(int[][] yarns, Within within, int atMost) {
    SequenceLister lister = new SequenceLister(yarns, within, atMost);
    if (!lister.extend(new ArrayList<>())) {
      while (lister.found.size() < atMost) {
        lister.found.add(List.of());
      }
    }
    return lister.found;
  }

  /** Adds what continues a start; false if it must be given up. */
  private boolean extend(List<Integer> start) {
    if (++steps > 50L * atMost + 10_000) {
      return false;
    }
    if (start.size() == yarns.length) {
      found.add(List.copyOf(start));
      return found.size() < atMost;
    }
    for (int yarn : yarns[start.size()]) {
      boolean follows = true;
      for (int round = 0; follows && round < start.size(); round++) {
        follows = !within.bars(round, start.get(round), start.size(), yarn);
      }
      if (follows) {
        start.add(yarn);
        if (!extend(start)) {
          return false;
        }
        start.remove(start.size() - 1);
      }
    }
    return true;
  }
}
