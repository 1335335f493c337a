package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Pairs;

/**
 * Yarns that are kept apart do not meet as borders on a seam. Finds no fault between two joined
 * pieces. O(pieces x rounds + seams).
 */
public final class ApartRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.APART;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    if (blanket.brief().look().apart().isEmpty()) {
      return faults;
    }
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int yarn = sequences.border(first);
      int other = sequences.border(second);
      boolean known = yarn != Sequences.OPEN && other != Sequences.OPEN;
      boolean joined =
          blanket.state(first) == PieceState.JOINED && blanket.state(second) == PieceState.JOINED;
      if (known && !joined && blanket.look().apart(yarn, other)) {
        faults.add(
            new Fault(id(), List.of(first, second), List.of(), List.of(yarn, other)));
      }
    }
    return faults;
  }
}
