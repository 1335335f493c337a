package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.PieceNote;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Place;

/**
 * Rounds hold what is locked or worked; what follows from the look is the business of {@link
 * BordersRule} and {@link SymmetryRule}. O(pieces x rounds).
 */
public final class LocksRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.LOCKS;
  }

  /** One line for each note and piece. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<PieceNote> notes = blanket.brief().pieces();
    for (int i = 0; i < notes.size(); i++) {
      if (notes.get(i).rounds().stream().anyMatch(Optional::isPresent)) {
        for (Place place : blanket.layout().select(notes.get(i).at())) {
          lines.add(
              line(
                  blanket, BriefPath.of("pieces").item(i).part(place.name()), notes.get(i), place));
        }
      }
    }
    return lines;
  }

  private BriefLine line(Blanket blanket, BriefPath path, PieceNote note, Place place) {
    int piece = place.index();
    List<Optional<String>> codes = note.codes(blanket.roundCount(piece));
    List<Ground> locks = new ArrayList<>();
    List<Subject.Held> held = new ArrayList<>();
    for (int round = 0; round < codes.size(); round++) {
      if (codes.get(round).isPresent()) {
        // of two notes on one round the later one counts, and that is what the blanket says
        int yarn = blanket.locked(piece, round);
        int[] number = {blanket.index().number(piece, round)};
        locks.add(new Ground.May(number, Yarns.only(yarn), true));
        held.add(new Subject.Held(round, yarn));
      }
    }
    Subject subject =
        new Subject.Lock(piece, blanket.state(piece), blanket.roundsWorked(piece), held);
    return new BriefLine(id(), path, subject, locks);
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
          faults.add(new Fault(id(), List.of(piece), List.of(round), List.of(yarn, locked)));
        }
      }
    }
    return faults;
  }
}
