package lozengy.model.score;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * Keep: how much of an earlier arrangement stands, 100 x unchanged rounds / rounds free to change
 * that had a yarn before; 100 where there is none. O(pieces x rounds).
 */
final class Keep {

  private Keep() {}

  /** How many rounds count: those free to change that had a yarn before. */
  static int counted(Blanket blanket, Sequences earlier) {
    int counted = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        counted += counts(blanket, earlier, piece, round) ? 1 : 0;
      }
    }
    return counted;
  }

  private static boolean counts(Blanket blanket, Sequences earlier, int piece, int round) {
    return blanket.free(piece, round) && earlier.yarn(piece, round) != Sequences.OPEN;
  }

  /** The figure, 0 to 100. */
  static double figure(Blanket blanket, Sequences sequences, Sequences earlier) {
    int free = counted(blanket, earlier);
    int kept = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (counts(blanket, earlier, piece, round)) {
          kept += sequences.yarn(piece, round) == earlier.yarn(piece, round) ? 1 : 0;
        }
      }
    }
    return free == 0 ? 100 : 100.0 * kept / free;
  }
}
