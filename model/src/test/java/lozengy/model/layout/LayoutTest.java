package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutTest {

  @ParameterizedTest
  @CsvFileSource(resources = "onpoint_counts.csv", useHeadersInDisplayName = true)
  void countsOnPoint(
      int across,
      int down,
      int outerSquares,
      int innerSquares,
      int squares,
      int sideTriangles,
      int corners,
      int pieces,
      int seams,
      int touches) {
    Layout layout = Layout.of(LayoutSizes.filled(across, down));
    assertEquals(
        outerSquares,
        count(layout, place -> place.kind() == PieceKind.SQUARE && place.y() % 2 == 1));
    assertEquals(
        innerSquares,
        count(layout, place -> place.kind() == PieceKind.SQUARE && place.y() % 2 == 0));
    assertEquals(squares, layout.size().squares());
    assertEquals(sideTriangles, count(layout, place -> place.kind() == PieceKind.SIDE_TRIANGLE));
    assertEquals(sideTriangles, layout.size().sidePlaces());
    assertEquals(corners, count(layout, place -> place.kind() == PieceKind.CORNER_TRIANGLE));
    assertEquals(pieces, layout.places().size());
    assertEquals(seams, layout.seams().size());
    assertEquals(touches, layout.touches().size());
  }

  /** Common practice, no source: a blanket that needs 28 side triangles. */
  @Test
  void twentyEightSideTrianglesMeanSixteenAcrossAndDown() {
    for (int across = 1; across < 40; across++) {
      for (int down = 1; down < 40; down++) {
        assertEquals(
            across + down == 16, LayoutSizes.filled(across, down).sidePlaces() == 28, "" + across);
      }
    }
  }

  @Test
  void namesComeInTheFixedOrder() {
    assertEquals(
        List.of(
            "r1c1",
            "r1c2",
            "r2c1",
            "r3c1",
            "r3c2",
            "r4c1",
            "r5c1",
            "r5c2",
            "top1",
            "right1",
            "right2",
            "bottom1",
            "left1",
            "left2",
            "top-left",
            "top-right",
            "bottom-right",
            "bottom-left"),
        names(new LayoutSize(Setting.ON_POINT, 2, 3, true, true)));
    assertEquals(
        List.of("r1c1", "r1c2", "r1c3", "r2c1", "r2c2", "r2c3"),
        names(new LayoutSize(Setting.STRAIGHT, 3, 2, false, false)));
  }

  @Test
  void oneSquareWithItsCorners() {
    assertEquals(
        List.of("r1c1", "top-left", "top-right", "bottom-right", "bottom-left"),
        names(LayoutSizes.filled(1, 1)));
    assertEquals(List.of("r1c1"), names(new LayoutSize(Setting.ON_POINT, 1, 1, true, false)));
  }

  /** Squares of even rows do not exist in a layout one square across. */
  @Test
  void oneSquareAcross() {
    assertEquals(
        List.of("r1c1", "r3c1", "r5c1", "right1", "right2", "left1", "left2"),
        names(new LayoutSize(Setting.ON_POINT, 1, 3, true, false)));
    Layout bare = Layout.of(new LayoutSize(Setting.ON_POINT, 1, 3, false, false));
    assertEquals(0, bare.seams().size());
    assertEquals(2, bare.touches().size());
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 0, 0", "4, 1, 3, 0", "3, 2, 7, 4", "6, 8, 82, 70"})
  void countsStraight(int across, int down, int seams, int touches) {
    Layout layout = Layout.of(new LayoutSize(Setting.STRAIGHT, across, down, false, false));
    assertEquals(across * down, layout.places().size());
    assertEquals(seams, layout.seams().size());
    assertEquals(touches, layout.touches().size());
  }

  @Property(seed = "2")
  void sizesCountWithoutBuildingAndNamesFindTheirPlaces(
      @ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    assertEquals(size.pieces(), layout.places().size());
    for (int index = 0; index < layout.places().size(); index++) {
      Place place = layout.places().get(index);
      assertEquals(index, place.index());
      assertEquals(Optional.of(place), layout.find(place.name()));
    }
    assertEquals(Optional.empty(), layout.find("r0c1"));
  }

  @Test
  void hundredThousandPiecesAreLaidOut() {
    Layout layout = Layout.of(LayoutSizes.filled(200, 250));
    assertEquals(2 * 200 * 250 + 200 + 250 + 1, layout.places().size());
    assertEquals(4 * 200 * 250, layout.seams().size());
    assertEquals(4 * 200 * 250, layout.touches().size());
  }

  @Test
  void refusesWhatCannotBeCounted() {
    LayoutSize huge = LayoutSizes.filled(Integer.MAX_VALUE, Integer.MAX_VALUE);
    assertTrue(huge.pieces() > 0);
    assertThrows(IllegalArgumentException.class, () -> Layout.of(huge));
    assertThrows(IllegalArgumentException.class, () -> LayoutSizes.filled(0, 3));
    assertThrows(
        IllegalArgumentException.class, () -> new LayoutSize(Setting.STRAIGHT, 2, 2, true, false));
  }

  private static long count(Layout layout, Predicate<Place> which) {
    return layout.places().stream().filter(which).count();
  }

  private static List<String> names(LayoutSize size) {
    return Layout.of(size).places().stream().map(Place::name).toList();
  }
}
