package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class EdgeFitTest {

  private static final LayoutSize THROW = LayoutSizes.filled(6, 8);

  /** Common practice, no source: a square of 9 cm whose triangle measures 12 cm. */
  @Test
  void aShorterEdgeDrawsIn() {
    EdgeFit fit = fit(THROW, 9, 12).orElseThrow();
    assertEquals(12.7, fit.spanCm(), 0.05);
    assertEquals(-6, fit.trianglePercent(), 0.5);
    assertFalse(fit.fits());
    assertEquals(24 * (12 - 9 * Math.sqrt(2)), fit.outlineChangeCm(), 1e-9);
    assertEquals(-4.9, fit.outlinePercent(), 0.05);
  }

  @Test
  void aLongerEdgeRuffles() {
    EdgeFit fit = fit(THROW, 10, 15).orElseThrow();
    assertEquals(6.07, fit.trianglePercent(), 0.005);
    assertEquals(20.6, fit.outlineChangeCm(), 0.05);
    assertFalse(fit.fits());
  }

  @Test
  void anEdgeMeasuredToTheMillimetreLiesFlat() {
    assertTrue(fit(THROW, 9, 12.7).orElseThrow().fits());
  }

  /** Without corners only triangles lie along the straight parts, and the zigzag is counted in. */
  @Test
  void percentOfTheOutlineTakesOpenCornersIn() {
    LayoutSize open = new LayoutSize(Setting.ON_POINT, 2, 2, true, false);
    EdgeFit fit = fit(open, 10, 10 * Math.sqrt(2) * 1.1).orElseThrow();
    double triangles = 4 * 10 * Math.sqrt(2);
    assertEquals(10, fit.trianglePercent(), 1e-9);
    assertEquals(100 * 0.1 * triangles / (triangles + 4 * 10), fit.outlinePercent(), 1e-9);
  }

  @Test
  void nothingIsSaidWhereThereIsNothingToCompare() {
    assertEquals(Optional.empty(), fit(LayoutSizes.filled(1, 1), 9, 12));
    assertEquals(Optional.empty(), fit(new LayoutSize(Setting.ON_POINT, 3, 3, false, true), 9, 12));
    assertEquals(
        Optional.empty(), fit(new LayoutSize(Setting.STRAIGHT, 3, 3, false, false), 9, 12));
    Layout layout = Layout.of(THROW);
    assertEquals(
        Optional.empty(), EdgeFit.of(layout, Measures.of(layout, 9), OptionalDouble.empty()));
  }

  private static Optional<EdgeFit> fit(LayoutSize size, double sideCm, double edgeCm) {
    Layout layout = Layout.of(size);
    return EdgeFit.of(layout, Measures.of(layout, sideCm), OptionalDouble.of(edgeCm));
  }
}
