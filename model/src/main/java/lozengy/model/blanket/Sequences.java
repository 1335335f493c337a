package lozengy.model.blanket;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A yarn, or none yet, for every round of every piece. Pieces and rounds are indices from 0, rounds
 * from the centre, and a yarn is its index in the brief or {@link #OPEN}. Mutable, unless {@link
 * #frozen}: what an arrangement hands out is.
 */
public final class Sequences {

  /** No yarn yet. */
  public static final int OPEN = -1;

  private final int[] start;
  private final int[] yarns;
  private final boolean frozen;

  /**
   * Makes sequences that are all open.
   *
   * @param roundCounts rounds of each piece
   */
  public Sequences(int[] roundCounts) {
    start = new int[roundCounts.length + 1];
    for (int piece = 0; piece < roundCounts.length; piece++) {
      start[piece + 1] = start[piece] + roundCounts[piece];
    }
    yarns = new int[start[roundCounts.length]];
    Arrays.fill(yarns, OPEN);
    frozen = false;
  }

  private Sequences(Sequences other, boolean frozen) {
    start = other.start;
    yarns = other.yarns.clone();
    this.frozen = frozen;
  }

  /** {@return a copy that changes on its own} */
  public Sequences copy() {
    return new Sequences(this, false);
  }

  /** {@return the same yarns, which change no more: these sequences if they are so already} */
  public Sequences frozen() {
    return frozen ? this : new Sequences(this, true);
  }

  /** {@return how many pieces} */
  public int pieces() {
    return start.length - 1;
  }

  /**
   * {@return how many rounds a piece has}
   *
   * @param piece the piece's index, from 0
   */
  public int rounds(int piece) {
    return start[piece + 1] - start[piece];
  }

  /**
   * {@return the yarn of a round}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int yarn(int piece, int round) {
    return yarns[start[piece] + round];
  }

  /**
   * Sets the yarn of a round.
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0, or {@link #OPEN}
   * @throws UnsupportedOperationException if they are frozen
   */
  public void set(int piece, int round, int yarn) {
    if (frozen) {
      throw new UnsupportedOperationException(
          "these sequences are frozen; change a copy() of them");
    }
    yarns[start[piece] + round] = yarn;
  }

  /**
   * {@return the yarn of a piece's border}
   *
   * @param piece the piece's index, from 0
   */
  public int border(int piece) {
    return yarns[start[piece + 1] - 1];
  }

  /**
   * {@return the yarns of a piece, centre first, as a copy}
   *
   * @param piece the piece's index, from 0
   */
  public int[] of(int piece) {
    return Arrays.copyOfRange(yarns, start[piece], start[piece + 1]);
  }

  /**
   * {@return the rounds of a piece that are open, from the centre}
   *
   * @param piece the piece's index, from 0
   */
  public List<Integer> openRounds(int piece) {
    return IntStream.range(0, rounds(piece))
        .filter(round -> yarn(piece, round) == OPEN)
        .boxed()
        .toList();
  }

  /** {@return whether no round is open} */
  public boolean complete() {
    for (int yarn : yarns) {
      if (yarn == OPEN) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sequences that
        && Arrays.equals(start, that.start)
        && Arrays.equals(yarns, that.yarns);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(yarns);
  }
}
