package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Nulls;

/**
 * The rounds of pieces that a wish speaks of.
 *
 * @param at names of pieces or of groups of pieces, at least one
 * @param rounds numbers of rounds from 1 at the centre, or {@link #BORDER}; empty: all rounds
 */
public record Where(List<String> at, List<Integer> rounds) {

  /** In the place of a round's number: the last round of a piece, whichever that is. */
  public static final int BORDER = 0;

  /** All rounds of all pieces. */
  public static final Where EVERYWHERE = new Where(List.of("all"), List.of());

  /** The border of all pieces. */
  public static final Where BORDERS = new Where(List.of("all"), List.of(BORDER));

  /**
   * Copies the lists.
   *
   * @param at names of pieces or of groups of pieces, at least one
   * @param rounds numbers of rounds from 1 at the centre, or {@link #BORDER}; empty: all rounds
   */
  public Where {
    Nulls.refuse("at rounds", at, rounds);
    at = List.copyOf(at);
    rounds = List.copyOf(rounds);
  }

  /**
   * {@return whether it speaks of a round}
   *
   * @param round from 0 at the centre
   * @param roundCount rounds of the piece
   */
  public boolean covers(int round, int roundCount) {
    return rounds.isEmpty()
        || rounds.contains(round + 1)
        || round == roundCount - 1 && rounds.contains(BORDER);
  }
}
