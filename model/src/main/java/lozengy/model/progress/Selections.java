package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import lozengy.model.brief.Brief;
import lozengy.model.brief.GroupNames;
import lozengy.model.brief.Yarn;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.Nearest;
import lozengy.model.input.Words;
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
        mistakes.add(
            Mistake.ofWish(
                place,
                "There is no piece " + Words.quoted(selector),
                GroupNames.remedy(selector, layout)));
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
    int yarn = codes.indexOf(code);
    if (yarn < 0) {
      throw wrong(
          place,
          "No yarn has the code " + Words.quoted(code),
          Nearest.to(code, codes)
              .map(near -> "Maybe " + near + " is meant")
              .orElse("The yarns' codes are " + String.join(", ", codes)));
    }
    return yarn;
  }

  /** An exception with one mistake. */
  static InputException wrong(String place, String found, String remedy) {
    return new InputException(List.of(Mistake.ofWish(place, found, remedy)));
  }
}
