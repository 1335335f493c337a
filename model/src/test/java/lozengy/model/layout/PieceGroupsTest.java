package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PieceGroupsTest {

  private static final Layout FILLED = onPoint(3, 2, true, true);

  private static Layout onPoint(int across, int down, boolean sides, boolean corners) {
    return Layout.of(new LayoutSize(Setting.ON_POINT, across, down, sides, corners));
  }

  private static String names(Layout layout, String... selectors) {
    return layout.select(List.of(selectors)).stream()
        .map(Place::name)
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource({
    "r2c1, r2c1",
    "top-left, top-left",
    "row1, r1c1 r1c2 r1c3",
    "row2, r2c1 r2c2",
    "row2..row3, r2c1 r2c2 r3c1 r3c2 r3c3",
    "r3c2..r3c3, r3c2 r3c3",
    "r3c2..r3c2, r3c2",
    "bottom1..bottom2, bottom1 bottom2",
    "strip1, top-left",
    "strip2, left1 r1c1 top1",
    "strip2..strip3, left1 r1c1 top1 bottom-left r3c1 r2c1 r1c2 top2",
    "triangles, top1 top2 right1 bottom1 bottom2 left1",
    "corners, top-left top-right bottom-right bottom-left",
    "top, top1 top2 top-left top-right",
    "right, right1 top-right bottom-right",
    "bottom, bottom1 bottom2 bottom-right bottom-left",
    "left, left1 top-left bottom-left"
  })
  void standsForThePiecesOfThatNameOrWord(String selector, String pieces) {
    assertEquals(pieces, names(FILLED, selector));
  }

  @Test
  void severalSelectorsTellEachPieceOnce() {
    assertEquals("r1c2 r1c1 r1c3", names(FILLED, "r1c2", "row1"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "..",
        "r9c1",
        "row0",
        "row4",
        "row",
        "strip99",
        "strip00000001x",
        "row99999999999",
        "r1c1..r2c2",
        "r1c3..r1c1",
        "top1..bottom1",
        "row1..strip2",
        "r1c1..",
        "row1..row9",
        "r1c1..r1c2..r1c3",
        "Squares",
        "squares..corners",
        "row-1",
        "top0"
      })
  void otherWordsStandForNone(String selector) {
    assertEquals(List.of(), FILLED.select(selector));
  }

  @Test
  void anEdgeIsOfSquaresWhereNoTriangleLiesOnIt() {
    assertEquals("r1c1 r1c2 r1c3", names(onPoint(3, 2, false, false), "top"));
    assertEquals("r1c3 r3c3", names(onPoint(3, 2, false, false), "right"));
    // the corner squares have a side on the outline where their corners are open
    assertEquals("r1c1 r1c3 top1 top2", names(onPoint(3, 2, true, false), "top"));
    assertEquals("r1c1 r1c2 r1c3 top-left top-right", names(onPoint(3, 2, false, true), "top"));
    Layout straight = Layout.of(new LayoutSize(Setting.STRAIGHT, 2, 3, false, false));
    assertEquals("r3c1 r3c2", names(straight, "bottom"));
    assertEquals("", names(straight, "corners"));
  }

  @Property(tries = 60, seed = "4")
  void rowsKindsAndStripsEachHoldEveryPieceOnceAndTheOutlineThoseWithAFreeSide(
      @ForAll @IntRange(min = 1, max = 5) int across,
      @ForAll @IntRange(min = 1, max = 5) int down,
      @ForAll boolean onPoint,
      @ForAll boolean sides,
      @ForAll boolean corners) {
    Setting setting = onPoint ? Setting.ON_POINT : Setting.STRAIGHT;
    Layout layout =
        Layout.of(new LayoutSize(setting, across, down, sides && onPoint, corners && onPoint));
    int rows = onPoint ? 2 * down - 1 : down;

    assertHoldsEachOnce(layout, "row", rows, layout.select("squares"));
    assertHoldsEachOnce(layout, "strip", layout.stripCount(), layout.places());
    assertEquals(
        layout.places().size(),
        layout.select("squares").size()
            + layout.select("triangles").size()
            + layout.select("corners").size());
    Set<Place> onOutline = new HashSet<>();
    for (Place place : layout.places()) {
      int sidesOfKind =
          switch (place.kind()) {
            case SQUARE -> 4;
            case SIDE_TRIANGLE -> 3;
            case CORNER_TRIANGLE -> 3;
          };
      if (seams(layout, place.index()) < sidesOfKind) {
        onOutline.add(place);
      }
    }
    assertEquals(onOutline, new HashSet<>(layout.select("outline")));
    assertEquals(
        onOutline, new HashSet<>(layout.select(List.of("top", "right", "bottom", "left"))));
    assertEquals(layout.places(), layout.select("all"));
  }

  private static void assertHoldsEachOnce(
      Layout layout, String family, int count, List<Place> wanted) {
    Set<Place> seen = new HashSet<>();
    int total = 0;
    for (int i = 1; i <= count; i++) {
      total += layout.select(family + i).size();
      seen.addAll(layout.select(family + i));
    }
    assertEquals(wanted.size(), total);
    assertEquals(new HashSet<>(wanted), seen);
    assertTrue(layout.select(family + (count + 1)).isEmpty());
  }

  private static int seams(Layout layout, int piece) {
    int count = 0;
    for (int seam = 0; seam < layout.seams().size(); seam++) {
      count += layout.seams().first()[seam] == piece ? 1 : 0;
      count += layout.seams().second()[seam] == piece ? 1 : 0;
    }
    return count;
  }
}
