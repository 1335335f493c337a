package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class MeasuresTest {

  @ParameterizedTest
  @CsvFileSource(resources = "onpoint_counts.csv", useHeadersInDisplayName = true)
  void measuresOnPoint(
      int across,
      int down,
      int outerSquares,
      int innerSquares,
      int squares,
      int sideTriangles,
      int corners,
      int pieces,
      int seams,
      int touches,
      double area,
      double width,
      double height) {
    Measures measures = Measures.of(Layout.of(LayoutSizes.filled(across, down)), 1);
    assertEquals(area, measures.areaCm2(), 1e-12);
    assertEquals(width, measures.widthCm(), 1e-6);
    assertEquals(height, measures.heightCm(), 1e-6);
    assertEquals(seams, measures.seamLengthCm(), 1e-12);
    assertEquals(2 * (width + height), measures.outlineLengthCm(), 1e-5);
    // the pieces of a filled layout cover the rectangle: 2 x across x down squares in area
    assertEquals(2.0 * across * down, measures.areaCm2(), 1e-12);
    assertEquals(measures.widthCm() * measures.heightCm(), measures.areaCm2(), 1e-9);
  }

  @Property(seed = "6", tries = 300)
  void agreesWithThePolygons(
      @ForAll(supplier = LayoutSizes.class) LayoutSize size,
      @ForAll @DoubleRange(min = 0.5, max = 40) double sideCm) {
    Layout layout = Layout.of(size);
    Measures measures = Measures.of(layout, sideCm);
    double cmPerUnit = sideCm / Polygon.side(size.setting());
    List<Polygon> polygons = Polygon.of(layout);
    double area = polygons.stream().mapToDouble(Polygon::area).sum();
    double edges = polygons.stream().mapToDouble(Polygon::perimeter).sum();
    List<Polygon.Point> points = polygons.stream().flatMap(p -> p.corners().stream()).toList();
    int right = points.stream().mapToInt(Polygon.Point::x).max().orElseThrow();
    int bottom = points.stream().mapToInt(Polygon.Point::y).max().orElseThrow();
    assertEquals(area * cmPerUnit * cmPerUnit, measures.areaCm2(), 1e-6);
    assertEquals(right * cmPerUnit, measures.widthCm(), 1e-6);
    assertEquals(bottom * cmPerUnit, measures.heightCm(), 1e-6);
    // every edge is a seam, counted from both sides, or lies on the outline
    assertEquals(edges * cmPerUnit, measures.outlineLengthCm() + 2 * measures.seamLengthCm(), 1e-6);
  }

  @Test
  void measuresStraightSquares() {
    Layout layout = Layout.of(new LayoutSize(Setting.STRAIGHT, 3, 2, false, false));
    assertEquals(new Measures(10, 30, 20, 600, 70, 100), Measures.of(layout, 10));
  }
}
