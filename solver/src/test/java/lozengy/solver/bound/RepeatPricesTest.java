package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Floors that prices prove, against all ways to part small layers between two yarns. */
class RepeatPricesTest {

  /** States that no test here comes to. */
  private static final long AMPLE = 1L << 40;

  private static final int KINDS = PieceKind.values().length;

  /** What of two yarns the first takes, as a set of places; the least repeats by its counts. */
  private static double[][] least(Region region, YarnClass one, YarnClass other) {
    int places = region.places();
    double[][] least = new double[places + 1][places + 1];
    for (double[] each : least) {
      Arrays.fill(each, Double.POSITIVE_INFINITY);
    }
    long squares = 0;
    long may = 0;
    long must = 0;
    long never = 0;
    for (int place = 0; place < places; place++) {
      squares |= region.kind(place) == 0 ? 1L << place : 0;
      may |= one.may()[place] ? 1L << place : 0;
      must |= one.must()[place] || !other.may()[place] ? 1L << place : 0;
      never |= other.must()[place] ? 1L << place : 0;
    }
    for (long set = 0; set < 1L << places; set++) {
      if ((set & ~may) == 0 && (must & ~set) == 0 && (set & never) == 0) {
        int inSquares = Long.bitCount(set & squares);
        int elsewhere = Long.bitCount(set & ~squares);
        least[inSquares][elsewhere] = Math.min(least[inSquares][elsewhere], repeats(region, set));
      }
    }
    return least;
  }

  private static double repeats(Region region, long set) {
    double repeats = 0;
    for (int pair = 0; pair < region.pairs(); pair++) {
      if ((set >> region.first(pair) & 1) == (set >> region.second(pair) & 1)) {
        repeats += region.apart(pair) ? Double.POSITIVE_INFINITY : region.weight(pair);
      }
    }
    return repeats;
  }

  private static YarnClass yarn(int index, Region region, double[] wanted, String... barred) {
    boolean[] may = new boolean[region.places()];
    boolean[] must = new boolean[region.places()];
    for (int place = 0; place < may.length; place++) {
      may[place] = !Arrays.asList(barred).contains("not " + place);
      must[place] = Arrays.asList(barred).contains("must " + place);
    }
    return new YarnClass(new int[] {index}, may, must, wanted);
  }

  /** Sums, over all counts that there are, how far the floor lies below the least repeats. */
  private static double gap(Region region, RepeatFloor floor, double[][] least) {
    double gap = 0;
    int squares = 0;
    int[] others = new int[KINDS];
    for (int place = 0; place < region.places(); place++) {
      squares += region.kind(place) == 0 ? 1 : 0;
      others[region.kind(place)] += region.kind(place) == 0 ? 0 : 1;
    }
    int other = others[1] > 0 ? 1 : 2;
    for (int one = 0; one <= squares; one++) {
      for (int two = 0; two <= others[other]; two++) {
        int[][] counts = new int[KINDS][2];
        counts[0] = new int[] {one, squares - one};
        counts[other] = new int[] {two, others[other] - two};
        double proved = RepeatFloorTest.floor(floor, counts);
        assertTrue(
            proved <= least[one][two] + 1e-9,
            one + " and " + two + ": " + proved + " above " + least[one][two]);
        gap += least[one][two] < Double.POSITIVE_INFINITY ? least[one][two] - proved : 0;
      }
    }
    return gap;
  }

  /**
   * Four by four squares in bands that overlap: sound for all counts, and no looser than it was.
   */
  @Test
  void noWayToPartSquaresRepeatsLess() {
    Region region =
        new Region(
            BlanketBuilder.straight(4, 4)
                .motif(PieceKind.SQUARE, round(1000), round(1000))
                .yarns(2, Tone.MID, 1_000_000)
                .build(),
            1);
    List<Band> bands = new BandCover(region, 6, 1, false).bands();
    assertEquals(2, bands.size());
    double[] gaps = new double[3];
    for (int i = 0; i < 3; i++) {
      YarnClass one =
          i == 0
              ? yarn(0, region, new double[] {5, 0, 0})
              : yarn(0, region, new double[] {6, 0, 0}, "not 3", "not 8", "must 9");
      YarnClass other =
          i == 0
              ? yarn(1, region, new double[] {11, 0, 0})
              : yarn(1, region, new double[] {10, 0, 0}, "not 9", "must 8");
      RepeatPrices prices = new RepeatPrices(bands, List.of(one, other), region.pairs(), i < 2);
      double before = prices.best();
      prices.improve(30, AMPLE, () -> false);
      assertTrue(prices.best() >= before);
      gaps[i] = gap(region, prices.floor(region.allPairs(), 2, 1), least(region, one, other));
    }
    double[] were = {549.446, 285.799, 296.638};
    for (int i = 0; i < 3; i++) {
      assertTrue(gaps[i] <= were[i], i + ": " + gaps[i]);
    }
  }

