package lozengy.model.brief;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.input.Nulls;

/**
 * What a brief says of single pieces or groups of them.
 *
 * @param at selectors of the pieces, as written, at least one; see {@link
 *     lozengy.model.layout.Layout#select}
 * @param rounds yarn codes to hold, an empty entry leaves a round open; an empty list holds nothing
 * @param fromBorder whether the last of {@code rounds} is the border's and rounds before the first
 *     are left open, so that the note fits pieces with different numbers of rounds; if not, the
 *     first is the centre's and there are as many as the pieces have
 * @param state how far the pieces have come
 * @param roundsWorked of planned pieces, how many rounds are worked already, from the centre; one
 *     with all its rounds worked is made. 0 of made and joined ones, which need no number
 * @param not codes of yarns that these pieces may not take
 */
public record PieceNote(
    List<String> at,
    List<Optional<String>> rounds,
    boolean fromBorder,
    PieceState state,
    int roundsWorked,
    Set<String> not) {

  /** What stands before the first round in a file where rounds are counted from the border. */
  static final String ROUNDS_BEFORE = "..";

  /**
   * Copies the collections.
   *
   * @param at selectors of the pieces, as written, at least one; see {@link
   *     lozengy.model.layout.Layout#select}
   * @param rounds yarn codes to hold, an empty entry leaves a round open; an empty list holds
   *     nothing
   * @param fromBorder whether the last of {@code rounds} is the border's and rounds before the
   *     first are left open, so that the note fits pieces with different numbers of rounds; if not,
   *     the first is the centre's and there are as many as the pieces have
   * @param state how far the pieces have come
   * @param roundsWorked of planned pieces, how many rounds are worked already, from the centre; one
   *     with all its rounds worked is made. 0 of made and joined ones, which need no number
   * @param not codes of yarns that these pieces may not take
   */
  public PieceNote {
    Nulls.refuse("at rounds state not", at, rounds, state, not);
    at = List.copyOf(at);
    rounds = List.copyOf(rounds);
    not = Collections.unmodifiableSet(new LinkedHashSet<>(not));
    if (at.isEmpty()) {
      throw new IllegalArgumentException("a note needs the name of at least one piece");
    }
    if (roundsWorked < 0 || roundsWorked > 0 && state != PieceState.PLANNED) {
      throw new IllegalArgumentException(roundsWorked + " rounds worked, " + state.word());
    }
  }

  /**
   * A note whose rounds begin at the centre.
   *
   * @param at selectors of the pieces, as written, at least one; see {@link
   *     lozengy.model.layout.Layout#select}
   * @param rounds yarn codes to hold, an empty entry leaves a round open; an empty list holds
   *     nothing
   * @param state how far the pieces have come
   * @param not codes of yarns that these pieces may not take
   */
  public PieceNote(
      List<String> at, List<Optional<String>> rounds, PieceState state, Set<String> not) {
    this(at, rounds, false, state, 0, not);
  }

  /**
   * {@return the same said of other pieces}
   *
   * @param others names and groups of pieces
   */
  public PieceNote of(List<String> others) {
    return new PieceNote(others, rounds, fromBorder, state, roundsWorked, not);
  }

  /**
   * {@return what is left of this note where its pieces are no longer held or worked; may be
   * nothing}
   */
  public Optional<PieceNote> bansOnly() {
    return not.isEmpty()
        ? Optional.empty()
        : Optional.of(new PieceNote(at, List.of(), PieceState.PLANNED, not));
  }

  /** {@return whether something has been worked of its pieces} */
  public boolean anyWorked() {
    return state != PieceState.PLANNED || roundsWorked > 0;
  }

  /**
   * {@return how far a piece of it has come: made once all its rounds are worked}
   *
   * @param roundCount how many rounds the piece has
   */
  public PieceState state(int roundCount) {
    return roundsWorked > 0 && roundsWorked >= roundCount ? PieceState.MADE : state;
  }

  /**
   * {@return how many rounds of a piece of it are worked, from the centre}
   *
   * @param roundCount how many rounds the piece has
   */
  public int roundsWorked(int roundCount) {
    return state(roundCount) == PieceState.PLANNED ? roundsWorked : roundCount;
  }

  /** Whether the rounds fit a piece with so many. */
  boolean fits(int roundCount) {
    return fromBorder ? rounds.size() <= roundCount : rounds.size() == roundCount;
  }

  /**
   * {@return the codes held, one for each round of a piece, centre first}
   *
   * @param roundCount how many rounds the piece has
   * @throws IllegalArgumentException if more are given, or without {@code fromBorder} fewer
   */
  public List<Optional<String>> codes(int roundCount) {
    if (rounds.isEmpty()) {
      return Collections.nCopies(roundCount, Optional.empty());
    }
    if (!fits(roundCount)) {
      throw new IllegalArgumentException(
          rounds.size() + " rounds for a piece with " + roundCount + " rounds");
    }
    List<Optional<String>> codes = new ArrayList<>();
    for (int i = rounds.size(); i < roundCount; i++) {
      codes.add(Optional.empty());
    }
    codes.addAll(rounds);
    return codes;
  }
}
