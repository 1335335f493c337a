package lozengy.model.progress;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Before;
import lozengy.model.arrangement.Diary;
import lozengy.model.arrangement.Reversal;
import lozengy.model.blanket.Blanket;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.score.Scorer;

/** Marks an arrangement and enters the mark in its diary, so that it can be taken back. */
public final class MarkedArrangement {

  private MarkedArrangement() {}

  /**
   * What a mark of an arrangement comes to.
   *
   * @param before the arrangement as it was
   * @param mark what has come about
   * @return what it comes to
   * @throws InputException with all mistakes of the mark
   */
  public static Marked marked(Arrangement before, Mark mark) {
    mark.on().ifPresent(on -> tellDay(on, before.diary().lastDay()));
    Marked marked =
        Marking.apply(
            before.blanket(), before.sequences(), before.diary().workedWhenPlanned(), mark);
    return mark.hand()
        .map(hand -> marked.withHand(percent(before, marked, mark, hand)))
        .orElse(marked);
  }

  private static BigDecimal percent(Arrangement before, Marked marked, Mark mark, Mark.Hand hand) {
    return hand.percent()
        .orElseGet(
            () -> {
              Stream<Diary.YarnEvent> earlier =
                  before.diary().entries().stream().flatMap(entry -> entry.yarns().stream());
              List<Diary.YarnEvent> events =
                  Stream.concat(earlier, DiaryEntries.events(mark, marked).stream()).toList();
              return told(hand.place(), LearnedHand.of(events));
            });
  }

  private static BigDecimal told(String place, Optional<LearnedHand> learned) {
    if (learned.isEmpty()) {
      throw Selections.wrong(
          place,
          MistakeCode.NOT_COUNTED.about(),
          "No count tells of the hand yet",
          "Mark all that is worked, and count a yarn of which "
              + LearnedHand.LEAST_MILLIMETRES / 1000
              + " m or more were worked since its stock was told");
    }
    List<LearnedHand.Told> apart = learned.get().contradicting();
    if (!apart.isEmpty() || !learned.get().possible()) {
      List<String> codes = learned.get().counts().stream().map(LearnedHand.Told::code).toList();
      throw Selections.wrong(
          place,
          MistakeCode.CONTRADICTS.about(codes.get(0), codes.get(codes.size() - 1)),
          (apart.isEmpty() ? "The counts cannot be: " : "The counts contradict each other: ")
              + learned.get().counts().stream()
                  .map(told -> told.code() + " " + Math.round(told.percent()) + " %")
                  .collect(Collectors.joining(", "))
              + " of what is reckoned",
          "Is all marked that is worked, and all bought yarn? Take a count back that was a mistake,"
              + " or say what to go by, such as 104%");
    }
    return learned.get().percent();
  }

  /**
   * The arrangement with a mark.
   *
   * @param before the arrangement as it was
   * @param mark what has come about
   * @return the arrangement itself where nothing is new
   * @throws InputException with all mistakes of the mark
   */
  public static Arrangement of(Arrangement before, Mark mark) {
    return of(before, mark, marked(before, mark));
  }

  /**
   * The arrangement with a mark. A bound is no longer stated: facts may break what it was proved
   * from. How it was found stays stated as long as its yarns are those that were found.
   *
   * @param before the arrangement as it was
   * @param mark what has come about
   * @param marked what the mark comes to
   * @return the arrangement itself where nothing is new
   */
  public static Arrangement of(Arrangement before, Mark mark, Marked marked) {
    if (marked.nothingNew()) {
      return before;
    }
    Before was =
        new Before(before.blanket().brief(), before.sequences(), before.bound(), before.solved());
    boolean asFound =
        marked.yarns().isEmpty() && marked.counted().isEmpty() && !marked.handChanged();
    return new Arrangement(
        marked.blanket(),
        marked.sequences(),
        before.earlier(),
        Scorer.score(marked.blanket(), marked.sequences(), before.earlier()),
        Optional.empty(),
        asFound ? before.solved().map(Arrangement.Solved::unproved) : Optional.empty(),
        before
            .diary()
            .with(
                DiaryEntries.of(
                    before.blanket(),
                    before.sequences(),
                    marked,
                    mark,
                    Reversal.of(marked.blanket(), marked.sequences(), was))));
  }

  private static void tellDay(Mark.Day on, Optional<LocalDate> last) {
    if (last.isPresent() && on.day().isBefore(last.get())) {
      throw new InputException(
          List.of(
              Mistake.ofWish(
                  on.place(),
                  MistakeCode.OUT_OF_RANGE.about(on.day(), last.get()),
                  on.day() + " is before the last mark, of " + last.get(),
                  "Give " + last.get() + " or a later day")));
    }
  }

  /**
   * The arrangement as it was before its last mark. What else was changed in it by hand stays.
   *
   * @param marked an arrangement that may have been marked
   * @return the arrangement before; empty if there is no mark that can be taken back
   * @throws InputException if what the mark changed has been changed by hand since
   */
  public static Optional<Arrangement> undone(Arrangement marked) {
    return marked.diary().reversal().map(reversal -> undone(marked, reversal));
  }

  private static Arrangement undone(Arrangement marked, Reversal reversal) {
    Before before =
        reversal
            .from(marked.blanket(), marked.sequences())
            .orElseThrow(
                () ->
                    new InputException(
                        List.of(
                            Mistake.ofWhole(
                                MistakeCode.NOTHING_TO_CHANGE.about(),
                                "What the last mark changed has been changed again since, by hand",
                                "Mark how things stand now instead"))));
    Blanket blanket = Blanket.ofUnjudged(before.brief());
    return new Arrangement(
        blanket,
        before.sequences(),
        marked.earlier(),
        Scorer.score(blanket, before.sequences(), marked.earlier()),
        before.bound(),
        before.solved(),
        marked.diary().withoutLast());
  }
}
