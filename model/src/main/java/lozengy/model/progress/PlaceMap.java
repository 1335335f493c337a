package lozengy.model.progress;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import lozengy.model.brief.GroupNames;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/**
 * Where the pieces of a layout lie in one of another size: squares as far from the corner that
 * stays as before, triangles and corners on the same edge of the new outline.
 */
final class PlaceMap {

  private record Key(PieceKind kind, int x, int y) {}

  private final Layout from;
  private final Layout to;
  private final Map<Key, Place> places = new HashMap<>();
  private final int moveX;
  private final int moveY;

  PlaceMap(Layout from, Layout to, Anchor anchor) {
    this.from = from;
    this.to = to;
    this.moveX = anchor.right() ? 2 * (to.size().across() - from.size().across()) : 0;
    this.moveY = anchor.bottom() ? 2 * (to.size().down() - from.size().down()) : 0;
    to.places().forEach(place -> places.put(new Key(place.kind(), place.x(), place.y()), place));
  }

  /** The place in the new layout; empty where there is none. */
  Optional<Place> find(Place old) {
    LayoutSize was = from.size();
    LayoutSize is = to.size();
    boolean square = old.kind() == PieceKind.SQUARE;
    int x = old.x() + moveX;
    int y = old.y() + moveY;
    if (!square && (old.x() == 0 || old.x() == 2 * was.across())) {
      x = old.x() == 0 ? 0 : 2 * is.across();
    }
    if (!square && (old.y() == 0 || old.y() == 2 * was.down())) {
      y = old.y() == 0 ? 0 : 2 * is.down();
    }
    return Optional.ofNullable(places.get(new Key(old.kind(), x, y)));
  }

  /**
   * Whether a piece would not lie by the same neighbours: it moves with the outline, or is gone.
   */
  boolean moves(Place old) {
    return find(old)
        .map(place -> place.x() != old.x() + moveX || place.y() != old.y() + moveY)
        .orElse(true);
  }

  /**
   * Selectors of the same pieces in the new layout.
   *
   * @param selectors selectors in the old layout
   * @param wordsStay whether a word for a kind or an edge means that of the new layout
   */
  List<String> selectors(List<String> selectors, boolean wordsStay) {
    Set<String> mapped = new LinkedHashSet<>();
    for (String selector : selectors) {
      if (wordsStay && GroupNames.isWord(selector)) {
        if (!to.select(selector).isEmpty()) {
          mapped.add(selector);
        }
        continue;
      }
      List<Place> now =
          from.select(selector).stream()
              .map(old -> find(old).orElse(null))
              .filter(Objects::nonNull)
              .toList();
      if (!now.isEmpty() && now.equals(to.select(selector))) {
        mapped.add(selector);
      } else {
        now.forEach(place -> mapped.add(place.name()));
      }
    }
    return List.copyOf(mapped);
  }
}
