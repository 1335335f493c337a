package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What packs cost at the least by totals: exactly for covers of which any two lie one within the
 * other or apart, by dynamic programming over what is spent, from the innermost outwards (the
 * multiple-choice knapsack; Kellerer, Pferschy and Pisinger, "Knapsack Problems", 2004, chapter 11;
 * from memory). Where balls cost too much to be reckoned out one by one, costs are rounded down.
 */
final class Floors {

  private static final int MOST_STEPS = 2_000;

  /** Spent for that, no balls hold what covers ask for. */
  private static final long NONE = Long.MIN_VALUE;

  private final Shades shades;
  private final List<Cover> covers;
  private final long[] floors;
  private final long unit;
  private long ofAll;

  /**
   * Some yarns.
   *
   * @param yarns which
   * @param held by units spent on more balls than the least, the most mm that they hold within all
   *     covers among them; {@link #NONE} where that is too little for one
   */
  private record Group(BitSet yarns, long[] held) {

    Group with(Group other) {
      BitSet both = (BitSet) yarns.clone();
      both.or(other.yarns);
      long[] sum = new long[held.length + other.held.length - 1];
      Arrays.fill(sum, NONE);
      for (int here = 0; here < held.length; here++) {
        for (int there = 0; held[here] != NONE && there < other.held.length; there++) {
          if (other.held[there] != NONE) {
            sum[here + there] = Math.max(sum[here + there], held[here] + other.held[there]);
          }
        }
      }
      return new Group(both, sum);
    }

    /** The least that is spent; all of it where even that is too little. */
    int spent() {
      return IntStream.range(0, held.length)
          .filter(spent -> held[spent] != NONE)
          .findFirst()
          .orElse(held.length - 1);
    }
  }

  /** O(covers x (steps of cost)^2). */
  Floors(Shades shades, List<Cover> covers) {
    this.shades = shades;
    this.covers = covers;
    this.floors = new long[covers.size()];
    long gcd = 0;
    long most = 0;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      gcd = gcd(gcd, shades.cost(yarn));
      most += (shades.most(yarn) - shades.least(yarn)) * shades.cost(yarn);
    }
    gcd = Math.max(1, gcd);
    this.unit = most / gcd > MOST_STEPS ? most / MOST_STEPS + 1 : gcd;
    for (int cover = 0; cover < covers.size(); cover++) {
      reckon(List.of(cover));
    }
    reckon(family(Comparator.comparingInt((Integer at) -> covers.get(at).yarns().cardinality())));
    reckon(family(Comparator.comparingLong((Integer at) -> -floors[at])));
  }

  /** The least that a cover's yarns cost. */
  long of(int cover) {
    return floors[cover];
  }

  /** No pack costs less. */
  long ofAll() {
    return ofAll;
  }

  /** Covers of which any two lie one within the other or apart, taken in an order. */
  private List<Integer> family(Comparator<Integer> order) {
    List<Integer> family = new ArrayList<>();
    IntStream.range(0, covers.size())
        .boxed()
        .sorted(order)
        .filter(cover -> family.stream().allMatch(other -> nested(cover, other)))
        .forEach(family::add);
    return family;
  }

  private boolean nested(int one, int other) {
    BitSet both = (BitSet) covers.get(one).yarns().clone();
    both.and(covers.get(other).yarns());
    return both.isEmpty()
        || both.equals(covers.get(one).yarns())
        || both.equals(covers.get(other).yarns());
  }

  /** Raises the floors by what the covers of a family ask for together. */
  private void reckon(List<Integer> family) {
    List<Group> groups = new ArrayList<>();
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      groups.add(group(yarn));
    }
    List<Integer> outwards = new ArrayList<>(family);
    outwards.sort(Comparator.comparingInt(cover -> covers.get(cover).yarns().cardinality()));
    for (int cover : outwards) {
      BitSet yarns = covers.get(cover).yarns();
      List<Group> within = groups.stream().filter(each -> each.yarns().intersects(yarns)).toList();
      Group all = within.stream().reduce(Group::with).orElseThrow();
      for (int spent = 0; spent < all.held().length; spent++) {
        all.held()[spent] =
            all.held()[spent] < covers.get(cover).millimetres() ? NONE : all.held()[spent];
      }
      groups.removeAll(within);
      groups.add(all);
      floors[cover] = Math.max(floors[cover], cost(all));
    }
    ofAll = Math.max(ofAll, groups.stream().mapToLong(this::cost).sum());
  }

  private long cost(Group group) {
    long least =
        group.yarns().stream().mapToLong(yarn -> shades.least(yarn) * shades.cost(yarn)).sum();
    return least + group.spent() * unit;
  }

  private Group group(int yarn) {
    int few = shades.least(yarn);
    int most = shades.most(yarn);
    long[] held = new long[(int) ((most - few) * shades.cost(yarn) / unit) + 1];
    Arrays.fill(held, NONE);
    for (int balls = few; balls <= most; balls++) {
      int spent = (int) ((balls - few) * shades.cost(yarn) / unit);
      held[spent] = Math.max(held[spent], shades.usable(yarn, balls));
    }
    for (int spent = 1; spent < held.length; spent++) {
      held[spent] = Math.max(held[spent], held[spent - 1]);
    }
    BitSet alone = new BitSet();
    alone.set(yarn);
    return new Group(alone, held);
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
