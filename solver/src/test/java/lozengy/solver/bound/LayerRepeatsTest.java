package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Floors under whole layers' repeats. */
class LayerRepeatsTest {

  private static final int KINDS = PieceKind.values().length;

  private static BlanketBuilder squares(int across, int down, int yarns) {
    return BlanketBuilder.straight(across, down)
        .motif(PieceKind.SQUARE, round(1000), round(1000))
        .yarns(yarns, Tone.MID, 1_000_000);
  }

  private static double[][] wanted(int yarns, double each) {
    double[][] wanted = new double[KINDS][yarns];
    Arrays.fill(wanted[0], each);
    return wanted;
  }

  /** Whether a floor says more than nothing of some yarn. */
  private static boolean says(RepeatFloor floor) {
    return Arrays.stream(floor.toll()).anyMatch(lines -> lines.length > 0);
  }

  private static boolean says(BlanketBuilder builder, double[][] wanted) {
    return says(new LayerRepeats(builder.build(), 1, 1).at(0, wanted, () -> false));
  }

  /** A ninth of the places, or of places in a line a quarter and one more, shows one apart. */
  @Test
  void nothingIsSaidWhereEachYarnCanKeepApart() {
    assertTrue(!says(squares(3, 6, 9), wanted(9, 2)));
    assertTrue(says(squares(3, 6, 9), wanted(9, 2.01)));
    // the one yarn that is wanted more often makes the difference
    double[][] one = wanted(9, 1);
    one[0][4] = 2.1;
    assertTrue(says(squares(3, 6, 9), one));
    // what must lie somewhere may have to repeat
    assertTrue(says(squares(3, 6, 9).note("r1c1", PieceState.MADE, "A", "B"), wanted(9, 1)));
    // of 4 corners two show one yarn apart, though a ninth of all 17 places were enough
    BlanketBuilder corners =
        BlanketBuilder.filled(3, 3)
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .motif(PieceKind.SIDE_TRIANGLE, round(1000))
            .motif(PieceKind.CORNER_TRIANGLE, round(1000), round(1000))
            .yarns(9, Tone.MID, 1_000_000);
    double[][] apart = new double[KINDS][9];
    int corner = PieceKind.CORNER_TRIANGLE.ordinal();
    apart[corner][2] = 1.8;
    assertTrue(!says(corners, apart));
    // 4 x 3 is more than 4 + 4; with 5 squares wanted it is a ninth and more
    apart[corner][2] = 1.89;
    assertTrue(says(corners, apart));
    RepeatFloor none = new LayerRepeats(corners.build(), 1, 1).none();
    assertTrue(!says(none));
    assertEquals(0, none.base());
    assertEquals(new Region(corners.build(), 1).allPairs(), none.total());
  }

  /** Six squares across are eleven lattice units; sixty down would have millions of states. */
  @Test
  void oneBandSpansALayerThatIsNarrowAndNotLong() {
    assertEquals(1, bands(6, 8, true));
    assertEquals(2, bands(6, 8, false));
    assertEquals(2, bands(7, 8, true));
    assertEquals(2, bands(6, 60, true));
  }

  private static int bands(int across, int down, boolean wide) {
    return new LayerRepeats(squares(across, down, 3).build(), 1, 1).cover(wide).size();
  }

