package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.brief.Brief;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.problem.Problem;
import org.junit.jupiter.api.Test;

/** Exchanges keep their books, never overdraw more than before, and make nothing dearer. */
class CountExchangeTest {

  private Problem problem;
  private int[] slotOfGroup;
  private int[] sizes;
  private int[][] counts;
  private int[] surplus;
  private long[] used;
  private ExpectedRepeats repeats;
  private EarlierCounts earlier;

  private CountExchange exchange(long seed) {
    List<int[]> groups = CountPlan.groups(problem, problem.slots().free());
    int[] yarn = RandomDraws.of(problem, new SplittableRandom(seed), false);
    slotOfGroup = groups.stream().mapToInt(group -> group[0]).toArray();
    sizes = groups.stream().mapToInt(group -> group.length).toArray();
    counts = TinyProblems.counts(problem, groups, yarn);
    surplus = IntStream.of(problem.balance().targets()).map(target -> -target).toArray();
    StockUse stock = new StockUse(problem);
    stock.reset(yarn);
    used = stock.used();
    for (int slot = 0; slot < yarn.length; slot++) {
      surplus[problem.slots().layer()[slot] * problem.yarns() + yarn[slot]] += weight(slot);
    }
    repeats = new ExpectedRepeats(problem, groups, yarn);
    int[] kept = RandomDraws.of(problem, new SplittableRandom(~seed), false);
    // now and then with an earlier plan, whose rounds cost as much as some repeats
    long changeCost = 5L * problem.prices().step();
    earlier = EarlierCounts.of(problem, groups, seed % 3 == 0 ? kept : null, changeCost);
    return new CountExchange(
        problem,
        problem.domains(),
        new Draws(seed),
        slotOfGroup,
        counts,
        surplus,
        used,
        earlier,
        repeats);
  }

  private int weight(int slot) {
    return problem.slots().weight(problem.slots().orbit()[slot]);
  }

  private long over() {
    long over = 0;
    for (int yarn = 0; yarn < used.length; yarn++) {
      over += Math.max(0, used[yarn] - problem.supply().usable()[yarn]);
    }
    return over;
  }

  private long cost() {
    long cost = Math.round(repeats.of(counts));
    for (int yarn = 0; yarn < used.length; yarn++) {
      cost += problem.supply().leewayLoss(yarn, used[yarn]);
    }
    for (int i = 0; i < surplus.length; i++) {
      cost += problem.balance().cost()[i / used.length] * Math.abs(surplus[i]);
    }
    return cost;
  }

  /** By how much surplus and use differ from before is what the counts differ by. */
  private void assertBooks(int[][] countsWere, int[] surplusWas, long[] usedWas, String where) {
    int[] surplusNow = surplusWas.clone();
    long[] usedNow = usedWas.clone();
    for (int group = 0; group < counts.length; group++) {
      int slot = slotOfGroup[group];
      assertEquals(sizes[group], IntStream.of(counts[group]).sum(), where);
      for (int yarn = 0; yarn < used.length; yarn++) {
        int more = counts[group][yarn] - countsWere[group][yarn];
        assertTrue(counts[group][yarn] >= 0, where);
        assertTrue(counts[group][yarn] == 0 || problem.domains().allows(slot, yarn), where);
        surplusNow[problem.slots().layer()[slot] * used.length + yarn] += more * weight(slot);
        usedNow[yarn] += more * problem.supply().need(slot, yarn);
      }
    }
    assertArrayEquals(surplusNow, surplus, where);
    assertArrayEquals(usedNow, used, where);
  }

  @Test
  void booksAreKeptAndNothingGetsWorse() {
    int within = 0;
    int bettered = 0;
    int shaken = 0;
    for (long seed = 1; seed <= 40; seed++) {
      problem = RandomDraws.problem(brief(seed)).filter(p -> p.pile().isEmpty()).orElse(null);
      if (problem == null) {
        continue;
      }
      String where = "seed " + seed;
      CountExchange exchange = exchange(seed);
      int[][] countsWere = Arrays.stream(counts).map(int[]::clone).toArray(int[][]::new);
      int[] surplusWas = surplus.clone();
      long[] usedWas = used.clone();
      assertEquals(cost(), exchange.cost(), where);
      assertEquals(over(), exchange.overdrawnLength(), where);
      CountExchange.Standing start = exchange.standing();
      assertEquals(cost(), start.cost(), where);
      long overBefore = over();
      boolean settled = exchange.settle(200);
      assertEquals(over() == 0, settled, where);
      assertTrue(over() <= overBefore, where);
      assertBooks(countsWere, surplusWas, usedWas, where);
      within += settled ? 1 : 0;
      for (int turn = 0; turn < 20; turn++) {
        long over = over();
        long cost = cost();
        exchange.improve(5);
        assertTrue(over() <= over, where);
        // with an earlier plan what is dear may be worth it
        boolean dearer = over() == over && cost() > cost + repeatsRound();
        assertTrue(earlier.any() || !dearer, where + ": " + cost + ", then " + cost());
        bettered += cost() < cost ? 1 : 0;
      }
      assertBooks(countsWere, surplusWas, usedWas, where);
      long over = over();
      int[][] before = Arrays.stream(counts).map(int[]::clone).toArray(int[][]::new);
      exchange.shake(10);
      assertTrue(over() <= over, where);
      assertBooks(countsWere, surplusWas, usedWas, where);
      shaken += Arrays.deepEquals(before, counts) ? 0 : 1;
      exchange.restore(start);
      assertTrue(Arrays.deepEquals(countsWere, counts), where);
      assertArrayEquals(surplusWas, surplus, where);
      assertArrayEquals(usedWas, used, where);
    }
    assertTrue(within > 5 && bettered > 15 && shaken > 5, within + ", " + bettered + ", " + shaken);
  }

  /** Expected repeats are rounded for each exchange and for the whole. */
  private long repeatsRound() {
    return repeats.any() ? 5 : 0;
  }

  private static Brief brief(long seed) {
    Brief drawn = RandomBriefs.of(seed, 4, 6);
    return seed % 4 == 0 ? RandomLooks.of(seed, drawn) : drawn;
  }
}
