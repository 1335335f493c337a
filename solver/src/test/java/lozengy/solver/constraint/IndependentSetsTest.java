package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IndependentSetsTest {

  @Test
  void weighsWhatBruteForceWeighs() {
    for (int seed = 0; seed < 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int pieces = 2 + random.nextInt(10);
      int[][] edges =
          IntStream.range(0, random.nextInt(2 * pieces))
              .mapToObj(i -> new int[] {random.nextInt(pieces), random.nextInt(pieces)})
              // even with odd: bipartite
              .filter(edge -> edge[0] % 2 != edge[1] % 2)
              .toArray(int[][]::new);
      Pairs seams =
          new Pairs(
              IntStream.range(0, edges.length).map(i -> edges[i][0]).toArray(),
              IntStream.range(0, edges.length).map(i -> edges[i][1]).toArray());
      long[] weights = random.longs(pieces, 0, 20).toArray();
      long best = 0;
      for (int set = 0; set < 1 << pieces; set++) {
        best = Math.max(best, weight(seams, weights, set));
      }
      assertEquals(best, IndependentSets.heaviest(seams, weights), "seed " + seed);
    }
  }

  private static long weight(Pairs seams, long[] weights, int set) {
    for (int i = 0; i < seams.size(); i++) {
      if ((set >> seams.first()[i] & set >> seams.second()[i] & 1) != 0) {
        return -1;
      }
    }
    return IntStream.range(0, weights.length)
        .filter(i -> (set >> i & 1) != 0)
        .mapToLong(i -> weights[i])
        .sum();
  }

  @Test
  void neverLessThanASetWeighsWhateverTheGraph() {
    Pairs triangle = new Pairs(new int[] {0, 0, 1}, new int[] {1, 2, 2});
    assertTrue(IndependentSets.heaviest(triangle, new long[] {1, 2, 4}) >= 4);
  }

  @ParameterizedTest
  @CsvSource({"9, 11, 219, 120", "20, 25, 1046, 546"})
  void outerSquaresOfAnOnPointLayoutAreOneSideAndAllElseTheOther(
      int across, int down, int pieces, int others) {
    Layout layout = Layout.of(new LayoutSize(Setting.ON_POINT, across, down, true, true));
    long[] ones = new long[layout.places().size()];
    Arrays.fill(ones, 1);
    assertEquals(pieces, ones.length);
    assertEquals(others, IndependentSets.heaviest(layout.seams(), ones));
  }
}
