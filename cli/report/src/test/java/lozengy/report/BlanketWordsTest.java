package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lozengy.model.layout.EdgeFit;
import org.junit.jupiter.api.Test;

class BlanketWordsTest {

  /** Of 24 triangles and four corners, as the throw of 6 across and 8 down has them. */
  private static String edge(double sideCm, double measuredCm, double outlineCm) {
    return BlanketWords.edge(new EdgeFit(sideCm, measuredCm, 24, outlineCm));
  }

  @Test
  void aShorterEdgeDrawsIn() {
    assertEquals(
        "The side triangle's long edge measures 12 cm; on point beside a 9 cm square it spans"
            + " 12.7 cm, so the edge draws in by 5.7 %. Over 24 side triangles the outline comes"
            + " out 17.5 cm shorter, or 4.9 %.",
        edge(9, 12, 28 * 9 * Math.sqrt(2)));
  }

  @Test
  void aLongerEdgeRuffles() {
    assertEquals(
        "The side triangle's long edge measures 15 cm; on point beside a 10 cm square it spans"
            + " 14.1 cm, so the edge ruffles by 6.1 %. Over 24 side triangles the outline comes"
            + " out 20.6 cm longer, or 5.2 %.",
        edge(10, 15, 28 * 10 * Math.sqrt(2)));
  }

  @Test
  void anEdgeMeasuredToTheMillimetreLiesFlat() {
    assertEquals(
        "The side triangle's long edge measures 12.7 cm; on point beside a 9 cm square it spans"
            + " 12.7 cm, so the edge lies flat.",
        edge(9, 12.7, 28 * 9 * Math.sqrt(2)));
  }
}
