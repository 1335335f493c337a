package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Nulls;

/**
 * Pieces of which the same number of rounds is worked.
 *
 * @param rounds how many, from the centre, at least 1
 * @param at selectors of the pieces
 */
public record PartWorked(int rounds, List<String> at) {

  /** More than any motif has rounds. */
  static final int MOST_ROUNDS = 1000;

  /**
   * Copies the list.
   *
   * @param rounds how many, from the centre, at least 1
   * @param at selectors of the pieces
   * @throws IllegalArgumentException if no round is worked
   */
  public PartWorked {
    Nulls.refuse("at", at);
    at = List.copyOf(at);
    if (rounds < 1) {
      throw new IllegalArgumentException(rounds + " rounds worked");
    }
  }
}
