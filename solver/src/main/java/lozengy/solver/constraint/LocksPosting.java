package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceNote;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Place;

/** Rounds hold what is locked or worked: one line for each note and piece. */
final class LocksPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.LOCKS;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<PieceNote> notes = blanket.brief().pieces();
    for (int i = 0; i < notes.size(); i++) {
      if (notes.get(i).rounds().stream().anyMatch(code -> code.isPresent())) {
        for (Place place : blanket.layout().select(notes.get(i).at())) {
          lines.add(
              line(
                  blanket, BriefPath.of("pieces").item(i).part(place.name()), notes.get(i), place));
        }
      }
    }
    return lines;
  }

  private static BriefLine line(Blanket blanket, BriefPath path, PieceNote note, Place place) {
    int piece = place.index();
    List<Optional<String>> codes = note.codes(blanket.roundCount(piece));
    int[] locks = new int[blanket.roundCount(piece)];
    List<Subject.Held> held = new ArrayList<>();
    for (int round = 0; round < locks.length; round++) {
      boolean named = codes.get(round).isPresent();
      // of two notes on one round the later one counts, and that is what the blanket says
      locks[round] = named ? blanket.locked(piece, round) : Sequences.OPEN;
      if (named) {
        held.add(new Subject.Held(round, locks[round]));
      }
    }
    Subject subject = new Subject.Lock(piece, blanket.state(piece), held);
    return new BriefLine(RuleId.LOCKS, path, subject, new Lock(piece, locks));
  }

  private record Lock(int piece, int[] yarns) implements BriefLine.Content {
    @Override
    public void restrict(Domains domains) {
      for (int round = 0; round < yarns.length; round++) {
        if (yarns[round] != Sequences.OPEN) {
          domains.keepOnly(piece, round, yarns[round]);
        }
      }
    }
  }
}
