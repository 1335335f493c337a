package lozengy.model.arrangement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.NoteParts;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;

/** Notes in a brief what its pieces have become. */
public final class WorkedPieces {

  private final Blanket before;
  private final Stages stages;
  private final Sequences sequences;
  private final boolean[] changed;

  /** By piece, codes of locks that a note goes with, though nothing is worked of their rounds. */
  private final Map<Integer, List<Optional<String>>> keptLocks = new HashMap<>();

  private WorkedPieces(Blanket before, Stages stages, Sequences sequences) {
    this.before = before;
    this.stages = stages;
    this.sequences = sequences;
    this.changed = new boolean[stages.pieces()];
  }

  /**
   * The brief of a blanket with its notes brought up to how far its pieces have come: every worked
   * round is noted with its yarn, and what is not worked is no longer noted as worked. What else
   * the notes say stays: bans always, locks where they do not contradict what was worked. O(pieces
   * x rounds + what the notes say).
   *
   * @param before the blanket before
   * @param stages how far its pieces have come now
   * @param sequences yarns of the pieces; worked rounds must not be open
   * @return the blanket's own brief where nothing has changed
   * @throws IllegalArgumentException if a worked round is open
   */
  public static Brief noted(Blanket before, Stages stages, Sequences sequences) {
    return new WorkedPieces(before, stages, sequences).noted();
  }

  /**
   * {@return a note of nothing but what is worked of a piece in part}
   *
   * @param blanket the blanket
   * @param piece the index of a piece of which some rounds are worked, not all
   */
  public static PieceNote partNote(Blanket blanket, int piece) {
    List<Optional<String>> codes = new ArrayList<>();
    for (int round = 0; round < blanket.roundCount(piece); round++) {
      boolean worked = blanket.worked(piece, round);
      codes.add(
          worked
              ? Optional.of(blanket.yarn(blanket.locked(piece, round)).code())
              : Optional.empty());
    }
    return new PieceNote(
        List.of(blanket.place(piece).name()),
        codes,
        false,
        PieceState.PLANNED,
        blanket.roundsWorked(piece),
        Set.of());
  }

  private Brief noted() {
    boolean any = false;
    for (int piece = 0; piece < changed.length; piece++) {
      changed[piece] = differs(piece);
      any |= changed[piece];
    }
    if (!any) {
      return before.brief();
    }
    List<PieceNote> notes =
        NoteParts.loosened(
            before.layout(), before.brief().pieces(), (note, place) -> !holds(note, place.index()));
    for (int piece = 0; piece < changed.length; piece++) {
      if (changed[piece] && (stages.roundsWorked(piece) > 0 || keptLocks.containsKey(piece))) {
        notes.add(worked(piece));
      }
    }
    return before.brief().withPieces(notes);
  }

  private boolean differs(int piece) {
    if (stages.state(piece) != before.state(piece)
        || stages.roundsWorked(piece) != before.roundsWorked(piece)) {
      return true;
    }
    boolean differs = false;
    for (int round = 0; round < stages.roundsWorked(piece); round++) {
      differs |= sequences.yarn(piece, round) != before.locked(piece, round);
    }
    return differs;
  }

  private boolean holds(PieceNote note, int piece) {
    if (!changed[piece]) {
      return true;
    }
    boolean agrees = !note.anyWorked();
    List<Optional<String>> codes = note.codes(sequences.rounds(piece));
    for (int round = 0; round < stages.roundsWorked(piece); round++) {
      Optional<String> code = codes.get(round);
      agrees &= code.isEmpty() || before.yarnIndex(code.get()) == sequences.yarn(piece, round);
    }
    if (!agrees) {
      keepLocks(piece, codes);
    }
    return agrees;
  }

  /** Locks of rounds that nothing was worked of, before or now, outlast the note they stand in. */
  private void keepLocks(int piece, List<Optional<String>> codes) {
    int from = Math.max(before.roundsWorked(piece), stages.roundsWorked(piece));
    for (int round = from; round < codes.size(); round++) {
      if (codes.get(round).isPresent()) {
        keptLocks.computeIfAbsent(piece, p -> open(codes.size())).set(round, codes.get(round));
      }
    }
  }

  private static List<Optional<String>> open(int rounds) {
    List<Optional<String>> codes = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      codes.add(Optional.empty());
    }
    return codes;
  }

  private PieceNote worked(int piece) {
    int worked = stages.roundsWorked(piece);
    List<Optional<String>> codes =
        keptLocks.containsKey(piece) ? keptLocks.get(piece) : open(sequences.rounds(piece));
    for (int round = 0; round < worked; round++) {
      int yarn = sequences.yarn(piece, round);
      if (yarn == Sequences.OPEN) {
        throw new IllegalArgumentException(
            "a round of " + before.place(piece).name() + " is open, though it is worked");
      }
      codes.set(round, Optional.of(before.yarn(yarn).code()));
    }
    PieceState state = stages.state(piece);
    return new PieceNote(
        List.of(before.place(piece).name()),
        codes,
        false,
        state,
        state == PieceState.PLANNED ? worked : 0,
        Set.of());
  }
}
