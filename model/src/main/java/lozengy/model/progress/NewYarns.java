package lozengy.model.progress;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;

/** Adds yarns that a brief does not know yet, behind those that it has. */
final class NewYarns {

  private NewYarns() {}

  /**
   * The brief with the yarns that a mark adds.
   *
   * @throws InputException if one of them does not fit the brief
   */
  static Brief added(Brief brief, List<Mark.OfYarn> wishes) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    List<Mark.OfYarn> added = new ArrayList<>();
    for (Mark.OfYarn wish : wishes) {
      if (wish instanceof Mark.Added more) {
        yarns.add(more.yarn());
        added.add(wish);
      } else if (wish instanceof Mark.Lot lot) {
        yarns.add(lot(brief.withYarns(yarns), lot));
        added.add(wish);
      }
    }
    Brief grown = added.isEmpty() ? brief : brief.withYarns(yarns);
    tellMistakes(brief, grown, added);
    return grown;
  }

  private static Yarn lot(Brief brief, Mark.Lot wish) {
    Yarn.notACode(wish.code(), BriefPath.of(wish.place()))
        .ifPresent(
            mistake -> {
              throw new InputException(List.of(mistake));
            });
    Yarn shade = brief.yarns().get(Selections.yarn(wish.place(), brief, wish.of()));
    return Yarn.of(wish.code(), shade.colour())
        .withName(shade.name() + ", lot " + wish.code())
        .withBall(shade.ball())
        .withTone(shade.statedTone())
        .withShare(0)
        .withLotOf(Optional.of(shade.code()));
  }

  private static void tellMistakes(Brief brief, Brief grown, List<Mark.OfYarn> added) {
    Set<Mistake.Sort> known = new HashSet<>();
    BriefMistakes.ofParts(brief).forEach(mistake -> known.add(mistake.sort()));
    List<Mistake> mistakes = new ArrayList<>();
    for (Mistake mistake : BriefMistakes.ofParts(grown)) {
      if (!known.contains(mistake.sort())) {
        mistakes.add(placed(mistake, brief.yarns().size(), added));
      }
    }
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
  }

  private static Mistake placed(Mistake mistake, int before, List<Mark.OfYarn> added) {
    for (int i = 0; i < added.size(); i++) {
      if (mistake.path().within(BriefPath.of("yarns").item(before + i))) {
        return Mistake.ofWish(
            added.get(i).place(), mistake.sort(), mistake.found(), mistake.remedy());
      }
    }
    return mistake;
  }
}
