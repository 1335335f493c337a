package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/** Finds rounds still to be worked whose yarn a rule keeps out of them. O(pieces x rounds). */
final class BarredRounds {

  private BarredRounds() {}

  /** Whether a yarn is kept out of a round. */
  @FunctionalInterface
  interface Barred {

    /** Whether it is. */
    boolean test(int piece, int round, int yarn);
  }

  /** A fault of the rule for each, piece by piece; none in a piece that may come from the pile. */
  static List<Fault> faults(RuleId rule, Blanket blanket, Sequences sequences, Barred barred) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      if (!laid.toWork(piece)) {
        continue;
      }
      for (int round = blanket.roundsWorked(piece); round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN && barred.test(piece, round, yarn)) {
          faults.add(new Fault(rule, List.of(piece), List.of(round), List.of(yarn)));
        }
      }
    }
    return faults;
  }
}
