package lozengy.model.progress;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Place;

/** Counts yarns again, with what is worked now. */
final class Counting {

  private final Blanket blanket;
  private final Optional<Mark.Edged> edged;
  private final List<Yarn> yarns;
  private final Set<String> counted = new LinkedHashSet<>();

  Counting(Blanket blanket, Optional<Mark.Edged> edged) {
    this.blanket = blanket;
    this.edged = edged;
    this.yarns = new ArrayList<>(blanket.brief().yarns());
  }

  /** The brief with the counts. */
  Brief brief() {
    return yarns.equals(blanket.brief().yarns())
        ? blanket.brief()
        : blanket.brief().withYarns(yarns);
  }

  /**
   * Takes pieces that were given up out of earlier counts, so that they count once they are worked
   * anew.
   */
  void forget(Predicate<Place> givenUp) {
    yarns.replaceAll(yarn -> yarn.withCount(yarn.counted().map(old -> without(old, givenUp))));
  }

  private Counted without(Counted old, Predicate<Place> givenUp) {
    return new Counted(
        old.left(),
        without(old.made(), givenUp),
        without(old.joined(), givenUp),
        old.edgedPercent());
  }

  private List<String> without(List<String> selectors, Predicate<Place> givenUp) {
    Set<String> left = new LinkedHashSet<>();
    for (String selector : selectors) {
      List<Place> places = blanket.layout().select(selector);
      if (places.stream().noneMatch(givenUp)) {
        left.add(selector);
      } else {
        places.stream().filter(givenUp.negate()).forEach(place -> left.add(place.name()));
      }
    }
    return List.copyOf(left);
  }

  /**
   * Counts a yarn.
   *
   * @throws InputException if there is no such yarn, it is counted twice, or a weight of it is no
   *     length
   */
  void count(Mark.Count wish) {
    int index = Selections.yarn(wish.place(), blanket.brief(), wish.code());
    Yarn yarn = yarns.get(index);
    if (!counted.add(wish.code())) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.NAMED_TWICE.about(wish.code()),
          wish.code() + " is counted twice",
          "Count it once");
    }
    if (wish.left() instanceof YarnAmount.Weight && yarn.ball().isEmpty()) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.FIELD_MISSING.about("ball"),
          wish.code() + " has no put-up to turn a weight into metres",
          "Give what is left in m or yd");
    }
    yarns.set(
        index,
        yarn.withCount(
            Optional.of(
                new Counted(
                    wish.left(),
                    Worked.names(blanket, PieceState.MADE),
                    Worked.names(blanket, PieceState.JOINED),
                    edges(wish.code())
                        ? edged.map(Mark.Edged::percent).orElse(edgedBefore(yarn))
                        : 0))));
  }

  private static double edgedBefore(Yarn yarn) {
    return yarn.counted().map(Counted::edgedPercent).orElse(0.0);
  }

  private boolean edges(String code) {
    return blanket.brief().edging().filter(use -> use.yarn().equals(code)).isPresent();
  }

  /**
   * Makes sure that a part that has its edging belongs to a count of its yarn.
   *
   * @throws InputException if it does not
   */
  void tellEdged() {
    if (edged.isPresent() && counted.stream().noneMatch(this::edges)) {
      String yarn = blanket.brief().edging().map(use -> use.yarn()).orElse("");
      throw Selections.wrong(
          edged.get().place(),
          MistakeCode.NOT_COUNTED.about(yarn.isEmpty() ? null : yarn),
          yarn.isEmpty() ? "The brief has no edging" : "The edging's yarn is not counted with it",
          yarn.isEmpty() ? "Leave it out" : "Count what is left of " + yarn);
    }
  }
}
