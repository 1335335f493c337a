package lozengy.model.brief;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.input.Nulls;
import lozengy.model.layout.PieceKind;

/**
 * Finished pieces that are alike and have no place yet: they lie on the pile, and may go to any
 * place of their kind.
 *
 * @param kind what they are
 * @param rounds codes of their yarns, centre first, one for each round
 * @param count how many there are, at least 1
 * @param counted codes of the yarns that were counted since they were worked: what they hold of
 *     these no longer counts against what was left then
 * @param out how many of them stay out of the blanket because there are more pieces than places,
 *     from 0 to {@code count}
 */
public record PileEntry(
    PieceKind kind, List<String> rounds, int count, Set<String> counted, int out) {

  /**
   * Copies the collections.
   *
   * @param kind what they are
   * @param rounds codes of their yarns, centre first, one for each round
   * @param count how many there are, at least 1
   * @param counted codes of the yarns that were counted since they were worked: what they hold of
   *     these no longer counts against what was left then
   * @param out how many of them stay out of the blanket, from 0 to {@code count}
   * @throws IllegalArgumentException if there is no piece or no round, or more stay out than there
   *     are
   */
  public PileEntry {
    Nulls.refuse("kind rounds counted", kind, rounds, counted);
    rounds = List.copyOf(rounds);
    counted = Collections.unmodifiableSet(new LinkedHashSet<>(counted));
    if (count < 1 || rounds.isEmpty()) {
      throw new IllegalArgumentException("a pile's entry needs a piece and a round, at least");
    }
    if (out < 0 || out > count) {
      throw new IllegalArgumentException(out + " of " + count + " cannot stay out");
    }
  }

  /**
   * Pieces of which none stays out.
   *
   * @param kind what they are
   * @param rounds codes of their yarns, centre first, one for each round
   * @param count how many there are, at least 1
   * @param counted codes of the yarns that were counted since they were worked
   * @throws IllegalArgumentException if there is no piece or no round
   */
  public PileEntry(PieceKind kind, List<String> rounds, int count, Set<String> counted) {
    this(kind, rounds, count, counted, 0);
  }

  /** {@return how many of them go into the blanket} */
  public int laid() {
    return count - out;
  }

  /**
   * {@return the same with another number of pieces, of which no more stay out than there are}
   *
   * @param other how many pieces
   */
  public PileEntry withCount(int other) {
    return new PileEntry(kind, rounds, other, counted, Math.min(out, other));
  }

  /**
   * {@return the same with another number of pieces that stay out}
   *
   * @param other how many of them stay out, from 0 to {@code count}
   */
  public PileEntry withOut(int other) {
    return new PileEntry(kind, rounds, count, counted, other);
  }

  /**
   * {@return the same with other counted yarns}
   *
   * @param codes yarns' codes
   */
  public PileEntry withCounted(Set<String> codes) {
    return new PileEntry(kind, rounds, count, codes, out);
  }
}
