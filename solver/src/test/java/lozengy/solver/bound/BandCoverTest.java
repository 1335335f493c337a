package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Bands of a cover: every pair's weight and every place's count is shared among them. */
class BandCoverTest {

  private static Region region(BlanketBuilder builder, int layer) {
    return new Region(
        builder
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .motif(PieceKind.SIDE_TRIANGLE, round(1000))
            .motif(PieceKind.CORNER_TRIANGLE, round(1000))
            .yarns(3, Tone.MID, 1_000_000)
            .build(),
        layer);
  }

  /** Straight squares lie two lattice units apart: seven of them across are lines 0, 2, ... 12. */
  @Test
  void bandsLieEvenlyFromTheFirstLineToTheLast() {
    Region region = region(BlanketBuilder.straight(7, 7), 0);
    int low = region.across(0);
    List<Band> bands = new BandCover(region, 7, 3, false).bands();
    // from the first start to the last, 6 lines on: two steps of three
    assertEquals(3, bands.size());
    for (int b = 0; b < 3; b++) {
      Band band = bands.get(b);
      assertEquals(1, band.copies());
      int at = 0;
      for (int place = 0; place < region.places(); place++) {
        int line = region.across(place) - low;
        if (line >= 3 * b && line < 3 * b + 7) {
          assertEquals(place, band.place()[at]);
          assertEquals(region.kind(place), band.kind()[at++]);
        }
      }
      assertEquals(at, band.places());
    }
    // 12 lines wide of 13: the second band begins one line on; 13 hold all
    assertEquals(2, new BandCover(region, 12, 3, false).bands().size());
    assertEquals(1, new BandCover(region, 13, 3, false).bands().size());
    assertEquals(49, new BandCover(region, 20, 3, false).bands().get(0).places());
    // six lines in steps of four: the one between begins half way, in whole lines from the edge
    List<Band> even = new BandCover(region, 7, 4, false).bands();
    assertEquals(3, even.size());
    assertEquals(low + 4, region.across(even.get(1).place()[0]));
    // merged bands keep to the step, but the last: lines 0, 4 and 6
    List<Band> merged = new BandCover(region, 7, 4, true).bands();
    assertEquals(3, merged.size());
    assertEquals(List.of(28, 28, 28), merged.stream().map(Band::places).toList());
    assertEquals(List.of(28, 21, 28), even.stream().map(Band::places).toList());
    assertEquals(low + 6, region.across(merged.get(2).place()[0]));
  }

  @Test
  void everyPairAndPlaceIsSharedInFull() {
    List<Region> regions =
        List.of(
            region(BlanketBuilder.straight(7, 8), 0),
            region(BlanketBuilder.filled(5, 4), 0),
            region(BlanketBuilder.filled(5, 4), 1),
            region(BlanketBuilder.straight(9, 1), 0),
            region(BlanketBuilder.straight(1, 1), 0));
    for (Region region : regions) {
      for (int width = 6; width <= 9; width++) {
        double[] weight = new double[region.pairs()];
        double[] share = new double[region.places()];
        double[] held = new double[region.pairs()];
        List<Band> bands = new BandCover(region, width, 2, false).bands();
        for (Band band : bands) {
          for (int pair = 0; pair < band.pair().length; pair++) {
            int of = band.pair()[pair];
            assertEquals(region.first(of), band.place()[band.first()[pair]]);
            assertEquals(region.second(of), band.place()[band.second()[pair]]);
            assertEquals(region.apart(of), band.apart()[pair]);
            assertTrue(held[of] == 0 || held[of] == band.weight()[pair], "not shared evenly");
            held[of] = band.weight()[pair];
            weight[of] += band.weight()[pair];
          }
          for (int place = 0; place < band.places(); place++) {
            share[band.place()[place]] += band.share()[place];
          }
        }
        for (int pair = 0; pair < weight.length; pair++) {
          assertEquals(region.weight(pair), weight[pair], 1e-12);
        }
        for (double each : share) {
          assertEquals(1, each, 1e-12);
        }
        assertMergedAreTheSame(region, width);
      }
    }
  }

  /** Merged bands hold as much of everything, by their copies. */
  private static void assertMergedAreTheSame(Region region, int width) {
    double weight = 0;
    double share = 0;
    int copies = 0;
    List<Band> bands = new BandCover(region, width, 2, true).bands();
    for (Band band : bands) {
      copies += band.copies();
      for (double each : band.weight()) {
        weight += band.copies() * each;
      }
      for (double each : band.share()) {
        share += band.copies() * each;
      }
    }
    assertEquals(region.allPairs(), weight, 1e-9);
    assertEquals(region.places(), share, 1e-9);
    assertEquals(new BandCover(region, width, 2, false).bands().size(), copies);
  }

  /** Of many bands that lie alike all but those at the edges are one. */
  @Test
  void bandsThatAreAlikeAreGivenOnce() {
    Region region = region(BlanketBuilder.straight(20, 20), 0);
    List<Band> bands = new BandCover(region, 8, 4, true).bands();
    // the first is shared by none on its one side, the last begins three lines after the one before
    assertEquals(List.of(1, 7, 1), bands.stream().map(Band::copies).toList());
  }

  @Test
  void theWeightAtAPlaceIsThatOfItsPairs() {
    Band band = RandomBands.threeInLine();
    assertArrayEquals(new double[] {2, 2.5, 0.5}, band.weightAt());
  }
}
