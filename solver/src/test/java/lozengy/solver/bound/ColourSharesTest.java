package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Shares of pairs among bands, against one band that holds all. */
class ColourSharesTest {

  private static Region squares(int across, int down, int layer) {
    return new Region(
        BlanketBuilder.straight(across, down)
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .yarns(3, Tone.MID, 1_000_000)
            .build(),
        layer);
  }

  /** Squares in bands that overlap: however shared, no more than all at once repeat. */
  @Test
  void theBandsTogetherAreBelowAllAtOnceAndCloseToIt() {
    for (int side = 4; side <= 5; side++) {
      int yarns = side == 4 ? 4 : 3;
      Region region = squares(side, side, 1);
      double all = ColourSweep.of(band(region), yarns, 100_000).least(band(region).weight());
      List<Band> bands = new BandCover(region, 6, 2, false).bands();
      assertEquals(side - 2, bands.size());
      double even = 0;
      long work = 0;
      for (Band band : bands) {
        ColourSweep sweep = ColourSweep.of(band, yarns, 100_000);
        even += sweep.least(band.weight());
        work += sweep.work();
      }
      ColourShares shares = ColourShares.of(bands, yarns, region.pairs(), 100_000);
      assertEquals(work, shares.work());
      assertEquals(Double.NEGATIVE_INFINITY, shares.best());
      shares.improve(1, () -> false);
      assertEquals(even, shares.best(), 1e-9);
      shares.improve(30, () -> true);
      assertEquals(even, shares.best(), 1e-9);
      shares.improve(30, () -> false);
      assertTrue(shares.best() <= all + 1e-9, shares.best() + " above " + all);
      assertTrue(all - shares.best() < 0.14 * (all - even), even + ", " + shares.best());
    }
  }

  /** A state holds twenty places side by side. */
  @Test
  void tooManyPlacesSideBySideAreDeclined() {
    int places = 22;
    int[] first = new int[places - 1];
    int[] second = new int[places - 1];
    Arrays.setAll(first, pair -> pair);
    Arrays.fill(second, places - 1);
    Band band =
        new Band(
            places,
            1,
            new int[places],
            new int[places],
            first,
            first,
            second,
            new double[places - 1],
            new boolean[places - 1],
            new double[places]);
    assertNull(ColourSweep.of(band, 1, 10));
  }

  private static Band band(Region region) {
    return new BandCover(region, 100, 4, false).bands().get(0);
  }

  @Test
  void tooManyStatesOrBordersThatCannotDifferAreDeclined() {
    Region borders = squares(5, 5, 0);
    List<Band> bands = new BandCover(borders, 8, 4, false).bands();
    assertNull(ColourShares.of(bands, 3, borders.pairs(), 3));
    assertNull(ColourShares.of(bands, 1, borders.pairs(), 1000));
    // two yarns lie like a chessboard: of 25 squares 13 and 12 touch at corners and lie in lines
    ColourShares chess = ColourShares.of(bands, 2, borders.pairs(), 1000);
    chess.improve(1, () -> false);
    assertEquals(2 * 32 + 30, chess.best(), 1e-9);
  }

  /**
   * One state for each place until two places are apart by a yarn: choices are what a call costs.
   */
  @Test
  void workIsTheChoicesOfASweep() {
    Band band = RandomBands.threeInLine();
    // the first yarn is the first to be shown; then alike or another, each time
    assertEquals(1 + 2 + 2, ColourSweep.of(band, 2, 10).work());
    assertEquals(1 + 1 + 1, ColourSweep.of(band, 1, 1).work());
    // in or out, with the frontier's one place in or out: states before each place and at the end
    BandSweep sweep = new BandSweep(band);
    assertEquals(0, sweep.work());
    sweep.least(new double[] {9, 9, 9});
    assertEquals(1 + 2 + 2 + 1, sweep.work());
    // taking no place pays, so that one state is left before each and at the end
    sweep.least(new double[] {-1, -1, -1});
    assertEquals(1 + 2 + 2 + 1 + 4, sweep.work());
  }

  /** A pair of three bands keeps its weight: what is added here is taken there. */
  @Test
  void slopesAreLevelledByPair() {
    Band one = band(new int[] {0, 1});
    Band two = band(new int[] {1});
    Band three = band(new int[] {2, 1});
    PairShares shares = new PairShares(List.of(one, two, three), 3);
    double[][] slopes = {{5, 1}, {0}, {7, 2}};
    shares.level(slopes);
    assertArrayEquals(new double[] {0, 0}, slopes[0], 1e-12);
    assertArrayEquals(new double[] {-1}, slopes[1], 1e-12);
    assertArrayEquals(new double[] {0, 1}, slopes[2], 1e-12);
    double[][] again = {{1, 3}, {0}, {2, 0}};
    shares.level(again);
    assertArrayEquals(new double[] {0, 2}, again[0], 1e-12);
    assertArrayEquals(new double[] {-1}, again[1], 1e-12);
    assertArrayEquals(new double[] {0, -1}, again[2], 1e-12);
  }

  private static Band band(int[] pairs) {
    int count = pairs.length;
    return new Band(
        2,
        1,
        new int[2],
        new int[2],
        pairs,
        new int[count],
        new int[count],
        new double[count],
        new boolean[count],
        new double[2]);
  }
}
