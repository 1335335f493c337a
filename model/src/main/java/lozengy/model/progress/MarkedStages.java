package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.PieceState;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.making.MakeList;

/**
 * How far pieces come by a mark. Where it names a piece more than once, the furthest counts: joined
 * over made, made over worked in part, more rounds over fewer, any over planned.
 */
final class MarkedStages {

  private static final int UNNAMED = -1;

  private final Blanket blanket;
  private final Stages before;
  private final int[] named;
  private final boolean[] overlapping;
  private final List<Mistake> mistakes = new ArrayList<>();

  MarkedStages(Blanket blanket) {
    this.blanket = blanket;
    this.before = Stages.of(blanket);
    this.named = new int[blanket.pieceCount()];
    this.overlapping = new boolean[named.length];
    Arrays.fill(named, UNNAMED);
  }

  /** What is wrong with the marks so far. */
  List<Mistake> mistakes() {
    return mistakes;
  }

  /** How far the pieces have come with the marks. */
  Stages stages() {
    Stages stages = before.copy();
    for (int piece = 0; piece < named.length; piece++) {
      if (named(piece)) {
        stages.set(piece, named[piece]);
      }
    }
    return stages;
  }

  /** Whether a piece is named. */
  boolean named(int piece) {
    return named[piece] != UNNAMED;
  }

  /** Whether a piece is named more than once, and not for the same. */
  boolean overlapping(int piece) {
    return overlapping[piece];
  }

  void add(Mark.State wish) {
    for (Place place : found(wish.place(), wish.at())) {
      name(place.index(), before.stage(place.index(), wish.state()));
    }
  }

  void add(Mark.Rounds wish) {
    boolean[] told = new boolean[PieceKind.values().length];
    for (Place place : found(wish.place(), wish.at())) {
      int rounds = blanket.roundCount(place.index());
      if (wish.worked() >= 1 && wish.worked() <= rounds) {
        name(place.index(), wish.worked());
      } else if (!told[place.kind().ordinal()]) {
        told[place.kind().ordinal()] = true;
        mistakes.add(
            Mistake.ofWish(
                wish.place(),
                MistakeCode.OUT_OF_RANGE.about(wish.worked(), 1, rounds),
                place.name() + " has no round " + wish.worked(),
                "A "
                    + place.kind().word()
                    + " has "
                    + Words.count(rounds, "round")
                    + "; give 1 to "
                    + rounds
                    + ", or mark those pieces apart"));
      }
    }
  }

  /** What a step was done for is worked up to there: rounds lie on each other. */
  void add(Mark.Step wish, MakeList list) {
    if (wish.from() < 1 || wish.to() > list.steps() || wish.from() > wish.to()) {
      boolean backwards = wish.from() > wish.to();
      mistakes.add(
          Mistake.ofWish(
              wish.place(),
              MistakeCode.OUT_OF_RANGE.about(
                  wish.from() < 1 || backwards ? wish.from() : wish.to(), 1, list.steps()),
              backwards
                  ? "Step " + wish.from() + " comes after step " + wish.to()
                  : "The make list has no step " + (wish.from() < 1 ? wish.from() : wish.to()),
              list.steps() == 0
                  ? "Nothing is on it"
                  : backwards
                      ? "Give the lower number first"
                      : "Its steps are 1 to " + list.steps()));
      return;
    }
    boolean[] meant = new boolean[named.length];
    Arrays.fill(meant, wish.at().isEmpty());
    List<Place> places = wish.at().isEmpty() ? List.of() : found(wish.place(), wish.at());
    places.forEach(place -> meant[place.index()] = true);
    boolean any = false;
    for (MakeList.Batch batch : list.batches().subList(wish.from() - 1, wish.to())) {
      for (MakeList.Task task : batch.tasks()) {
        if (meant[task.piece()]) {
          any = true;
          int stage = task.round() + 1;
          int piece = task.piece();
          named[piece] = Math.max(named[piece], Math.max(stage, before.stage(piece)));
        }
      }
    }
    if (!any && !places.isEmpty()) {
      mistakes.add(
          Mistake.ofWish(
              wish.place(),
              MistakeCode.NOTHING_TO_CHANGE.about(wish.at()),
              "No round of these pieces is in "
                  + (wish.from() == wish.to()
                      ? "step " + wish.from()
                      : "steps " + wish.from() + " to " + wish.to()),
              "Name pieces that are in it"));
    }
  }

  /** Yarns that a piece was worked in make it made, unless it is said or known to be begun. */
  void addWorked(int piece) {
    if (!named(piece) || named[piece] == 0) {
      overlapping[piece] |= named(piece);
      named[piece] =
          before.stage(piece) == 0 ? before.stage(piece, PieceState.MADE) : before.stage(piece);
    }
  }

  private void name(int piece, int stage) {
    overlapping[piece] |= named(piece) && named[piece] != stage;
    named[piece] = Math.max(named[piece], stage);
  }

  List<Place> found(String place, List<String> selectors) {
    try {
      return Selections.pieces(place, blanket.layout(), selectors);
    } catch (InputException e) {
      mistakes.addAll(e.mistakes());
      return List.of();
    }
  }
}
