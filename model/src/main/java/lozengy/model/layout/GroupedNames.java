package lozengy.model.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names pieces as shortly as selectors can: whole rows of squares as {@code row4}, three or more
 * beside each other in a row or along a side as {@code r4c1..r4c3} or {@code top1..top3}, others
 * one by one.
 */
public final class GroupedNames {

  private static final int SHORTEST_RANGE = 3;
  private static final Pattern SQUARES = Pattern.compile("r(\\d+)c");
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)");

  private GroupedNames() {}

  /**
   * Names pieces, in the layout's order; O(pieces).
   *
   * @param layout the layout
   * @param places pieces of the layout
   * @return selectors that together stand for these pieces and no others
   */
  public static List<String> of(Layout layout, Collection<Place> places) {
    Set<Place> named = new HashSet<>(places);
    List<String> names = new ArrayList<>();
    for (Place place : layout.places()) {
      if (named.contains(place)) {
        List<Place> run = run(layout, place, named);
        named.removeAll(run);
        names.addAll(names(layout, run));
      }
    }
    return names;
  }

  /** A piece and those that follow it by number, as far as they are to be named. */
  private static List<Place> run(Layout layout, Place first, Set<Place> named) {
    List<Place> run = new ArrayList<>(List.of(first));
    Optional<Place> next = next(layout, first);
    while (next.filter(named::contains).isPresent()) {
      run.add(next.get());
      next = next(layout, next.get());
    }
    return run;
  }

  private static Optional<Place> next(Layout layout, Place place) {
    Matcher name = NUMBERED.matcher(place.name());
    return name.matches()
        ? layout.find(name.group(1) + (Integer.parseInt(name.group(2)) + 1))
        : Optional.empty();
  }

  private static List<String> names(Layout layout, List<Place> run) {
    Place first = run.get(0);
    Place last = run.get(run.size() - 1);
    Matcher name = NUMBERED.matcher(first.name());
    Matcher row = SQUARES.matcher(name.matches() ? name.group(1) : "");
    boolean whole = row.matches() && name.group(2).equals("1") && next(layout, last).isEmpty();
    if (whole && run.size() > 1) {
      return List.of("row" + row.group(1));
    }
    return run.size() < SHORTEST_RANGE
        ? run.stream().map(Place::name).toList()
        : List.of(first.name() + ".." + last.name());
  }
}
