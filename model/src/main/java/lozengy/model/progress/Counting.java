package lozengy.model.progress;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
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
   * Takes rounds that were given up out of earlier counts, so that they count once they are worked
   * anew.
   *
   * @param before how far the pieces had come
   * @param stages how far they have come now
   */
  void forget(Stages before, Stages stages) {
    Predicate<Place> givenUp =
        place -> stages.roundsWorked(place.index()) < before.roundsWorked(place.index());
    yarns.replaceAll(
        yarn -> yarn.withCount(yarn.counted().map(old -> without(old, stages, givenUp))));
  }

  private Counted without(Counted old, Stages stages, Predicate<Place> givenUp) {
    Predicate<Place> notWhole =
        givenUp.and(place -> stages.state(place.index()) == PieceState.PLANNED);
    Map<Integer, Set<String>> parts = new TreeMap<>();
    for (PartWorked part : old.partWorked()) {
      Predicate<Place> fewer =
          givenUp.and(place -> stages.roundsWorked(place.index()) < part.rounds());
      parts
          .computeIfAbsent(part.rounds(), rounds -> new LinkedHashSet<>())
          .addAll(without(part.at(), fewer));
      left(part.at(), fewer, stages, parts);
    }
    left(old.made(), notWhole, stages, parts);
    left(old.joined(), notWhole, stages, parts);
    return new Counted(
        old.left(),
        without(old.made(), notWhole),
        without(old.joined(), notWhole),
        parts.entrySet().stream()
            .filter(part -> !part.getValue().isEmpty())
            .map(part -> new PartWorked(part.getKey(), List.copyOf(part.getValue())))
            .toList(),
        old.edgedPercent());
  }

  /** What is left worked of pieces that were given up in part. */
  private void left(
      List<String> selectors,
      Predicate<Place> givenUp,
      Stages stages,
      Map<Integer, Set<String>> parts) {
    for (Place place : blanket.layout().select(selectors)) {
      int rounds = stages.roundsWorked(place.index());
      if (rounds > 0 && givenUp.test(place)) {
        parts.computeIfAbsent(rounds, r -> new LinkedHashSet<>()).add(place.name());
      }
    }
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
        yarn.withGone(false)
            .withCount(
                Optional.of(
                    Worked.count(
                        blanket,
                        wish.left(),
                        edges(wish.code())
                            ? edged.map(Mark.Edged::percent).orElse(edgedBefore(yarn))
                            : 0))));
  }

  private static double edgedBefore(Yarn yarn) {
    return yarn.counted().map(Counted::edgedPercent).orElse(0.0);
  }

  private boolean edges(String code) {
    return blanket.brief().edging().stream().anyMatch(use -> use.yarn().equals(code));
  }

  /**
   * Makes sure that a part that has its edging belongs to a count of its yarn.
   *
   * @throws InputException if it does not
   */
  void tellEdged() {
    if (edged.isPresent() && counted.stream().noneMatch(this::edges)) {
      String yarn =
          blanket.brief().edging().stream()
              .map(YarnUse::yarn)
              .distinct()
              .collect(Collectors.joining(" or "));
      throw Selections.wrong(
          edged.get().place(),
          MistakeCode.NOT_COUNTED.about(yarn.isEmpty() ? null : yarn),
          yarn.isEmpty() ? "The brief has no edging" : "The edging's yarn is not counted with it",
          yarn.isEmpty() ? "Leave it out" : "Count what is left of " + yarn);
    }
  }
}
