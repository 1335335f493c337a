package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * Most rounds that can stay as they were: of those free to change that had a yarn before, those
 * whose earlier yarn is still allowed there.
 */
final class KeepCap {

  private KeepCap() {}

  /** The part of these rounds, 0 to 1, that can be kept at most. */
  static double of(Blanket blanket, Sequences earlier) {
    int free = 0;
    int kept = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = earlier.yarn(piece, round);
        if (blanket.free(piece, round) && yarn != Sequences.OPEN) {
          free++;
          kept += blanket.mayTake(piece, round, yarn) ? 1 : 0;
        }
      }
    }
    return free == 0 ? 1 : (double) kept / free;
  }
}
