package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/** Every round has a yarn. O(pieces x rounds). */
public final class CompleteRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.COMPLETE;
  }

  /** Every round has one yarn in all that plans a blanket, without any line to leave out. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    return List.of();
  }

  @Override
  public boolean judgesLocks() {
    return false;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      List<Integer> open = sequences.openRounds(piece);
      if (!open.isEmpty()) {
        faults.add(new Fault(id(), List.of(piece), open, List.of()));
      }
    }
    return faults;
  }
}
