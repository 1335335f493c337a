package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.NoteParts;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Layout;

/** Frees a locked piece, lifts a ban, or has a finished piece worked anew. */
final class NoteRelaxing implements Relaxing {

  private static final int FREE_UPSET = 2;
  private static final int LIFT_UPSET = 2;
  private static final int MADE_UPSET = 8;
  private static final int JOINED_UPSET = 14;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    boolean note = line.rule() == RuleId.LOCKS || line.rule() == RuleId.BANS;
    if (!note || !line.path().inItem("pieces")) {
      return List.of();
    }
    int index = Relaxing.index(line);
    String name = line.path().part().orElseThrow();
    return List.of(
        Ladder.of(
            line.rule() == RuleId.BANS
                ? lifted(blanket, index, name)
                : freed(blanket, index, name)));
  }

  private static Move freed(Blanket blanket, int index, String name) {
    int piece = blanket.layout().find(name).orElseThrow().index();
    PieceState state = blanket.state(piece);
    boolean whole = whole(blanket, index, name);
    boolean bans = !blanket.brief().pieces().get(index).not().isEmpty();
    PieceNote note = blanket.brief().pieces().get(index);
    boolean planned = state == PieceState.PLANNED && (note.roundsWorked() == 0 || locks(note));
    Relaxation change =
        planned
            ? new Relaxation.FreePieces(List.of(piece), whole, bans)
            : new Relaxation.WorkAnew(piece, state, whole, bans);
    int workedUpset = state == PieceState.JOINED ? JOINED_UPSET : MADE_UPSET;
    return new Move(
        new Remedy.Step(change, BriefPath.of("pieces").item(index), Optional.empty()),
        planned ? FREE_UPSET : workedUpset,
        brief -> free(brief, index, name));
  }

  private static Move lifted(Blanket blanket, int index, String name) {
    PieceNote note = blanket.brief().pieces().get(index);
    boolean whole = note.at().equals(List.of(name));
    Relaxation change = new Relaxation.LiftBan(List.copyOf(note.not()), name, whole);
    BriefPath path = BriefPath.of("pieces").item(index).field("not");
    return new Move(
        new Remedy.Step(change, path, Optional.empty()),
        LIFT_UPSET,
        brief -> lift(brief, index, name));
  }

  private static boolean whole(Blanket blanket, int index, String name) {
    return blanket.layout().select(blanket.brief().pieces().get(index).at()).stream()
        .allMatch(place -> place.name().equals(name));
  }

  /** The brief with nothing held in a piece by a note; the note keeps its place. */
  private static Brief free(Brief brief, int index, String name) {
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    PieceNote note = notes.get(index);
    Layout layout = Layout.of(brief.layout());
    NoteParts parts = NoteParts.of(layout, note, place -> place.name().equals(name));
    // what is locked goes before what is worked
    List<Optional<String>> worked =
        note.roundsWorked() > 0 && locks(note) ? workedRounds(note) : List.of();
    PieceNote bare =
        new PieceNote(
            parts.chosen(),
            worked,
            false,
            PieceState.PLANNED,
            worked.isEmpty() ? 0 : note.roundsWorked(),
            note.not());
    if (parts.others().isEmpty()) {
      notes.set(index, bare);
    } else {
      notes.set(index, note.of(parts.others()));
      if (worked.isEmpty()) {
        bare.bansOnly().ifPresent(notes::add);
      } else {
        notes.add(bare);
      }
    }
    return brief.withPieces(notes);
  }

  /** Whether a note of worked rounds locks others too. */
  private static boolean locks(PieceNote note) {
    return !workedRounds(note).equals(note.rounds());
  }

  private static List<Optional<String>> workedRounds(PieceNote note) {
    List<Optional<String>> rounds = new ArrayList<>(note.rounds());
    for (int round = note.roundsWorked(); round < rounds.size(); round++) {
      rounds.set(round, Optional.empty());
    }
    return rounds;
  }

  /** The brief without a note's bans in one of its selectors; the note keeps its place. */
  private static Brief lift(Brief brief, int index, String selector) {
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    PieceNote note = notes.get(index);
    Set<String> others = new LinkedHashSet<>(note.at());
    others.remove(selector);
    PieceNote lifted =
        new PieceNote(
            List.of(selector),
            note.rounds(),
            note.fromBorder(),
            note.state(),
            note.roundsWorked(),
            Set.of());
    if (others.isEmpty()) {
      notes.set(index, lifted);
    } else {
      notes.set(index, note.of(List.copyOf(others)));
      notes.add(lifted);
    }
    return brief.withPieces(notes);
  }
}
