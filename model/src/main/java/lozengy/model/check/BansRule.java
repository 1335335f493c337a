package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Laid;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/**
 * Yarns that are banned from a piece stay out of it. Finds no fault with a made or joined piece,
 * nor with one from the pile. O(pieces x rounds).
 */
public final class BansRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.BANS;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    Laid laid = Laid.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      if (!laid.toWork(piece)) {
        continue;
      }
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN && blanket.banned(piece, yarn)) {
          faults.add(new Fault(id(), List.of(piece), List.of(round), List.of(yarn)));
        }
      }
    }
    return faults;
  }
}
