package lozengy.report.chart;

import java.util.LinkedHashSet;
import java.util.Set;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Sequences;

/** Which pieces a plan has changed against the one before. */
final class ChangedPieces {

  private ChangedPieces() {}

  /** Those with a round in another yarn than the plan before had there; empty if there was none. */
  static Set<Integer> since(Arrangement arrangement) {
    Set<Integer> changed = new LinkedHashSet<>();
    arrangement.earlier().ifPresent(earlier -> add(changed, earlier, arrangement.sequences()));
    return changed;
  }

  private static void add(Set<Integer> changed, Sequences earlier, Sequences now) {
    for (int piece = 0; piece < now.pieces(); piece++) {
      for (int round = 0; round < now.rounds(piece); round++) {
        int before = earlier.yarn(piece, round);
        if (before != Sequences.OPEN && before != now.yarn(piece, round)) {
          changed.add(piece);
        }
      }
    }
  }
}
