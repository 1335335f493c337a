package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class PairsTest {

  /** Seams share two corner points, touches one; both from the polygons alone. */
  @Property(seed = "3", tries = 200)
  void seamsAndTouchesAreWhereCornerPointsMeet(
      @ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    List<Polygon> polygons = Polygon.of(layout);
    List<List<Integer>> seams = new ArrayList<>();
    List<List<Integer>> touches = new ArrayList<>();
    for (int first = 0; first < polygons.size(); first++) {
      for (int second = first + 1; second < polygons.size(); second++) {
        long shared = polygons.get(first).shared(polygons.get(second));
        if (shared > 0) {
          (shared == 1 ? touches : seams).add(List.of(first, second));
        }
      }
    }
    assertEquals(seams, list(layout.seams()));
    assertEquals(touches, list(layout.touches()));
  }

  /** All within the square root of 5 sides are seams, touches or near, each in one class. */
  @Property(seed = "4", tries = 200)
  void nearIsWithinTheSquareRootOfFiveSides(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    double reach = Math.sqrt(5) * Polygon.side(size.setting()) + 1e-9;
    List<List<Integer>> within = new ArrayList<>();
    for (Place first : layout.places()) {
      for (Place second : layout.places()) {
        double apart = Math.hypot(first.x() - second.x(), first.y() - second.y());
        if (first.index() < second.index() && apart <= reach) {
          within.add(List.of(first.index(), second.index()));
        }
      }
    }
    within.removeAll(list(layout.seams()));
    within.removeAll(list(layout.touches()));
    assertEquals(within, list(layout.near()));
  }

  @Property(seed = "5", tries = 200)
  void halfTurnKeepsThePairs(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    int[] turned = new int[layout.places().size()];
    for (Place place : layout.places()) {
      int x = 2 * size.across() - place.x();
      int y = 2 * size.down() - place.y();
      Place other =
          layout.places().stream().filter(p -> p.x() == x && p.y() == y).findFirst().orElseThrow();
      assertEquals(place.kind(), other.kind());
      turned[place.index()] = other.index();
    }
    for (Pairs pairs : List.of(layout.seams(), layout.touches(), layout.near())) {
      assertEquals(new TreeSet<>(keys(pairs, turned)), new TreeSet<>(keys(pairs, null)));
    }
  }

  private static List<Long> keys(Pairs pairs, int[] turned) {
    List<Long> keys = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      int first = turned == null ? pairs.first()[i] : turned[pairs.first()[i]];
      int second = turned == null ? pairs.second()[i] : turned[pairs.second()[i]];
      keys.add((long) Math.min(first, second) << 32 | Math.max(first, second));
    }
    return keys;
  }

  private static List<List<Integer>> list(Pairs pairs) {
    List<List<Integer>> list = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      list.add(List.of(pairs.first()[i], pairs.second()[i]));
    }
    return list;
  }
}
