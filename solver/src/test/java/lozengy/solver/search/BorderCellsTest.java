package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.brief.Part;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/**
 * What cells cost is what the whole costs where there is nothing but borders; and the best of it.
 */
class BorderCellsTest {

  /** Squares of one round and no wish for variety, so that cells leave nothing out. */
  private static Problem borders(long seed, int across, int down) {
    SplittableRandom random = new SplittableRandom(seed);
    BlanketBuilder builder =
        random.nextBoolean()
            ? BlanketBuilder.straight(across, down)
            : BlanketBuilder.open(across, down);
    builder.motif(PieceKind.SQUARE, BlanketBuilder.round(1000 + random.nextInt(500)));
    for (int yarn = 0; yarn < 3; yarn++) {
      builder.yarn(Tone.DARK, 1000L * (1 + random.nextInt(across * down)));
    }
    if (random.nextBoolean()) {
      builder.minContrast(20 + random.nextInt(40));
    }
    if (random.nextBoolean()) {
      builder.ban("r1c1", "B");
    }
    builder.prefer(
        Map.of(
            Part.VARIETY, 0.0,
            Part.SPREAD, 3.0,
            Part.CONTRAST, (double) random.nextInt(3),
            Part.BALANCE, 2.0,
            Part.LEEWAY, (double) random.nextInt(3)));
    return ProblemCompiler.compile(builder.build(), Optional.empty());
  }

  @Test
  void costWhatTheWholeCosts() {
    int hard = 0;
    for (long seed = 1; seed <= 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Problem plain = borders(seed, 3, 3);
      Problem problem = seed % 2 == 0 ? plain : withOwnCosts(plain, random);
      BorderCells cells = new BorderCells(problem);
      assertEquals(problem.slots().orbits(), cells.size());
      for (int turn = 0; turn < 10; turn++) {
        int[] yarn = RandomDraws.of(problem, random, turn % 2 == 0);
        cells.begin(yarn);
        assertArrayEquals(yarn, cells.yarns());
        Cost cost = Cost.of(problem, yarn, 1);
        assertEquals(cost.total() - problem.costs().constant(), cells.cost(), "seed " + seed);
        hard += cost.hard() > 0 ? 1 : 0;
      }
    }
    assertTrue(hard > 100, hard + " with broken rules");
  }

  private static Problem withOwnCosts(Problem problem, SplittableRandom random) {
    int[] own = new int[problem.slots().count() * problem.yarns()];
    Arrays.setAll(own, i -> random.nextInt(1000));
    return problem.withCosts(problem.costs().withUnary(own));
  }

  @Test
  void whatABorderMayNotTakeCostsAsMuchAsABrokenRule() {
    Problem problem =
        ProblemCompiler.compile(
            BlanketBuilder.straight(1, 1)
                .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
                .yarns(2, Tone.DARK, 100_000)
                .ban("r1c1", "B")
                .build(),
            Optional.empty());
    BorderCells cells = new BorderCells(problem);
    cells.begin(new int[] {0});
    long allowed = cells.cost() - Cost.of(problem, new int[] {0}, 1).total();
    cells.begin(new int[] {1});
    long barred = cells.cost() - Cost.of(problem, new int[] {1}, 1).total();
    assertEquals(problem.prices().hard(), barred - allowed);
    // drawn at random it never is
    for (long seed = 1; seed <= 20; seed++) {
      cells.beginAtRandom(new Draws(seed));
      assertEquals(0, cells.yarns()[0]);
    }
  }

  /** Of six borders in three yarns, by all 729 ways; joined in pairs by all 27. */
  @Test
  void annealingFindsTheBestOfAllWays() {
    int joinedCells = 3;
    for (long seed = 1; seed <= 12; seed++) {
      Problem problem = borders(seed, 3, 2);
      Draws draws = new Draws(seed);
      BorderCells single = new BorderCells(problem);
      assertEquals(best(single), annealed(single, draws), "seed " + seed);
      int[] cellOf = IntStream.range(0, single.size()).map(i -> i * 7 % joinedCells).toArray();
      BorderCells joined = new BorderCells(single, cellOf, joinedCells);
      assertEquals(best(joined), annealed(joined, draws), "joined, seed " + seed);
      assertEquals(best(joined), joinedBest(single, cellOf, joinedCells), "seed " + seed);
    }
  }

  /** The best of a few goes, of which one may end where no single step leads on. */
  private static long annealed(BorderCells cells, Draws draws) {
    long best = Long.MAX_VALUE;
    for (int i = 0; i < 20; i++) {
      cells.beginAtRandom(draws);
      long found = cells.anneal(2, 0.1, 300, draws);
      assertEquals(found, cells.cost());
      best = Math.min(best, found);
    }
    return best;
  }

  private static long best(BorderCells cells) {
    long best = Long.MAX_VALUE;
    int ways = (int) Math.pow(3, cells.size());
    int[] before = cells.yarns();
    for (int way = 0; way < ways; way++) {
      cells.begin(digits(way, cells.size()));
      best = Math.min(best, cells.cost());
    }
    cells.begin(before);
    return best;
  }

  private static long joinedBest(BorderCells single, int[] cellOf, int cells) {
    long best = Long.MAX_VALUE;
    for (int way = 0; way < Math.pow(3, cells); way++) {
      int[] yarns = digits(way, cells);
      single.begin(IntStream.of(cellOf).map(cell -> yarns[cell]).toArray());
      best = Math.min(best, single.cost());
    }
    return best;
  }

  private static int[] digits(int number, int count) {
    int[] digits = new int[count];
    int rest = number;
    for (int i = 0; i < count; i++) {
      digits[i] = rest % 3;
      rest /= 3;
    }
    return digits;
  }

  /** The other rounds take of each yarn what their layers' targets say. */
  @Test
  void stockIsSharedWithTheOtherRounds() {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    Arrays.stream(Part.values()).forEach(part -> weights.put(part, 0.0));
    weights.put(Part.VARIETY, 1.0);
    Problem problem =
        ProblemCompiler.compile(
            BlanketBuilder.straight(2, 2)
                .motif(PieceKind.SQUARE, BlanketBuilder.round(3000), BlanketBuilder.round(1000))
                .yarns(2, Tone.DARK, 8000)
                .prefer(weights)
                .build(),
            Optional.empty());
    // of four centres of 3 m two in each yarn leave 2 m of it, for two borders
    assertArrayEquals(new int[] {2, 2, 2, 2}, problem.balance().targets());
    BorderCells cells = new BorderCells(problem);
    assertEquals(0, overdrawn(problem, cells, 0, 1, 1, 0));
    assertEquals(problem.supply().overdrawLoss(0, 9000), overdrawn(problem, cells, 0, 1, 0, 0));
    assertEquals(problem.supply().overdrawLoss(1, 10_000), overdrawn(problem, cells, 1, 1, 1, 1));
  }

  private static long overdrawn(Problem problem, BorderCells cells, int... yarn) {
    cells.begin(yarn);
    long all = cells.cost();
    int[] other = IntStream.of(yarn).map(y -> 1 - y).toArray();
    cells.begin(other);
    assertEquals(all, cells.cost());
    return all - seams(yarn) * problem.prices().hard();
  }

  private static final int[][] SEAMS = {{0, 1}, {0, 2}, {1, 3}, {2, 3}};

  private static long seams(int[] yarn) {
    long same = 0;
    for (int[] seam : SEAMS) {
      same += yarn[seam[0]] == yarn[seam[1]] ? 1 : 0;
    }
    return same;
  }
}
