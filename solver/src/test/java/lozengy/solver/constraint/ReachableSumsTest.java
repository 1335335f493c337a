package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ReachableSumsTest {

  @Test
  void isTheGreatestSumThatBruteForceFinds() {
    for (int seed = 0; seed < 1_000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long[] lengths = random.longs(3, 0, 40).toArray();
      int[] counts = random.ints(3, 0, 6).toArray();
      long limit = random.nextLong(300);
      long best = 0;
      for (int a = 0; a <= counts[0]; a++) {
        for (int b = 0; b <= counts[1]; b++) {
          for (int c = 0; c <= counts[2]; c++) {
            long sum = a * lengths[0] + b * lengths[1] + c * lengths[2];
            best = sum <= limit ? Math.max(best, sum) : best;
          }
        }
      }
      assertEquals(best, ReachableSums.most(lengths, counts, limit, 1_000), "seed " + seed);
    }
  }

  @Test
  void aboveTheMostSumsOnlyTheUnitCounts() {
    long[] lengths = {600, 1000};
    int[] counts = {9, 9};
    assertEquals(1_600, ReachableSums.most(lengths, counts, 1_799, 100));
    assertEquals(1_600, ReachableSums.most(lengths, counts, 1_799, 8));
    assertEquals(1_200, ReachableSums.most(lengths, counts, 1_500, 8));
    assertEquals(1_400, ReachableSums.most(lengths, counts, 1_500, 7));
  }
}
