package lozengy.model.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.NoteParts;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;

/** Notes in a brief what its pieces have become. */
public final class WorkedPieces {

  private final Blanket before;
  private final PieceState[] states;
  private final Sequences sequences;
  private final boolean[] changed;

  private WorkedPieces(Blanket before, PieceState[] states, Sequences sequences) {
    this.before = before;
    this.states = states;
    this.sequences = sequences;
    this.changed = new boolean[states.length];
  }

  /**
   * The brief of a blanket with its notes brought up to new states: every made or joined piece is
   * noted with all its rounds, and a planned piece is no longer noted as worked. What else the
   * notes say stays: bans always, locks where they do not contradict what was worked. O(pieces +
   * what the notes say).
   *
   * @param before the blanket before
   * @param states by piece, how far it has come now
   * @param sequences yarns of the pieces; those of made and joined ones must not be open
   * @return the blanket's own brief where nothing has changed
   * @throws IllegalArgumentException if a round of a made or joined piece is open
   */
  public static Brief noted(Blanket before, PieceState[] states, Sequences sequences) {
    return new WorkedPieces(before, states, sequences).noted();
  }

  private Brief noted() {
    boolean any = false;
    for (int piece = 0; piece < states.length; piece++) {
      changed[piece] = differs(piece);
      any |= changed[piece];
    }
    if (!any) {
      return before.brief();
    }
    List<PieceNote> notes =
        NoteParts.loosened(
            before.layout(), before.brief().pieces(), (note, place) -> !holds(note, place.index()));
    for (int piece = 0; piece < states.length; piece++) {
      if (changed[piece] && states[piece] != PieceState.PLANNED) {
        notes.add(worked(piece));
      }
    }
    return before.brief().withPieces(notes);
  }

  private boolean differs(int piece) {
    if (states[piece] != before.state(piece)) {
      return true;
    }
    boolean differs = false;
    for (int round = 0; round < sequences.rounds(piece); round++) {
      differs |= sequences.yarn(piece, round) != before.locked(piece, round);
    }
    return differs && states[piece] != PieceState.PLANNED;
  }

  private boolean holds(PieceNote note, int piece) {
    if (!changed[piece]) {
      return true;
    }
    boolean agrees = note.state() == PieceState.PLANNED;
    List<Optional<String>> codes = note.codes(sequences.rounds(piece));
    for (int round = 0; round < codes.size(); round++) {
      Optional<String> code = codes.get(round);
      agrees &=
          states[piece] == PieceState.PLANNED
              || code.isEmpty()
              || before.yarnIndex(code.get()) == sequences.yarn(piece, round);
    }
    return agrees;
  }

  private PieceNote worked(int piece) {
    List<Optional<String>> codes = new ArrayList<>();
    for (int yarn : sequences.of(piece)) {
      if (yarn == Sequences.OPEN) {
        throw new IllegalArgumentException(
            "a round of " + before.place(piece).name() + " is open, though it is worked");
      }
      codes.add(Optional.of(before.yarn(yarn).code()));
    }
    return new PieceNote(List.of(before.place(piece).name()), codes, states[piece], Set.of());
  }
}
