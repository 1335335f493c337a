package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.arrangement.Diary.YarnEvent.Weighed;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntries;
import lozengy.model.brief.Yarn;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.Place;
import lozengy.model.making.MakeList;

/** Marks in an arrangement what has come about: states first, then yarns, then counts. */
public final class Marking {

  private final Brief original;
  private final Blanket before;
  private final Sequences planned;
  private final List<PartWorked> workedWhenPlanned;
  private final MarkedStages marks;
  private final PilePlacement laid;
  private final Sequences sequences;
  private final List<Mistake> mistakes = new ArrayList<>();

  private Marking(
      Brief original, Blanket before, Sequences planned, List<PartWorked> workedWhenPlanned) {
    this.original = original;
    this.before = before;
    this.planned = planned;
    this.workedWhenPlanned = workedWhenPlanned;
    this.marks = new MarkedStages(before);
    this.laid = PilePlacement.of(before, planned);
    this.sequences = planned.copy();
  }

  /**
   * Marks.
   *
   * @param before the blanket as it was
   * @param planned the pieces' yarns as they were; what is worked must have its yarns then
   * @param workedWhenPlanned pieces of which rounds were worked already when the make list was new
   * @param mark what has come about
   * @return the blanket and its yarns with the mark
   * @throws InputException with all mistakes, if the mark names what is not there or contradicts
   *     itself
   */
  public static Marked apply(
      Blanket before, Sequences planned, List<PartWorked> workedWhenPlanned, Mark mark) {
    Brief grown = NewYarns.added(before.brief(), mark.yarns());
    Blanket ready = grown == before.brief() ? before : Blanket.ofUnjudged(grown);
    return new Marking(before.brief(), ready, planned, workedWhenPlanned).apply(mark);
  }

  private Marked apply(Mark mark) {
    mark.states().forEach(marks::add);
    mark.rounds().forEach(marks::add);
    if (!mark.steps().isEmpty()) {
      MakeList list = MakeList.whole(before, planned, workedWhenPlanned);
      mark.steps().forEach(step -> marks.add(step, list));
    }
    mark.worked().forEach(this::setYarns);
    mistakes.addAll(marks.mistakes());
    throwIfAny();
    Stages stages = marks.stages();
    tellOpen(stages);
    throwIfAny();
    List<Integer> fromPile = pieces(piece -> marks.named(piece) && laid.holds(piece));
    Blanket ready = fromPile.isEmpty() ? before : Blanket.ofUnjudged(withoutThem(fromPile, stages));
    Brief noted = WorkedPieces.noted(ready, stages, sequences);
    Counting counting = new Counting(Blanket.ofUnjudged(noted), mark.edged());
    Stages old = Stages.of(before);
    counting.forget(old, stages);
    Brief told = counting.brief();
    mark.counts().forEach(count -> attempt(() -> counting.count(count)));
    throwIfAny();
    attempt(counting::tellEdged);
    throwIfAny();
    Map<String, Weighed> weighed = Weighings.of(Blanket.ofUnjudged(told), sequences, mark);
    Brief brief = counting.brief();
    if (!mark.counts().isEmpty() && !brief.pile().isEmpty()) {
      PileEntries pile = new PileEntries(brief.pile());
      pile.count(mark.counts().stream().map(Mark.Count::code).collect(Collectors.toSet()));
      brief = brief.withPile(pile.list());
    }
    brief = withStocks(brief, mark);
    throwIfAny();
    return new Marked(
        Blanket.ofUnjudged(brief),
        sequences,
        pieces(piece -> stages.stage(piece) != old.stage(piece) || fromPile.contains(piece)),
        pieces(piece -> !Arrays.equals(sequences.of(piece), planned.of(piece))),
        yarns(brief),
        pieces(marks::overlapping),
        weighed,
        false);
  }

  private Brief withStocks(Brief brief, Mark mark) {
    Set<String> counted = mark.counts().stream().map(Mark.Count::code).collect(Collectors.toSet());
    Stocks stocks = new Stocks(brief, counted);
    mark.yarns().stream()
        .sorted(Comparator.comparing(wish -> !(wish instanceof Mark.Gone)))
        .forEach(wish -> attempt(() -> stocks.change(wish)));
    Stream.concat(
            mark.counts().stream().map(Mark.Count::code),
            mark.yarns().stream().filter(Mark.Bought.class::isInstance).map(Mark.OfYarn::code))
        .distinct()
        .forEach(code -> newLot(code).ifPresent(shade -> stocks.deal(code, shade)));
    return stocks.brief();
  }

  /** The shade of a dye lot of which there was nothing yet, and which has no share of it so far. */
  private Optional<String> newLot(String code) {
    return before.brief().yarns().stream()
        .filter(yarn -> yarn.code().equals(code))
        .filter(yarn -> yarn.share() == 0 && yarn.stockMillimetres() == 0)
        .findFirst()
        .flatMap(Yarn::lotOf);
  }

  /** The brief without what was taken from the pile; what was worked otherwise was never on it. */
  private Brief withoutThem(List<Integer> fromPile, Stages stages) {
    return PileTaking.taken(
        before,
        planned,
        fromPile,
        piece ->
            stages.state(piece) != PieceState.PLANNED
                && Arrays.equals(sequences.of(piece), planned.of(piece)));
  }

  private void attempt(Runnable step) {
    try {
      step.run();
    } catch (InputException e) {
      mistakes.addAll(e.mistakes());
    }
  }

  /** Pieces that were worked are worked: a planned one becomes made, one that is begun stays so. */
  private void setYarns(Mark.Work wish) {
    for (Place place : marks.found(wish.place(), wish.note().at())) {
      marks.addWorked(place.index());
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
    int worked = marks.stages().roundsWorked(place.index());
    for (int round = 0; round < rounds; round++) {
      if (codes.get(round).isPresent()) {
        if (round >= worked) {
          mistakes.add(
              Mistake.ofWish(
                  wish.place(),
                  MistakeCode.ROUND_OPEN.about(place.name(), round + 1),
                  "Round " + (round + 1) + " of " + place.name() + " is not worked yet",
                  "Its first "
                      + Words.count(worked, "round")
                      + (worked == 1 ? " is" : " are")
                      + "; mark more as worked, or leave it out with ~"));
          return;
        }
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

  private void tellOpen(Stages stages) {
    for (int piece = 0; piece < stages.pieces(); piece++) {
      for (int round = 0; round < stages.roundsWorked(piece); round++) {
        if (sequences.yarn(piece, round) == Sequences.OPEN) {
          mistakes.add(
              Mistake.ofWhole(
                  MistakeCode.ROUND_OPEN.about(before.place(piece).name(), round + 1),
                  before.place(piece).name() + " has no yarn in its round " + (round + 1),
                  "Say what it was worked in"));
        }
      }
    }
  }

  private List<Integer> pieces(IntPredicate changed) {
    return IntStream.range(0, before.pieceCount()).filter(changed).boxed().toList();
  }

  private List<Integer> yarns(Brief brief) {
    List<Yarn> old = original.yarns();
    return IntStream.range(0, before.yarnCount())
        .filter(yarn -> yarn >= old.size() || !brief.yarns().get(yarn).equals(old.get(yarn)))
        .boxed()
        .toList();
  }

  private void throwIfAny() {
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }
}
