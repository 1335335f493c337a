package lozengy.model.progress;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Brief;
import lozengy.model.brief.NoteParts;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Place;

/** Locks pieces as they are planned, and frees them. */
final class Locks {

  private Locks() {}

  /**
   * Notes that hold planned pieces as they are planned; none for a piece that holds all of it
   * already.
   *
   * @throws InputException if a piece is not there, or there is no plan for it yet
   */
  static List<PieceNote> asPlanned(CurrentPlan current, Change.Lock lock) {
    Blanket blanket = Blanket.ofUnjudged(current.brief());
    List<PieceNote> notes = new ArrayList<>();
    for (Place place : Selections.pieces(lock.place(), blanket.layout(), lock.at())) {
      if (blanket.state(place.index()) != PieceState.PLANNED) {
        continue;
      }
      Sequences planned =
          current
              .sequences()
              .orElseThrow(
                  () ->
                      Selections.wrong(
                          lock.place(),
                          MistakeCode.ROUND_OPEN.about(place.name()),
                          "There is no plan yet that " + place.name() + " could keep to",
                          "Name its yarns, such as " + place.name() + "=REE,~,MUD"));
      List<Optional<String>> codes = new ArrayList<>();
      boolean all = true;
      for (int round = 0; round < planned.rounds(place.index()); round++) {
        int yarn = planned.yarn(place.index(), round);
        all &= yarn != Sequences.OPEN && yarn == blanket.locked(place.index(), round);
        codes.add(
            yarn == Sequences.OPEN ? Optional.empty() : Optional.of(blanket.yarn(yarn).code()));
      }
      if (!all) {
        notes.add(new PieceNote(List.of(place.name()), codes, PieceState.PLANNED, Set.of()));
      }
    }
    return notes;
  }

  /**
   * A brief without locks of some pieces.
   *
   * @throws InputException if a piece is not there or is worked, or none of them is locked
   */
  static Brief freed(Brief brief, Change.Free free) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    Set<Place> places = new HashSet<>(Selections.pieces(free.place(), blanket.layout(), free.at()));
    List<Integer> worked =
        places.stream()
            .map(Place::index)
            .filter(piece -> blanket.state(piece) != PieceState.PLANNED)
            .sorted()
            .toList();
    if (!worked.isEmpty()) {
      throw worked(free.place(), blanket, worked);
    }
    if (places.stream().noneMatch(place -> locked(blanket, place.index()))) {
      throw Selections.wrong(
          free.place(),
          MistakeCode.NOTHING_TO_CHANGE.about(),
          "Nothing is locked there",
          "Leave it out, or name other pieces");
    }
    List<PieceNote> notes =
        NoteParts.loosened(
            blanket.layout(),
            brief.pieces(),
            (note, place) -> !note.rounds().isEmpty() && places.contains(place));
    for (Place place : blanket.layout().places()) {
      if (places.contains(place) && blanket.partWorked(place.index())) {
        notes.add(WorkedPieces.partNote(blanket, place.index()));
      }
    }
    return brief.withPieces(notes);
  }

  /** Whether a note locks a round that is still to be worked. */
  private static boolean locked(Blanket blanket, int piece) {
    return IntStream.range(blanket.roundsWorked(piece), blanket.roundCount(piece))
        .anyMatch(round -> blanket.stated(piece, round) != Sequences.OPEN);
  }

  /**
   * Tells of bans that keep no yarn out of anything, since all of their pieces are worked.
   *
   * @param blanket what is asked for with all changes
   * @throws InputException if there are any
   */
  static void tellIdle(Blanket blanket, List<Change> changes) {
    List<Mistake> mistakes = new ArrayList<>();
    for (Change change : changes) {
      if (change instanceof Change.Hold hold && hold.note().rounds().isEmpty()) {
        List<Integer> pieces =
            blanket.layout().select(hold.note().at()).stream().map(Place::index).sorted().toList();
        if (pieces.stream().allMatch(piece -> blanket.state(piece) != PieceState.PLANNED)) {
          mistakes.addAll(worked(hold.place(), blanket, pieces).mistakes());
        }
      }
    }
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }

  private static InputException worked(String wish, Blanket blanket, List<Integer> worked) {
    return Selections.wrong(
        wish,
        MistakeCode.ALREADY_WORKED.about(
            worked.stream().map(piece -> blanket.place(piece).name()).toList()),
        Words.pieces(blanket, worked) + (worked.size() == 1 ? " is" : " are") + " worked already",
        "Mark pieces planned to work them anew");
  }
}