  /** A square and its corner triangles: two kinds of pieces are tolled apart. */
  @Test
  void noWayToPartTwoKindsRepeatsLess() {
    Region region =
        new Region(
            BlanketBuilder.filled(1, 2)
                .motif(PieceKind.SQUARE, round(1000), round(1000))
                .motif(PieceKind.SIDE_TRIANGLE, round(1000))
                .motif(PieceKind.CORNER_TRIANGLE, round(1000), round(1000))
                .yarns(2, Tone.MID, 1_000_000)
                .build(),
            1);
    List<Band> bands = new BandCover(region, 6, 3, false).bands();
    int corner = PieceKind.CORNER_TRIANGLE.ordinal();
    double[] wanted = new double[KINDS];
    wanted[0] = 1;
    wanted[corner] = 1;
    double[] rest = new double[KINDS];
    rest[0] = 1;
    rest[corner] = 3;
    YarnClass one = yarn(0, region, wanted);
    YarnClass other = yarn(1, region, rest);
    RepeatPrices prices = new RepeatPrices(bands, List.of(one, other), region.pairs(), true);
    prices.improve(40, AMPLE, () -> false);
    RepeatFloor floor = prices.floor(region.allPairs(), 2, 0.5);
    double gap = gap(region, floor, least(region, one, other));
    assertTrue(gap <= 91.943, "looser than it was: " + gap);
    // seven moves of all, and two of each kind alone
    double[][] toll = floor.toll()[0];
    assertEquals(7 + 2 + 2, toll.length);
    double[] steps = {-2, -1, -0.5, 0, 0.5, 1, 2};
    for (int line = 0; line < 7; line++) {
      assertEquals(toll[3][0] + 0.5 * steps[line], toll[line][0], 1e-12);
      assertEquals(toll[3][corner] + 0.5 * steps[line], toll[line][corner], 1e-12);
      assertEquals(toll[3][3 - corner], toll[line][3 - corner], 1e-12);
    }
    for (int line = 7; line < 11; line++) {
      double step = 0.5 * (line % 2 == 1 ? -0.7 : 0.7);
      assertEquals(toll[3][0] + (line < 9 ? step : 0), toll[line][0], 1e-12);
      assertEquals(toll[3][corner] + (line < 9 ? 0 : step), toll[line][corner], 1e-12);
    }
    // a yarn of no class has no lines
    assertEquals(0, prices.floor(region.allPairs(), 3, 1).toll()[2].length);
  }

