package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Place;

/** Banned yarns stay out of planned pieces: one line for each note and piece. */
final class BansPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.BANS;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<PieceNote> notes = blanket.brief().pieces();
    for (int i = 0; i < notes.size(); i++) {
      PieceNote note = notes.get(i);
      for (String name : note.not().isEmpty() ? List.<String>of() : note.at()) {
        int[] pieces =
            blanket.layout().select(name).stream()
                .mapToInt(Place::index)
                .filter(piece -> blanket.state(piece) == PieceState.PLANNED)
                .toArray();
        if (pieces.length > 0) {
          int[] yarns = note.not().stream().mapToInt(blanket::yarnIndex).toArray();
          boolean one = blanket.layout().find(name).isPresent();
          Subject subject = new Subject.Ban(name, one, List.copyOf(note.not()));
          BriefPath path = BriefPath.of("pieces").item(i).field("not").part(name);
          lines.add(new BriefLine(RuleId.BANS, path, subject, new Ban(pieces, yarns)));
        }
      }
    }
    return lines;
  }

  private record Ban(int[] pieces, int[] yarns) implements BriefLine.Content {
    @Override
    public void restrict(Domains domains) {
      for (int piece : pieces) {
        for (int round = 0; round < domains.rounds(piece); round++) {
          for (int yarn : yarns) {
            domains.remove(piece, round, yarn);
          }
        }
      }
    }
  }
}
