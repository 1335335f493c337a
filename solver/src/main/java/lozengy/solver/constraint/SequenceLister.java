package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.brief.Rules.WithinPiece;

/** Lists the sequences that a piece may show by what its rounds may take and the rule within it. */
public final class SequenceLister {

  private final int[][] yarns;
  private final WithinPiece within;
  private final int atMost;
  private final List<List<Integer>> found = new ArrayList<>();
  private long steps;

  private SequenceLister(int[][] yarns, WithinPiece within, int atMost) {
    this.yarns = yarns;
    this.within = within;
    this.atMost = atMost;
  }

  /**
   * Lists sequences.
   *
   * @param yarns the yarns that each round may take, centre first
   * @param within the rule within the piece
   * @param atMost how many to list at most, at least 1
   * @return the sequences; as many as {@code atMost} if there are more, or if the search for them
   *     was given up, so that a shorter list is all of them
   */
  public static List<List<Integer>> list(int[][] yarns, WithinPiece within, int atMost) {
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
      boolean follows =
          switch (within) {
            case FREE -> true;
            case ADJACENT_DIFFER -> start.isEmpty() || start.get(start.size() - 1) != yarn;
            case ALL_DIFFER -> !start.contains(yarn);
          };
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
