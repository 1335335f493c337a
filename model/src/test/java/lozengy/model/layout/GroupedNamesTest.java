package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class GroupedNamesTest {

  private static final Layout LAYOUT =
      Layout.of(new LayoutSize(Setting.ON_POINT, 4, 4, true, true));

  private static void named(String expected, String... selectors) {
    List<Place> places = LAYOUT.select(List.of(selectors));
    List<String> names = GroupedNames.of(LAYOUT, places);
    assertEquals(expected, String.join(" ", names));
    assertEquals(Set.copyOf(places), Set.copyOf(LAYOUT.select(names)));
  }

  @Test
  void wholeRows() {
    named("row2 row4", "row2", "row4");
  }

  @Test
  void runsInARowAndAlongASide() {
    named("r1c1..r1c3 r3c2 r3c3", "r1c1", "r1c2", "r1c3", "r3c2", "r3c3");
    named("top1..top3 top-left", "top-left", "top1", "top2", "top3");
  }

  @Test
  void piecesOneByOne() {
    named("r1c1 r1c3 bottom-right", "bottom-right", "r1c3", "r1c1");
  }
}
