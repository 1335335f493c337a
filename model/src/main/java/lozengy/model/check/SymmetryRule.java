package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.PieceState;

/**
 * Pieces that the symmetry makes each other's images have the same yarns. Finds no fault between
 * pieces that are all worked. O(pieces x rounds).
 */
public final class SymmetryRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.SYMMETRY;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    if (!blanket.orbits().any()) {
      return faults;
    }
    for (int lead : blanket.orbits().leads()) {
      if (blanket.state(lead) != PieceState.PLANNED) {
        continue;
      }
      for (int round = 0; round < sequences.rounds(lead); round++) {
        int known = -1;
        for (int piece : blanket.orbits().members(lead)) {
          int yarn = sequences.yarn(piece, round);
          if (yarn == Sequences.OPEN) {
            continue;
          }
          if (known < 0) {
            known = piece;
          } else if (yarn != sequences.yarn(known, round)) {
            faults.add(
                new Fault(
                    id(),
                    List.of(known, piece),
                    List.of(round),
                    List.of(sequences.yarn(known, round), yarn)));
          }
        }
      }
    }
    return faults;
  }
}
