package lozengy.model.yarn;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;

/**
 * What is left over because a round goes on in the yarn of the one before it, without a cut. Totals
 * count every round as cut: whether it is shows only in an arrangement.
 */
public final class UncutRounds {

  private UncutRounds() {}

  /**
   * What rounds that are still to be worked take less than their totals say; O(rounds).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @return by yarn, the length in mm, 0 or more
   */
  public static long[] savedMillimetres(Blanket blanket, Sequences sequences) {
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    return saved(blanket, sequences, (piece, round, yarn) -> round >= laid.roundsWorked(piece));
  }

  /**
   * What rounds take less than their totals say that were worked since the stock of their yarn was
   * told; O(rounds).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @return by yarn, the length in mm, 0 or more
   */
  public static long[] savedSinceTold(Blanket blanket, Sequences sequences) {
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    return saved(
        blanket,
        sequences,
        (piece, round, yarn) ->
            round < laid.roundsWorked(piece)
                && (laid.holds(piece)
                    ? blanket.yarn(yarn).counted().isEmpty()
                    : round >= blanket.fixedUse().settledRounds(yarn, piece)));
  }

  private interface Counts {
    boolean counts(int piece, int round, int yarn);
  }

  private static long[] saved(Blanket blanket, Sequences sequences, Counts which) {
    long[] saved = new long[blanket.yarnCount()];
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN
            && yarn == sequences.yarn(piece, round - 1)
            && which.counts(piece, round, yarn)) {
          saved[yarn] += blanket.motifs().uncutMillimetres(blanket.kind(piece), round);
        }
      }
    }
    return saved;
  }
}
