package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntries;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.Place;

/** Marks in an arrangement what has come about: states first, then yarns, then counts. */
public final class Marking {

  private final Blanket before;
  private final Sequences planned;
  private final PieceState[] states;
  private final String[] stateBy;
  private final boolean[] named;
  private final PilePlacement laid;
  private final Sequences sequences;
  private final List<Mistake> mistakes = new ArrayList<>();

  private Marking(Blanket before, Sequences planned) {
    this.before = before;
    this.planned = planned;
    this.states = new PieceState[before.pieceCount()];
    this.stateBy = new String[before.pieceCount()];
    this.named = new boolean[before.pieceCount()];
    this.laid = PilePlacement.of(before, planned);
    for (int piece = 0; piece < states.length; piece++) {
      states[piece] = before.state(piece);
    }
    this.sequences = planned.copy();
  }

  /**
   * Marks.
   *
   * @param before the blanket as it was
   * @param planned the pieces' yarns as they were; a piece that is worked must have all of them
   *     then
   * @param mark what has come about
   * @return the blanket and its yarns with the mark
   * @throws InputException with all mistakes, if the mark names what is not there or contradicts
   *     itself
   */
  public static Marked apply(Blanket before, Sequences planned, Mark mark) {
    return new Marking(before, planned).apply(mark);
  }

  private Marked apply(Mark mark) {
    mark.states().forEach(this::setState);
    mark.worked().forEach(this::setYarns);
    tellOpen();
    throwIfAny();
    List<Integer> fromPile = pieces(piece -> named[piece] && laid.holds(piece));
    Blanket ready = fromPile.isEmpty() ? before : Blanket.ofUnjudged(withoutThem(fromPile));
    Brief noted = WorkedPieces.noted(ready, states, sequences);
    Counting counting = new Counting(Blanket.ofUnjudged(noted), mark.edged());
    counting.forget(this::givenUp);
    mark.counts().forEach(count -> attempt(() -> counting.count(count)));
    throwIfAny();
    attempt(counting::tellEdged);
    throwIfAny();
    Brief brief = counting.brief();
    if (!mark.counts().isEmpty() && !brief.pile().isEmpty()) {
      PileEntries pile = new PileEntries(brief.pile());
      pile.count(mark.counts().stream().map(Mark.Count::code).collect(Collectors.toSet()));
      brief = brief.withPile(pile.list());
    }
    return new Marked(
        Blanket.ofUnjudged(brief),
        sequences,
        pieces(piece -> states[piece] != before.state(piece) || fromPile.contains(piece)),
        pieces(piece -> !Arrays.equals(sequences.of(piece), planned.of(piece))),
        yarns(brief));
  }

  /** The brief without what was taken from the pile; what was worked otherwise was never on it. */
  private Brief withoutThem(List<Integer> fromPile) {
    return PileTaking.taken(
        before,
        planned,
        fromPile,
        piece ->
            states[piece] != PieceState.PLANNED
                && Arrays.equals(sequences.of(piece), planned.of(piece)));
  }

  private void attempt(Runnable step) {
    try {
      step.run();
    } catch (InputException e) {
      mistakes.addAll(e.mistakes());
    }
  }

  private void setState(Mark.State wish) {
    for (Place place : found(wish.place(), wish.at())) {
      int piece = place.index();
      if (stateBy[piece] != null && states[piece] != wish.state()) {
        mistakes.add(
            Mistake.ofWish(
                wish.place(),
                MistakeCode.NAMED_TWICE.about(place.name(), stateBy[piece]),
                place.name() + " is named by " + stateBy[piece] + " too",
                "Name it once"));
      }
      states[piece] = wish.state();
      stateBy[piece] = wish.place();
      named[piece] = true;
    }
  }

  /** Pieces that were worked are worked: a planned one becomes made. */
  private void setYarns(Mark.Work wish) {
    for (Place place : found(wish.place(), wish.note().at())) {
      int piece = place.index();
      if (stateBy[piece] != null && states[piece] == PieceState.PLANNED) {
        mistakes.add(
            Mistake.ofWish(
                wish.place(),
                MistakeCode.NAMED_TWICE.about(place.name(), stateBy[piece]),
                place.name() + " is named by " + stateBy[piece] + " too",
                "A piece with yarns that were worked is made or joined"));
      } else if (states[piece] == PieceState.PLANNED) {
        states[piece] = PieceState.MADE;
      }
      named[piece] = true;
      setYarns(wish, place);
    }
  }

  private void setYarns(Mark.Work wish, Place place) {
    int rounds = sequences.rounds(place.index());
    List<Optional<String>> codes;
    try {
      codes = wish.note().codes(rounds);
    } catch (IllegalArgumentException e) {
      mistakes.add(
          Mistake.ofWish(
              wish.place(),
              MistakeCode.WRONG_COUNT.about(
                  "rounds", wish.note().rounds().size(), rounds, rounds, place.name()),
              place.name() + " is given " + Words.count(wish.note().rounds().size(), "round"),
              "A "
                  + place.kind().word()
                  + " has "
                  + Words.count(rounds, "round")
                  + "; ~ leaves one as planned"));
      return;
    }
    for (int round = 0; round < rounds; round++) {
      if (codes.get(round).isPresent()) {
        try {
          String code = codes.get(round).get();
          sequences.set(place.index(), round, Selections.yarn(wish.place(), before.brief(), code));
        } catch (InputException e) {
          mistakes.addAll(e.mistakes());
          return;
        }
      }
    }
  }

  private List<Place> found(String place, List<String> selectors) {
    try {
      return Selections.pieces(place, before.layout(), selectors);
    } catch (InputException e) {
      mistakes.addAll(e.mistakes());
      return List.of();
    }
  }

  private void tellOpen() {
    for (int piece = 0; piece < states.length; piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (states[piece] != PieceState.PLANNED && sequences.yarn(piece, round) == Sequences.OPEN) {
          mistakes.add(
              Mistake.ofWhole(
                  MistakeCode.ROUND_OPEN.about(before.place(piece).name(), round + 1),
                  before.place(piece).name() + " has no yarn in its round " + (round + 1),
                  "Say what it was worked in"));
        }
      }
    }
  }

  private boolean givenUp(Place place) {
    return before.state(place.index()) != PieceState.PLANNED
        && states[place.index()] == PieceState.PLANNED;
  }

  private List<Integer> pieces(IntPredicate changed) {
    return IntStream.range(0, states.length).filter(changed).boxed().toList();
  }

  private List<Integer> yarns(Brief brief) {
    return IntStream.range(0, before.yarnCount())
        .filter(yarn -> !brief.yarns().get(yarn).equals(before.yarn(yarn)))
        .boxed()
        .toList();
  }

  private void throwIfAny() {
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }
}
