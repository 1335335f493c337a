package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.GroupNames;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;

/** Finds what a wish names, or says what is wrong with the name. */
final class Selections {

  private Selections() {}

  /**
   * The pieces of some selectors.
   *
   * @param place what messages call the wish
   * @throws InputException if one stands for no piece
   */
  static List<Place> pieces(String place, Layout layout, Collection<String> selectors) {
    List<Mistake> mistakes = new ArrayList<>();
    for (String selector : selectors) {
      if (layout.select(selector).isEmpty()) {
        mistakes.add(GroupNames.unknown(selector, BriefPath.of(place), layout));
      }
    }
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
    return layout.select(selectors);
  }

  /**
   * The position of a yarn.
   *
   * @param place what messages call the wish
   * @throws InputException if there is none of that code
   */
  static int yarn(String place, Brief brief, String code) {
    List<String> codes = brief.yarns().stream().map(Yarn::code).toList();
    BriefMistakes.unknownCode(code, BriefPath.of(place), codes)
        .ifPresent(
            mistake -> {
              throw new InputException(List.of(mistake));
            });
    return codes.indexOf(code);
  }

  /** An exception with one mistake. */
  static InputException wrong(String place, Mistake.Sort sort, String found, String remedy) {
    return new InputException(List.of(Mistake.ofWish(place, sort, found, remedy)));
  }
}