  /** Three yarns on four by four squares repeat 30 at the least, by all yarns at once. */
  @Test
  void fewYarnsAreSettledForAllAtOnce() {
    LayerRepeats three = new LayerRepeats(squares(4, 4, 3).build(), 1, 1);
    assertEquals(0, three.at(0, wanted(3, 5), () -> false).least());
    RepeatFloor floor = three.at(1, wanted(3, 5), () -> false);
    assertEquals(30, floor.least(), 1e-9);
    assertEquals(30, three.at(2, wanted(3, 5), () -> false).least(), 1e-9);
    LayerRepeats five = new LayerRepeats(squares(4, 4, 5).build(), 1, 1);
    five.at(0, wanted(5, 16 / 5.0), () -> false);
    assertEquals(0, five.at(1, wanted(5, 16 / 5.0), () -> false).least());
    // a further yarns that the layer may not show are none
    Blanket dark =
        BlanketBuilder.straight(4, 4)
            .motif(PieceKind.SQUARE, round(1000, Tone.MID), round(1000))
            .yarns(3, Tone.MID, 1_000_000)
            .yarns(2, Tone.DARK, 1_000_000)
            .build();
    LayerRepeats layer = new LayerRepeats(dark, 1, 1);
    layer.at(0, wanted(5, 5), () -> false);
    assertEquals(30, layer.at(1, wanted(5, 5), () -> false).least(), 1e-9);
    // where nothing is wanted at first, all at once are not prepared
    LayerRepeats late = new LayerRepeats(squares(4, 4, 3).build(), 1, 1);
    late.at(0, wanted(3, 1), () -> false);
    assertEquals(0, late.at(1, wanted(3, 1), () -> false).least());
    assertTrue(says(late.at(2, wanted(3, 5), () -> false)));
  }

  /** Moves of tolls are as far apart as a count is worth in repeats, from 1 to 8. */
  @Test
  void tollsAreMovedByWhatACountIsWorth() {
    double[] units = {0.25, 1, 3, 8, 40};
    double[] moves = {1, 1, 3, 8, 8};
    for (int i = 0; i < units.length; i++) {
      LayerRepeats layer = new LayerRepeats(squares(4, 4, 5).build(), 1, units[i]);
      RepeatFloor floor = layer.at(0, wanted(5, 16 / 5.0), () -> false);
      assertEquals(moves[i], floor.toll()[0][5][0] - floor.toll()[0][3][0], 1e-12);
    }
  }

  /** Later stages say more, at what is wanted; a stopped one says what the one before said. */
  @Test
  void laterStagesSayMore() {
    Blanket blanket = squares(6, 6, 5).build();
    double[][] wanted = wanted(5, 36 / 5.0);
    LayerRepeats layer = new LayerRepeats(blanket, 0, 1);
    double[] values = new double[4];
    for (int stage = 0; stage < 4; stage++) {
      values[stage] = value(layer.at(stage, wanted, () -> false), wanted);
      assertTrue(stage == 0 || values[stage] >= values[stage - 1] - 1e-9, Arrays.toString(values));
    }
    LayerRepeats stopped = new LayerRepeats(blanket, 0, 1);
    stopped.at(0, wanted, () -> false);
    double first = value(stopped.at(1, wanted, () -> true), wanted);
    assertEquals(first, value(stopped.at(2, wanted, () -> true), wanted), 1e-9);
    assertTrue(first < values[1], first + ", " + values[1]);
    double[] were = {23.3310, 26.0576, 27.8131, 29.2186};
    for (int stage = 0; stage < 4; stage++) {
      assertTrue(values[stage] >= were[stage], "looser than it was: " + Arrays.toString(values));
    }
  }

  private static double value(RepeatFloor floor, double[][] wanted) {
    double value = floor.base();
    for (int yarn = 0; yarn < floor.toll().length; yarn++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int line = 0; line < floor.toll()[yarn].length; line++) {
        double height = floor.height()[yarn][line];
        for (int kind = 0; kind < KINDS; kind++) {
          height -= floor.toll()[yarn][line][kind] * wanted[kind][yarn];
        }
        most = Math.max(most, height);
      }
      value += most;
    }
    return value;
  }

  /** More than 1,500 places: bands that lie alike are one, and single locks do not count. */
  @Test
  void largeLayersAreMerged() {
    BlanketBuilder builder = squares(40, 40, 5).note("r1c1", PieceState.MADE, "A", "B");
    RepeatFloor floor = new LayerRepeats(builder.build(), 1, 1).at(0, wanted(5, 320), () -> false);
    double value = value(floor, wanted(5, 320));
    assertTrue(value >= 1706.86, "looser than it was: " + value);
  }
}
