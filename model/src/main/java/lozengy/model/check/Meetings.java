package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Pairs;

/**
 * Finds where two yarns meet that must not, as faults of a rule. Finds none between two joined
 * pieces, nor within a finished one.
 */
final class Meetings {

  private final RuleId rule;
  private final Blanket blanket;
  private final Sequences sequences;

  Meetings(RuleId rule, Blanket blanket, Sequences sequences) {
    this.rule = rule;
    this.blanket = blanket;
    this.sequences = sequences;
  }

  /** Whether two yarns must not meet; asked one way round. */
  @FunctionalInterface
  interface Barred {

    /** Whether they must not. */
    boolean test(int yarn, int other);

    /** Whether they are both there and must not. */
    private boolean meet(int yarn, int other) {
      return yarn != Sequences.OPEN && other != Sequences.OPEN && test(yarn, other);
    }
  }

  /** Borders on a seam. O(seams). */
  List<Fault> onSeams(Barred barred) {
    List<Fault> faults = new ArrayList<>();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int yarn = sequences.border(first);
      int other = sequences.border(second);
      if (barred.meet(yarn, other) && !RoundPairs.bothJoined(blanket, first, second)) {
        faults.add(new Fault(rule, List.of(first, second), List.of(), List.of(yarn, other)));
      }
    }
    return faults;
  }

  /** Rounds side by side in a piece. O(pieces x rounds). */
  List<Fault> withinPieces(Barred barred) {
    List<Fault> faults = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round - 1);
        int other = sequences.yarn(piece, round);
        if (barred.meet(yarn, other) && laid.toWork(piece, round)) {
          List<Integer> rounds = List.of(round - 1, round);
          faults.add(new Fault(rule, List.of(piece), rounds, List.of(yarn, other)));
        }
      }
    }
    return faults;
  }
}
