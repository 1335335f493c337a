package lozengy.model.brief;

import java.util.List;
import lozengy.model.input.Words;

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

  /** {@return the pieces in words, such as {@code all pieces} or {@code row1, top-left}} */
  public String atWords() {
    return String.join(
        ", ", at.stream().map(name -> name.equals("all") ? "all pieces" : name).toList());
  }

  /** {@return one of the rounds in words, such as {@code the border} or {@code round 1 or 2}} */
  public String someRoundWords() {
    return rounds.isEmpty() ? "some round" : roundsWords(" or ");
  }

  /** {@return the rounds in words, such as {@code the border} or {@code rounds 1 and 2}} */
  public String roundsWords() {
    return rounds.isEmpty() ? "all rounds" : roundsWords(" and ");
  }

  private String roundsWords(String and) {
    if (rounds.equals(List.of(BORDER))) {
      return "the border";
    }
    List<String> words = rounds.stream().map(r -> r == BORDER ? "the border" : "" + r).toList();
    return Words.plural(words.size(), "round") + " " + String.join(and, words);
  }
}
