package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PileEntries;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.reading.BriefJudge;

/**
 * Applies changes to how things stand, whatever their order: first another brief, the size, then
 * yarns, the pile, and what pieces hold. What is worked stays as it is.
 */
public final class Changes {

  private final List<Mistake> mistakes = new ArrayList<>();
  private final NotePlaces places = new NotePlaces();
  private Brief brief;
  private Optional<Sequences> sequences;
  private Optional<Sequences> before;

  private Changes(CurrentPlan current) {
    this.brief = current.brief();
    this.sequences = current.sequences();
    this.before = current.sequences();
  }

  /**
   * Applies changes.
   *
   * @param current how things stand
   * @param changes what is to change
   * @return what is to be solved next
   * @throws InputException with all mistakes if a change names what is not there, cannot be made,
   *     or breaks a rule that was not broken before
   */
  public static Changed apply(CurrentPlan current, List<Change> changes) {
    return apply(current, changes, BriefJudge::mistakes);
  }

  /**
   * Applies changes where locks may break rules, so that what they cannot hold can be explained.
   *
   * @param current how things stand
   * @param changes what is to change
   * @return what is asked for then
   * @throws InputException with all mistakes if a change names what is not there or cannot be made
   */
  public static Changed applyUnjudged(CurrentPlan current, List<Change> changes) {
    return apply(current, changes, BriefMistakes::ofParts);
  }

  private static Changed apply(
      CurrentPlan current, List<Change> changes, Function<Brief, List<Mistake>> judge) {
    Changes applied = new Changes(current);
    Steps steps = applied.new Steps();
    changes.stream()
        .map(change -> change.in(steps))
        .sorted(Comparator.comparing(Step::turn))
        .forEach(applied::make);
    applied.throwIfAny();
    applied.judge(current.brief(), judge);
    applied.throwIfAny();
    Blanket blanket = Blanket.ofUnjudged(applied.brief);
    Locks.tellIdle(blanket, changes);
    return new Changed(
        blanket, applied.sequences, applied.before, applied.places.byIndex(applied.brief.pieces()));
  }

  /** When a change is made: yarns may be named that come only with an earlier one. */
  private enum Turn {
    REBRIEF,
    SIZE,
    SWAP,
    WITHOUT,
    PILE,
    FREE,
    /** What is locked as planned is read from the plan, before yarns are held that it has not. */
    LOCK,
    HOLD
  }

  /** A change with its turn. */
  private record Step(Turn turn, Runnable make) {}

  private final class Steps implements Change.Cases<Step> {

    @Override
    public Step of(Change.Rebrief rebrief) {
      return new Step(
          Turn.REBRIEF,
          () -> {
            CurrentPlan current = Rebriefed.of(new CurrentPlan(brief, sequences), rebrief);
            brief = current.brief();
            sequences = current.sequences();
            before = sequences;
          });
    }

    @Override
    public Step of(Change.Resize resize) {
      return new Step(
          Turn.SIZE,
          () -> {
            Resized resized = Resized.of(brief, sequences, resize);
            brief = resized.brief();
            sequences = resized.sequences();
            before = sequences;
          });
    }

    @Override
    public Step of(Change.Swap swap) {
      return new Step(
          Turn.SWAP,
          () -> {
            CurrentPlan swapped = YarnChanges.swap(new CurrentPlan(brief, sequences), swap);
            brief = swapped.brief();
            sequences = swapped.sequences();
          });
    }

    @Override
    public Step of(Change.Without without) {
      return new Step(Turn.WITHOUT, () -> brief = YarnChanges.without(brief, without));
    }

    @Override
    public Step of(Change.Move move) {
      return new Step(Turn.PILE, () -> brief = PileTaking.put(brief, move));
    }

    @Override
    public Step of(Change.Put put) {
      return new Step(
          Turn.PILE,
          () -> {
            PileEntries pile = new PileEntries(brief.pile());
            put.entries().forEach(pile::put);
            brief = brief.withPile(pile.list());
          });
    }

    @Override
    public Step of(Change.Free free) {
      return new Step(Turn.FREE, () -> brief = Locks.freed(brief, free));
    }

    @Override
    public Step of(Change.Lock lock) {
      return new Step(
          Turn.LOCK,
          () -> add(lock.place(), Locks.asPlanned(new CurrentPlan(brief, sequences), lock)));
    }

    @Override
    public Step of(Change.Hold hold) {
      return new Step(Turn.HOLD, () -> add(hold.place(), List.of(hold.note())));
    }
  }

  private void make(Step step) {
    try {
      step.make().run();
    } catch (InputException e) {
      mistakes.addAll(e.mistakes());
    }
  }

  private void add(String place, List<PieceNote> notes) {
    List<PieceNote> all = new ArrayList<>(brief.pieces());
    all.addAll(notes);
    notes.forEach(note -> places.put(note, place));
    brief = brief.withPieces(all);
  }

  /** Judges the brief as a whole; what was wrong before is not told again. */
  private void judge(Brief old, Function<Brief, List<Mistake>> judge) {
    Set<Mistake.Sort> known = new HashSet<>();
    judge.apply(old).forEach(mistake -> known.add(mistake.sort()));
    judge.apply(brief).stream()
        .filter(mistake -> !known.contains(mistake.sort()))
        .map(mistake -> places.placed(mistake, brief.pieces()))
        .forEach(mistakes::add);
  }

  private void throwIfAny() {
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }
}
