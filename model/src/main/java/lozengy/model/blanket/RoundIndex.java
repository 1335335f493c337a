package lozengy.model.blanket;

import java.util.function.IntUnaryOperator;

/**
 * All rounds of all pieces of a blanket numbered through, piece by piece, from the centre of each:
 * a number for a round that is free of its piece. Immutable; O(rounds) memory.
 */
public final class RoundIndex {

  private final int[] start;
  private final int[] pieceOf;

  /**
   * Numbers the rounds.
   *
   * @param pieces how many pieces
   * @param rounds how many rounds a piece has
   */
  RoundIndex(int pieces, IntUnaryOperator rounds) {
    this.start = new int[pieces + 1];
    for (int piece = 0; piece < pieces; piece++) {
      start[piece + 1] = start[piece] + rounds.applyAsInt(piece);
    }
    this.pieceOf = new int[start[pieces]];
    for (int piece = 0; piece < pieces; piece++) {
      for (int number = start[piece]; number < start[piece + 1]; number++) {
        pieceOf[number] = piece;
      }
    }
  }

  /** {@return how many rounds} */
  public int count() {
    return pieceOf.length;
  }

  /**
   * {@return the number of a round}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int number(int piece, int round) {
    return start[piece] + round;
  }

  /**
   * {@return the number of a piece's centre}
   *
   * @param piece the piece's index, from 0
   */
  public int centre(int piece) {
    return start[piece];
  }

  /**
   * {@return the number of a piece's border}
   *
   * @param piece the piece's index, from 0
   */
  public int border(int piece) {
    return start[piece + 1] - 1;
  }

  /**
   * {@return the piece that a round belongs to}
   *
   * @param number the round's number
   */
  public int piece(int number) {
    return pieceOf[number];
  }

  /**
   * {@return which round of its piece a round is, from 0 at the centre}
   *
   * @param number the round's number
   */
  public int round(int number) {
    return number - start[pieceOf[number]];
  }
}
