package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * What packs cost at the least by totals: for one cover exactly, by dynamic programming over what
 * is spent (the multiple-choice knapsack; Kellerer, Pferschy and Pisinger, "Knapsack Problems",
 * 2004, chapter 11; from memory), and for all by covers that have no yarn in common. Where balls
 * cost too much to be reckoned out one by one, costs are rounded down.
 */
final class Floors {

  private static final int MOST_STEPS = 20_000;

  private final Shades shades;
  private final List<Cover> covers;
  private final long[] floors;

  /** O(covers x yarns x balls x steps of cost). */
  Floors(Shades shades, List<Cover> covers) {
    this.shades = shades;
    this.covers = covers;
    this.floors = covers.stream().mapToLong(this::cost).toArray();
  }

  /** The least that a cover's yarns cost. */
  long of(int cover) {
    return floors[cover];
  }

  /** No pack costs less. */
  long ofAll() {
    Comparator<Integer> small =
        Comparator.comparingInt((Integer cover) -> covers.get(cover).yarns().cardinality());
    Comparator<Integer> dear = Comparator.comparingLong((Integer cover) -> -floors[cover]);
    return Math.max(disjoint(small), disjoint(dear));
  }

  private long disjoint(Comparator<Integer> order) {
    List<Integer> sorted = new ArrayList<>();
    for (int cover = 0; cover < covers.size(); cover++) {
      sorted.add(cover);
    }
    sorted.sort(order);
    BitSet taken = new BitSet();
    long sum = 0;
    for (int cover : sorted) {
      if (!covers.get(cover).yarns().intersects(taken)) {
        taken.or(covers.get(cover).yarns());
        sum += floors[cover];
      }
    }
    for (int yarn = taken.nextClearBit(0);
        yarn < shades.count();
        yarn = taken.nextClearBit(yarn + 1)) {
      sum += shades.least(yarn) * shades.cost(yarn);
    }
    return sum;
  }

  private long cost(Cover cover) {
    int[] yarns = cover.yarns().stream().toArray();
    long base = 0;
    long missing = cover.millimetres();
    long unit = 0;
    long most = 0;
    for (int yarn : yarns) {
      base += shades.least(yarn) * shades.cost(yarn);
      missing -= shades.usable(yarn, shades.least(yarn));
      unit = gcd(unit, shades.cost(yarn));
      most += (shades.most(yarn) - shades.least(yarn)) * shades.cost(yarn);
    }
    unit = most / Math.max(1, unit) > MOST_STEPS ? most / MOST_STEPS + 1 : Math.max(1, unit);
    // the most that can be added for so many units
    long[] added = new long[(int) (most / unit) + 1];
    for (int yarn : yarns) {
      long[] before = added.clone();
      int least = shades.least(yarn);
      for (int more = 1; more <= shades.most(yarn) - least; more++) {
        int steps = (int) (more * shades.cost(yarn) / unit);
        long gain = shades.usable(yarn, least + more) - shades.usable(yarn, least);
        for (int spent = steps; spent < added.length; spent++) {
          added[spent] = Math.max(added[spent], before[spent - steps] + gain);
        }
      }
    }
    for (int spent = 0; spent < added.length; spent++) {
      if (added[spent] >= missing) {
        return base + spent * unit;
      }
    }
    return base + most;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
