package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * Most rounds that can stay as they were: those free to change whose earlier yarn is still allowed
 * there.
 */
final class KeepCap {

  private KeepCap() {}

  /** The part of the rounds free to change, 0 to 1, that can be kept at most. */
  static double of(Blanket blanket, Sequences earlier) {
    int free = 0;
    int kept = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.free(piece, round)) {
          int yarn = earlier.yarn(piece, round);
          free++;
          kept +=
              yarn != Sequences.OPEN
                      && blanket.toneAllows(blanket.kind(piece), round, yarn)
                      && !blanket.banned(piece, yarn)
                  ? 1
                  : 0;
        }
      }
    }
    return free == 0 ? 1 : (double) kept / free;
  }
}
