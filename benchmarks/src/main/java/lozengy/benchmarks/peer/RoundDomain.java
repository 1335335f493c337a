package lozengy.benchmarks.peer;

import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;

/**
 * The yarns that a round may take by itself: of a planned piece by its lock, tones and bans, of a
 * worked one those it has.
 */
final class RoundDomain {

  private RoundDomain() {}

  /** The yarns, ascending; of a locked round the locked one alone, or none if it may not be. */
  static int[] of(Blanket blanket, int piece, int round) {
    int locked = blanket.locked(piece, round);
    if (blanket.state(piece) != PieceState.PLANNED) {
      return new int[] {locked};
    }
    if (locked != Sequences.OPEN && !allowed(blanket, piece, round, locked)) {
      return new int[0];
    }
    if (locked != Sequences.OPEN) {
      return new int[] {locked};
    }
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> allowed(blanket, piece, round, yarn))
        .toArray();
  }

  private static boolean allowed(Blanket blanket, int piece, int round, int yarn) {
    return blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)
        && !blanket.banned(piece, yarn);
  }
}
