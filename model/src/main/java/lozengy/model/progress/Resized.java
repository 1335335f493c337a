package lozengy.model.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Place;
import lozengy.model.reading.BriefJudge;

/**
 * A brief and a plan in another size. Pieces that are there still keep their yarns and their state
 * by place; the rest is open.
 *
 * @param brief the brief
 * @param sequences the plan
 */
record Resized(Brief brief, Optional<Sequences> sequences) {

  /**
   * Changes the size.
   *
   * @throws InputException if the size is as it was or cannot be, or a worked piece would lose its
   *     place
   */
  static Resized of(Brief old, Optional<Sequences> plan, Change.Resize wish) {
    LayoutSize was = old.layout();
    if (was.across() == wish.across() && was.down() == wish.down()) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.NOTHING_TO_CHANGE.about(),
          "The blanket is " + was.across() + " across and " + was.down() + " down already",
          "Name another size");
    }
    LayoutSize size =
        new LayoutSize(
            was.setting(), wish.across(), wish.down(), was.sideTriangles(), was.cornerTriangles());
    judge(old, size, wish);
    Blanket before = Blanket.ofUnjudged(old);
    PlaceMap map = new PlaceMap(before.layout(), Layout.of(size), wish.anchor());
    tellWorked(before, map, wish);
    Brief brief =
        old.withLayout(size).withPieces(notes(old, map)).withYarns(yarns(old.yarns(), map));
    return new Resized(brief, plan.map(planned -> moved(before, planned, brief, map)));
  }

  private static void judge(Brief old, LayoutSize size, Change.Resize wish) {
    List<Yarn> uncounted =
        old.yarns().stream().map(yarn -> yarn.withCount(Optional.empty())).toList();
    boolean neverCounted = uncounted.equals(old.yarns());
    Brief bare = old.withLayout(size).withPieces(List.of()).withPile(List.of());
    List<Mistake> mistakes =
        BriefJudge.mistakes(neverCounted ? bare : bare.withYarns(uncounted)).stream()
            .map(mistake -> mistake.at(BriefPath.of(wish.place()), 0))
            .toList();
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }

  private static void tellWorked(Blanket before, PlaceMap map, Change.Resize wish) {
    List<Mistake> mistakes = new ArrayList<>();
    String corner = "Let another corner stay where it is";
    tell(
        before,
        place -> map.find(place).isEmpty() && before.roundsWorked(place.index()) > 0,
        "worked and would lie outside",
        corner + ", or mark pieces planned to give them up",
        wish,
        mistakes);
    tell(
        before,
        place ->
            map.find(place).isPresent()
                && map.moves(place)
                && before.state(place.index()) == PieceState.JOINED,
        "joined, and the outline would move away from them",
        corner + ", or mark pieces made once they are taken off",
        wish,
        mistakes);
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }

  private static void tell(
      Blanket before,
      Predicate<Place> wrong,
      String what,
      String remedy,
      Change.Resize wish,
      List<Mistake> mistakes) {
    List<Integer> pieces =
        before.layout().places().stream().filter(wrong).map(Place::index).toList();
    if (!pieces.isEmpty()) {
      String verb = pieces.size() == 1 ? " is " : " are ";
      mistakes.add(
          Mistake.ofWish(
              wish.place(),
              MistakeCode.ALREADY_WORKED.about(
                  pieces.stream().map(piece -> before.place(piece).name()).toList()),
              Words.pieces(before, pieces) + verb + what,
              remedy));
    }
  }

  private static List<PieceNote> notes(Brief old, PlaceMap map) {
    List<PieceNote> notes = new ArrayList<>();
    for (PieceNote note : old.pieces()) {
      List<String> at = map.selectors(note.at(), !note.anyWorked());
      if (!at.isEmpty()) {
        notes.add(note.of(at));
      }
    }
    return notes;
  }

  private static List<Yarn> yarns(List<Yarn> old, PlaceMap map) {
    return old.stream()
        .map(yarn -> yarn.withCount(yarn.counted().map(counted -> moved(counted, map))))
        .toList();
  }

  private static Counted moved(Counted counted, PlaceMap map) {
    return new Counted(
        counted.left(),
        map.selectors(counted.made(), false),
        map.selectors(counted.joined(), false),
        counted.partWorked().stream()
            .map(part -> new PartWorked(part.rounds(), map.selectors(part.at(), false)))
            .filter(part -> !part.at().isEmpty())
            .toList(),
        counted.edgedPercent());
  }

  private static Sequences moved(Blanket before, Sequences planned, Brief brief, PlaceMap map) {
    Sequences moved = Blanket.ofUnjudged(brief).open();
    for (Place old : before.layout().places()) {
      Optional<Place> now = map.find(old);
      for (int round = 0; now.isPresent() && round < planned.rounds(old.index()); round++) {
        moved.set(now.get().index(), round, planned.yarn(old.index(), round));
      }
    }
    return moved;
  }
}
