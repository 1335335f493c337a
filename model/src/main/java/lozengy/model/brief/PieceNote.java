package lozengy.model.brief;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a brief says of single pieces.
 *
 * @param at names of the pieces, at least one
 * @param rounds yarn codes to hold, centre first, an empty entry leaves a round open; an empty list
 *     holds nothing
 * @param state how far the pieces have come
 * @param not codes of yarns that these pieces may not take
 */
public record PieceNote(
    List<String> at, List<Optional<String>> rounds, PieceState state, Set<String> not) {

  /** Copies the collections. */
  public PieceNote {
    at = List.copyOf(at);
    rounds = List.copyOf(rounds);
    not = Collections.unmodifiableSet(new LinkedHashSet<>(not));
    if (at.isEmpty()) {
      throw new IllegalArgumentException("a note needs the name of at least one piece");
    }
  }
}
