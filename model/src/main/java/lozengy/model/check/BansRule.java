package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceNote;
import lozengy.model.input.BriefPath;

/**
 * Yarns that are banned from a piece stay out of it, and those that are gone out of all. Finds no
 * fault with a made or joined piece, nor with one from the pile. O(pieces x rounds).
 */
public final class BansRule implements Rule {

  private static final String ALL = "all";

  @Override
  public RuleId id() {
    return RuleId.BANS;
  }

  /** One line for each note and name in it, and one for each yarn that is gone. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<PieceNote> notes = blanket.brief().pieces();
    for (int i = 0; i < notes.size(); i++) {
      PieceNote note = notes.get(i);
      for (String name : note.not().isEmpty() ? List.<String>of() : note.at()) {
        int[] rounds = PlannedRounds.of(blanket, List.of(name), (round, count) -> true);
        if (rounds.length > 0) {
          boolean one = blanket.layout().find(name).isPresent();
          Subject subject = new Subject.Ban(name, one, List.copyOf(note.not()));
          BriefPath path = BriefPath.of("pieces").item(i).field("not").part(name);
          Ground others =
              new Ground.May(
                  rounds,
                  Yarns.of(blanket, yarn -> !note.not().contains(blanket.yarn(yarn).code())),
                  false);
          lines.add(new BriefLine(id(), path, subject, List.of(others)));
        }
      }
    }
    int[] all = PlannedRounds.of(blanket, List.of(ALL), (round, count) -> true);
    for (int gone = 0; gone < blanket.yarnCount(); gone++) {
      if (blanket.yarn(gone).gone() && all.length > 0) {
        int yarn = gone;
        Ground others = new Ground.May(all, Yarns.of(blanket, other -> other != yarn), false);
        BriefPath path = BriefPath.of("yarns").item(yarn).field("gone");
        lines.add(new BriefLine(id(), path, new Subject.Gone(yarn), List.of(others)));
      }
    }
    return lines;
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or lift the ban";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    return BarredRounds.faults(
        id(), blanket, sequences, (piece, round, yarn) -> blanket.banned(piece, yarn));
  }
}
