package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Draws are as likely as they are said to be, and the same for a seed. */
class DrawsTest {

  private static final int MANY = 20_000;

  @Test
  void wholeNumbersAreAllAsLikely() {
    Draws draws = new Draws(3);
    int[] often = new int[7];
    for (int i = 0; i < MANY; i++) {
      often[draws.below(7)]++;
    }
    for (int each : often) {
      assertEquals(MANY / 7.0, each, 200);
    }
  }

  /** By the upper half of 64 random bits: part of what a seed gives on every machine. */
  @Test
  void aSeedGivesTheNumbersThatItGaveBefore() {
    Draws draws = new Draws(11);
    SplittableRandom random = new SplittableRandom(11);
    for (int bound = 1; bound < 50; bound++) {
      long upper = random.nextLong() >>> 32;
      assertEquals(upper * bound >>> 32, draws.below(bound));
      assertEquals(random.nextDouble(), draws.unit());
      long level = random.nextLong() >>> 53;
      assertEquals(-StrictMath.log((level + 0.5) / 2048), draws.exponential());
    }
  }

  @Test
  void thresholdsAreExponential() {
    Draws draws = new Draws(5);
    double sum = 0;
    int above = 0;
    for (int i = 0; i < MANY; i++) {
      double drawn = draws.exponential();
      assertTrue(drawn > 0 && drawn <= Draws.MOST);
      sum += drawn;
      above += drawn > 2 ? 1 : 0;
    }
    assertEquals(1, sum / MANY, 0.02);
    assertEquals(Math.exp(-2), above / (double) MANY, 0.01);
    assertEquals(Math.log(2 * 2048), Draws.MOST, 1e-9);
  }

  @Test
  void lossesAreTakenAsOftenAsTheTemperatureSays() {
    Draws draws = new Draws(6);
    int taken = 0;
    for (int i = 0; i < MANY; i++) {
      taken += draws.accept(300, 200) ? 1 : 0;
    }
    assertEquals(Math.exp(-1.5), taken / (double) MANY, 0.01);
    assertTrue(draws.accept(0, 1e-9) && draws.accept(-1, 0));
    assertFalse(draws.accept(1, 1e-9));
    // gains take no draw, losses take one
    Draws same = new Draws(6);
    for (int i = 0; i < MANY; i++) {
      same.exponential();
      same.accept(-1, 200);
      same.accept(0, 200);
    }
    same.exponential();
    assertEquals(same.below(1 << 30), draws.below(1 << 30));
  }

  @Test
  void tilesHaveSourcesOfTheirOwn() {
    Set<Integer> first = new HashSet<>();
    for (long seed = 0; seed < 5; seed++) {
      for (long phase = 0; phase < 5; phase++) {
        for (int tile = 0; tile < 5; tile++) {
          int drawn = Draws.of(seed, phase, tile).below(Integer.MAX_VALUE);
          assertEquals(drawn, Draws.of(seed, phase, tile).below(Integer.MAX_VALUE));
          first.add(drawn);
        }
      }
    }
    assertEquals(125, first.size());
    long start = (3L << 40) + (2L << 16) + 1;
    SplittableRandom random = new SplittableRandom(start).split();
    assertEquals(
        (random.nextLong() >>> 32) * 1000 >>> 32, Draws.of(3, 2, 1).below(1000), "of the seed 3");
    assertNotEquals(first.size(), 1);
  }
}
