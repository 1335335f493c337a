package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class StripsTest {

  @Test
  void diagonalRowsOnPoint() {
    assertEquals(
        List.of(
            List.of("top-left"),
            List.of("left1", "r1c1", "top1"),
            List.of("left2", "r3c1", "r2c1", "r1c2", "top-right"),
            List.of("bottom-left", "r5c1", "r4c1", "r3c2", "right1"),
            List.of("bottom1", "r5c2", "right2"),
            List.of("bottom-right")),
        names(LayoutSizes.filled(2, 3)));
    assertEquals(
        List.of(
            List.of("top-left"),
            List.of("bottom-left", "r1c1", "top-right"),
            List.of("bottom-right")),
        names(LayoutSizes.filled(1, 1)));
  }

  @Test
  void rowsWhenStraight() {
    assertEquals(
        List.of(List.of("r1c1", "r1c2", "r1c3"), List.of("r2c1", "r2c2", "r2c3")),
        names(new LayoutSize(Setting.STRAIGHT, 3, 2, false, false)));
  }

  @Property(seed = "7")
  void everyPieceIsInOneStrip(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    List<Strip> strips = Strips.of(layout);
    List<Place> pieces = new ArrayList<>();
    for (int i = 0; i < strips.size(); i++) {
      assertEquals(i + 1, strips.get(i).number());
      pieces.addAll(strips.get(i).pieces());
    }
    pieces.sort(Comparator.comparingInt(Place::index));
    assertEquals(layout.places(), pieces);
  }

  @Property(seed = "8", tries = 300)
  void piecesOfAStripAreJoinedAlongSeams(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    for (Strip strip : Strips.of(layout)) {
      for (int i = 1; i < strip.pieces().size(); i++) {
        Place left = strip.pieces().get(i - 1);
        Place right = strip.pieces().get(i);
        assertTrue(left.x() < right.x());
        assertTrue(seam(layout, left, right), left + " and " + right);
      }
    }
  }

  @Property(seed = "9", tries = 300)
  void stripsAreJoinedAlongSeams(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    List<Strip> strips = Strips.of(layout);
    boolean pointsOnly =
        size.setting() == Setting.ON_POINT
            && !size.sideTriangles()
            && Math.min(size.across(), size.down()) == 1;
    for (int i = 1; i < strips.size(); i++) {
      List<Place> above = strips.get(i - 1).pieces();
      List<Place> below = strips.get(i).pieces();
      boolean joined =
          above.stream().anyMatch(a -> below.stream().anyMatch(b -> seam(layout, a, b)));
      // a corner triangle has its seam in any case
      boolean corner =
          above.get(0).kind() == PieceKind.CORNER_TRIANGLE && above.size() == 1
              || below.get(0).kind() == PieceKind.CORNER_TRIANGLE && below.size() == 1;
      assertEquals(!pointsOnly || corner, joined, "strips " + i + " and " + (i + 1));
    }
  }

  private static boolean seam(Layout layout, Place first, Place second) {
    Contact contact = layout.graph().getEdge(first, second);
    return contact != null && contact.kind() == Contact.Kind.SEAM;
  }

  private static List<List<String>> names(LayoutSize size) {
    return Strips.of(Layout.of(size)).stream()
        .map(strip -> strip.pieces().stream().map(Place::name).toList())
        .toList();
  }
}
