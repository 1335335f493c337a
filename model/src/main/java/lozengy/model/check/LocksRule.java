package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/**
 * Rounds hold what is locked or worked; what follows from the look is the business of {@link
 * BordersRule} and {@link SymmetryRule}. O(pieces x rounds).
 */
public final class LocksRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.LOCKS;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        int locked = blanket.stated(piece, round);
        if (yarn != Sequences.OPEN && locked != Sequences.OPEN && yarn != locked) {
          faults.add(
              new Fault(id(), List.of(piece), List.of(round), List.of(yarn, locked)));
        }
      }
    }
    return faults;
  }
}