  /** The floor at what is wanted is what the ascent found, at the tolls that it trained. */
  @Test
  void theFloorAtWhatIsWantedIsTheBestFound() {
    Region region =
        new Region(
            BlanketBuilder.straight(5, 5)
                .motif(PieceKind.SQUARE, round(1000))
                .yarns(4, Tone.MID, 1_000_000)
                .build(),
            0);
    boolean[] all = new boolean[25];
    Arrays.fill(all, true);
    YarnClass pair =
        new YarnClass(new int[] {0, 2}, all, new boolean[25], new double[] {4.5, 0, 0});
    YarnClass rare = new YarnClass(new int[] {1}, all, new boolean[25], new double[] {3, 0, 0});
    YarnClass often = new YarnClass(new int[] {3}, all, new boolean[25], new double[] {13, 0, 0});
    List<Band> bands = new BandCover(region, 8, 4, false).bands();
    RepeatPrices prices = new RepeatPrices(bands, List.of(pair, rare, often), region.pairs(), true);
    double before = prices.best();
    prices.improve(0, AMPLE, () -> false);
    prices.improve(9, AMPLE, () -> true);
    assertEquals(before, prices.best());
    prices.improve(40, AMPLE, () -> false);
    assertTrue(prices.best() > before, prices.best() + " after " + before);
    double found = prices.best();
    // sorted anew, the best prices stay
    prices.sort(List.of(pair, rare, often));
    assertEquals(found, prices.best(), 1e-9);
    RepeatFloor floor = prices.floor(region.allPairs(), 4, 1);
    assertEquals(7, floor.toll()[0].length);
    assertEquals(region.allPairs(), floor.total());
    assertEquals(0, floor.least());
    assertEquals(found, atTrained(floor, pair, rare, often), 1e-9);
    // sorted otherwise, each yarn keeps its tolls and the prices stay
    prices.sort(List.of(often, pair, rare));
    assertEquals(found, prices.best(), 1e-9);
    YarnClass zero = new YarnClass(new int[] {0}, all, new boolean[25], new double[] {4.5, 0, 0});
    YarnClass two = new YarnClass(new int[] {2}, all, new boolean[25], new double[] {4.5, 0, 0});
    prices.sort(List.of(two, rare, zero, often));
    assertEquals(found, prices.best(), 1e-9);
    prices.improve(20, AMPLE, () -> false);
    assertTrue(prices.best() >= found);
  }

  private static double atTrained(RepeatFloor floor, YarnClass... classes) {
    double value = floor.base();
    for (YarnClass each : classes) {
      for (int yarn : each.yarns()) {
        value += floor.height()[yarn][3];
        for (int kind = 0; kind < KINDS; kind++) {
          value -= floor.toll()[yarn][3][kind] * each.wanted()[kind];
        }
      }
    }
    return value;
  }

  /** Two strips that lie alike are one band with two copies: both strips' repeats are counted. */
  @Test
  void bandsWithCopiesCountForAll() {
    double[] gaps = new double[2];
    for (int copies = 1; copies <= 2; copies++) {
      Band strip =
          new Band(
              4,
              copies,
              new int[] {0, 1, 2, 3},
              new int[4],
              new int[] {0, 1, 2, 3, 4},
              new int[] {0, 1, 2, 0, 1},
              new int[] {1, 2, 3, 2, 3},
              new double[] {4, 4, 4, 1, 1},
              new boolean[5],
              new double[] {1, 1, 1, 1});
      boolean[] all = {true, true, true, true};
      int places = 4 * copies;
      YarnClass one =
          new YarnClass(new int[] {0}, all, new boolean[4], new double[] {copies, 0, 0});
      YarnClass other =
          new YarnClass(new int[] {1}, all, new boolean[4], new double[] {3 * copies, 0, 0});
      RepeatPrices prices = new RepeatPrices(List.of(strip), List.of(one, other), 5, false);
      prices.improve(60, AMPLE, () -> false);
      RepeatFloor floor = prices.floor(14 * copies, 2, 1);
      double[] least = new double[places + 1];
      Arrays.fill(least, Double.POSITIVE_INFINITY);
      for (int set = 0; set < 1 << places; set++) {
        double repeats = 0;
        for (int copy = 0; copy < copies; copy++) {
          for (int pair = 0; pair < 5; pair++) {
            int first = set >> 4 * copy + strip.first()[pair] & 1;
            int second = set >> 4 * copy + strip.second()[pair] & 1;
            repeats += first == second ? strip.weight()[pair] : 0;
          }
        }
        int count = Integer.bitCount(set);
        least[count] = Math.min(least[count], repeats);
      }
      for (int count = 0; count <= places; count++) {
        int[][] counts = new int[KINDS][2];
        counts[0] = new int[] {count, places - count};
        double proved = RepeatFloorTest.floor(floor, counts);
        assertTrue(proved <= least[count] + 1e-9, count + ": " + proved + ", " + least[count]);
        gaps[copies - 1] += least[count] - proved;
      }
    }
    assertTrue(gaps[0] <= 12.289, "one strip: " + gaps[0]);
    assertTrue(gaps[1] <= 38.373, "two strips: " + gaps[1]);
  }
}
