package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Measures;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Setting;
import lozengy.report.Samples;
import lozengy.report.TextWidth;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawingTest {

  private static final double CLOSE = 1e-9;

  static Stream<LayoutSize> sizes() {
    return Stream.of(
        Samples.onPoint(6, 8),
        Samples.onPoint(3, 3),
        Samples.onPoint(1, 1),
        Samples.onPoint(1, 4),
        Samples.open(4, 2),
        new LayoutSize(Setting.ON_POINT, 3, 4, true, false),
        new LayoutSize(Setting.ON_POINT, 3, 4, false, true),
        Samples.straight(5, 3),
        Samples.straight(1, 1));
  }

  private static Arrangement sample(LayoutSize size) {
    return Samples.filled(Samples.brief("Sample", size, Samples.yarns(), List.of()), 5);
  }

  private static Drawing drawing(LayoutSize size) {
    Arrangement arrangement = sample(size);
    return Drawing.of(arrangement.blanket(), arrangement.sequences());
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void outlinesFillTheBlanketsAreaWithinItsSize(LayoutSize size) {
    Blanket blanket = sample(size).blanket();
    Measures measures = blanket.measures();
    Drawing drawing = drawing(size);

    double area = drawing.pieces().stream().mapToDouble(piece -> piece.outline().areaCm2()).sum();
    assertEquals(measures.areaCm2(), area, 1e-6);
    assertEquals(measures.widthCm(), drawing.widthCm(), CLOSE);
    assertEquals(measures.heightCm(), drawing.heightCm(), CLOSE);
    for (PieceDrawing piece : drawing.pieces()) {
      for (Point corner : piece.outline().corners()) {
        assertTrue(corner.x() >= -CLOSE && corner.x() <= drawing.widthCm() + CLOSE);
        assertTrue(corner.y() >= -CLOSE && corner.y() <= drawing.heightCm() + CLOSE);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void piecesThatShareASeamShareASideAndOthersThatTouchACorner(LayoutSize size) {
    Blanket blanket = sample(size).blanket();
    Drawing drawing = drawing(size);

    assertSharedCorners(drawing, blanket.layout().seams(), 2);
    assertSharedCorners(drawing, blanket.layout().touches(), 1);
    assertSharedCorners(drawing, blanket.layout().near(), 0);
  }

  private static void assertSharedCorners(Drawing drawing, Pairs pairs, long expected) {
    for (int i = 0; i < pairs.size(); i++) {
      PieceDrawing first = drawing.pieces().get(pairs.first()[i]);
      PieceDrawing second = drawing.pieces().get(pairs.second()[i]);
      long shared =
          first.outline().corners().stream()
              .filter(a -> second.outline().corners().stream().anyMatch(b -> a.distance(b) < CLOSE))
              .count();
      assertEquals(expected, shared, first.place().name() + " and " + second.place().name());
    }
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void roundsAreNestedInBandsOfOneWidth(LayoutSize size) {
    for (PieceDrawing piece : drawing(size).pieces()) {
      int count = piece.rounds().size();
      assertEquals(piece.yarns().size(), count);
      for (int round = 0; round < count; round++) {
        Polygon polygon = piece.rounds().get(round);
        assertTrue(polygon.areaCm2() > 0, "corners run clockwise");
        for (int side = 0; side < polygon.corners().size(); side++) {
          double expected = piece.bandCm() * (round + 1);
          assertEquals(expected, distance(piece.centre(), polygon, side), CLOSE);
        }
        if (round > 0) {
          assertTrue(piece.rounds().get(round - 1).corners().stream().allMatch(polygon::contains));
        }
      }
    }
  }

  /** The distance of a point from the line through a side. */
  private static double distance(Point point, Polygon polygon, int side) {
    Point from = polygon.corner(side);
    Point to = polygon.corner(side + 1);
    double cross =
        (to.x() - from.x()) * (point.y() - from.y()) - (to.y() - from.y()) * (point.x() - from.x());
    return Math.abs(cross) / from.distance(to);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void labelsLieWithinTheirPieces(LayoutSize size) {
    Labels labels = new Labels(2, 2);
    for (PieceDrawing piece : drawing(size).pieces()) {
      for (boolean middleTaken : new boolean[] {false, true}) {
        for (Label label : labels.name(piece, middleTaken)) {
          assertHolds(piece.outline(), label);
        }
      }
      for (int round = 0; round < piece.rounds().size(); round++) {
        Label label = labels.code(piece, round, "WWW");
        assertHolds(piece.rounds().get(round), label);
        if (round > 0) {
          assertTrue(
              !piece.rounds().get(round - 1).contains(label.centre()),
              piece.place().name() + " round " + round);
        }
      }
    }
  }

  private static void assertHolds(Polygon polygon, Label label) {
    double across = TextWidth.ems(label.text()) * label.sizeCm() / 2;
    double up = Label.CAP_HEIGHT * label.sizeCm() / 2;
    double turn = Math.toRadians(label.degrees());
    assertTrue(label.sizeCm() > 0.05, label.text() + " is " + label.sizeCm() + " cm");
    for (int i = 0; i < 4; i++) {
      double x = i % 2 == 0 ? across : -across;
      double y = i < 2 ? up : -up;
      Point corner =
          new Point(
              label.centre().x() + x * Math.cos(turn) - y * Math.sin(turn),
              label.centre().y() + x * Math.sin(turn) + y * Math.cos(turn));
      assertTrue(polygon.contains(corner), label + " sticks out of " + polygon);
    }
  }
}
