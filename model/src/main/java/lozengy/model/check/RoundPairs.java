package lozengy.model.check;

import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Pairs;

/**
 * Pairs of rounds that something holds of, as parallel arrays of numbers of {@link
 * Blanket#index()}. The arrays are shared, for speed: read them only. Lines that speak of the very
 * same pairs share the object.
 *
 * @param first numbers of the first rounds
 * @param second numbers of the second rounds
 */
public record RoundPairs(int[] first, int[] second) {

  /** {@return how many pairs} */
  public int size() {
    return first.length;
  }

  /** The borders on the seams, but for those between exempt pieces. */
  static RoundPairs borders(Blanket blanket, Pairs.Exempt exempt) {
    return onSeams(blanket, exempt, true);
  }

  /** The centres of pieces on a seam, but for those of exempt pieces. */
  static RoundPairs centres(Blanket blanket, Pairs.Exempt exempt) {
    return onSeams(blanket, exempt, false);
  }

  private static RoundPairs onSeams(Blanket blanket, Pairs.Exempt exempt, boolean borders) {
    Pairs kept = blanket.layout().seams().without(exempt);
    return new RoundPairs(
        IntStream.of(kept.first()).map(piece -> end(blanket, piece, borders)).toArray(),
        IntStream.of(kept.second()).map(piece -> end(blanket, piece, borders)).toArray());
  }

  private static int end(Blanket blanket, int piece, boolean border) {
    return border ? blanket.index().border(piece) : blanket.index().centre(piece);
  }

  /**
   * Rounds within each piece, at least one of them still to be worked: what is worked is a fact.
   *
   * @param apart how many rounds lie from the one to the other at most; 1 for neighbours
   */
  static RoundPairs within(Blanket blanket, int apart) {
    IntStream.Builder first = IntStream.builder();
    IntStream.Builder second = IntStream.builder();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int end = blanket.roundCount(piece);
      for (int round = 0; round < end; round++) {
        int open = Math.max(round + 1, blanket.roundsWorked(piece));
        for (int other = open; other < end && other - round <= apart; other++) {
          first.add(blanket.index().number(piece, round));
          second.add(blanket.index().number(piece, other));
        }
      }
    }
    return new RoundPairs(first.build().toArray(), second.build().toArray());
  }

  /** Whether two pieces are both joined, so that what is between them is a fact. */
  static boolean bothJoined(Blanket blanket, int first, int second) {
    return blanket.state(first) == PieceState.JOINED && blanket.state(second) == PieceState.JOINED;
  }
}
