package lozengy.solver.search;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The borders in cells, each of one yarn: single borders, or as many together as are to be alike.
 * What cells cost by their yarns, borders alone, and an annealing of it: repeats, seams, balance,
 * and stock, of which the other layers take what their targets say.
 */
final class BorderCells {

  /** Steps between two changes of temperature. */
  private static final int STRIDE = 64;

  /** Of so many steps one gives a cell another yarn; all others exchange two. */
  private static final int CHANGE_EVERY = 3;

  /** What two cells have in common: cost of the same yarn, seams, pairs that may clash. */
  private record Link(int other, int light, int seams, int clashes) {

    private Link and(Link more) {
      return new Link(other, light + more.light, seams + more.seams, clashes + more.clashes);
    }
  }

  private final Problem problem;
  private final int yarns;
  private final int[] usable;
  private final Link[][] links;
  private final long[] unary;
  private final long[] need;
  private final int[] weight;
  private final long[] clashCost;
  private final long[] usedElsewhere;
  private final long[] used;
  private final int[] surplus;
  private final int[] yarn;
  private final double bordersInCell;

  /** Each border as a cell, in the order of the orbits. */
  BorderCells(Problem problem) {
    this.problem = problem;
    this.yarns = problem.yarns();
    this.bordersInCell = 1;
    int cells = problem.slots().orbits();
    this.links = new Link[cells][];
    this.unary = new long[cells * yarns];
    this.need = new long[cells * yarns];
    this.weight = new int[cells];
    this.clashCost = new long[yarns * yarns];
    this.usedElsewhere = usedElsewhere(problem);
    this.used = new long[yarns];
    this.surplus = new int[yarns];
    this.yarn = new int[cells];
    boolean[] any = new boolean[yarns];
    int[] own = problem.costs().unary();
    for (int cell = 0; cell < cells; cell++) {
      int slot = problem.slots().border(cell);
      weight[cell] = problem.slots().weight(cell);
      for (int y = 0; y < yarns; y++) {
        boolean may = problem.domains().allows(slot, y);
        any[y] |= may;
        unary[cell * yarns + y] = may ? 0 : problem.prices().hard();
        unary[cell * yarns + y] += own == null ? 0 : own[slot * yarns + y];
        need[cell * yarns + y] = problem.supply().need(slot, y);
      }
      links[cell] = linksOf(slot);
    }
    this.usable = IntStream.range(0, yarns).filter(y -> any[y]).toArray();
  }

  /**
   * Joins cells.
   *
   * @param cellOf by cell the one that it goes into
   * @param cells how many these are
   */
  BorderCells(BorderCells single, int[] cellOf, int cells) {
    this.problem = single.problem;
    this.yarns = single.yarns;
    this.bordersInCell = (double) cellOf.length / cells;
    this.clashCost = single.clashCost;
    this.usedElsewhere = single.usedElsewhere;
    this.usable = single.usable;
    this.links = new Link[cells][];
    this.unary = new long[cells * yarns];
    this.need = new long[cells * yarns];
    this.weight = new int[cells];
    this.used = new long[yarns];
    this.surplus = new int[yarns];
    this.yarn = new int[cells];
    Link[][] between = new Link[cells][cells];
    for (int from = 0; from < cellOf.length; from++) {
      int cell = cellOf[from];
      weight[cell] += single.weight[from];
      for (int y = 0; y < yarns; y++) {
        unary[cell * yarns + y] += single.unary[from * yarns + y];
        need[cell * yarns + y] += single.need[from * yarns + y];
      }
      for (Link link : single.links[from]) {
        int with = cellOf[link.other];
        Link moved = new Link(with, link.light, link.seams, link.clashes);
        between[cell][with] = between[cell][with] == null ? moved : between[cell][with].and(moved);
      }
    }
    for (int cell = 0; cell < cells; cell++) {
      Link within = between[cell][cell];
      between[cell][cell] = null;
      for (int y = 0; y < yarns && within != null; y++) {
        // each pair within the cell is a link of both its borders
        unary[cell * yarns + y] += cost(within, y, y) / 2;
      }
      links[cell] = Arrays.stream(between[cell]).filter(Objects::nonNull).toArray(Link[]::new);
    }
  }

  private Link[] linksOf(int slot) {
    PairCosts pairs = problem.costs().pairs();
    Clashes clashes = problem.clashes();
    Slots slots = problem.slots();
    Map<Integer, Link> found = new TreeMap<>();
    for (int i = pairs.lightStart()[slot]; i < pairs.lightStart()[slot + 1]; i++) {
      add(found, new Link(slots.orbit()[pairs.lightSlot()[i]], pairs.lightCost()[i], 0, 0));
    }
    for (int i = pairs.seamStart()[slot]; i < pairs.seamStart()[slot + 1]; i++) {
      add(found, new Link(slots.orbit()[pairs.seamSlot()[i]], 0, 1, 0));
    }
    for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1]; i++) {
      if (slots.layer()[clashes.slot()[i]] == 0) {
        int with = slots.orbit()[clashes.slot()[i]];
        add(found, new Link(with, 0, 0, clashes.times()[i]));
        for (int k = 0; k < clashCost.length; k++) {
          boolean bars = clashes.bars()[clashes.relation()[i]][k];
          clashCost[k] = bars ? problem.prices().hard() : clashCost[k];
        }
      }
    }
    return found.values().toArray(Link[]::new);
  }

  private static void add(Map<Integer, Link> found, Link link) {
    found.merge(link.other, link, Link::and);
  }

  /** Millimetres of each yarn that the other layers take if they keep to their targets. */
  private static long[] usedElsewhere(Problem problem) {
    int yarns = problem.yarns();
    Slots slots = problem.slots();
    int layers = problem.balance().cost().length;
    double[] needs = new double[layers * yarns];
    int[] sizes = new int[layers];
    for (int slot = 0; slot < slots.count(); slot++) {
      sizes[slots.layer()[slot]]++;
      for (int y = 0; y < yarns; y++) {
        needs[slots.layer()[slot] * yarns + y] += problem.supply().need(slot, y);
      }
    }
    long[] used = problem.supply().fixedUse().clone();
    for (int i = yarns; i < needs.length; i++) {
      used[i % yarns] +=
          (long) (problem.balance().targets()[i] * needs[i] / Math.max(1, sizes[i / yarns]));
    }
    return used;
  }

  /** How many cells. */
  int size() {
    return yarn.length;
  }

  /** The yarn of each cell. */
  int[] yarns() {
    return yarn.clone();
  }

  /** Gives each cell a yarn. */
  void begin(int[] with) {
    for (int y = 0; y < yarns; y++) {
      surplus[y] = -problem.balance().targets()[y];
      used[y] = usedElsewhere[y];
    }
    for (int cell = 0; cell < yarn.length; cell++) {
      yarn[cell] = with[cell];
      count(cell, 1);
    }
  }

  /** Gives each cell any yarn. */
  void beginAtRandom(Draws draws) {
    begin(IntStream.range(0, size()).map(cell -> usable[draws.below(usable.length)]).toArray());
  }

  private void count(int cell, int by) {
    surplus[yarn[cell]] += by * weight[cell];
    used[yarn[cell]] += by * need[cell * yarns + yarn[cell]];
  }

  private void set(int cell, int to) {
    count(cell, -1);
    yarn[cell] = to;
    count(cell, 1);
  }

  /** The cost from scratch. */
  long cost() {
    long cost = 0;
    for (int cell = 0; cell < yarn.length; cell++) {
      cost += unary[cell * yarns + yarn[cell]];
      for (Link link : links[cell]) {
        cost += link.other > cell ? cost(link, yarn[cell], yarn[link.other]) : 0;
      }
    }
    for (int y = 0; y < yarns; y++) {
      cost += problem.balance().cost()[0] * Math.abs(surplus[y]) + stock(y, used[y]);
    }
    return cost;
  }

  private long cost(Link link, int a, int b) {
    return (a == b ? link.light : 0)
        + (long) link.seams * problem.costs().pairs().seamCost()[a * yarns + b]
        + link.clashes * clashCost[a * yarns + b];
  }

  /** What it costs beside the other cells that a cell changes its yarn. */
  private long change(int cell, int from, int to) {
    long delta = unary[cell * yarns + to] - unary[cell * yarns + from];
    for (Link link : links[cell]) {
      int with = yarn[link.other];
      delta += with == to ? link.light : with == from ? -link.light : 0;
      if ((link.seams | link.clashes) != 0) {
        int[] seam = problem.costs().pairs().seamCost();
        delta += (long) link.seams * (seam[to * yarns + with] - seam[from * yarns + with]);
        delta += link.clashes * (clashCost[to * yarns + with] - clashCost[from * yarns + with]);
      }
    }
    return delta;
  }

  private long stock(int y, long use) {
    return problem.supply().leewayLoss(y, use) + problem.supply().overdrawLoss(y, use);
  }

  /** What it costs that one yarn has so much less, and another so much more. */
  private long counts(int from, int fewer, long less, int to, int many, long more) {
    int steps = Math.abs(surplus[from] - fewer) - Math.abs(surplus[from]);
    steps += Math.abs(surplus[to] + many) - Math.abs(surplus[to]);
    return steps * problem.balance().cost()[0]
        + (stock(from, used[from] - less) - stock(from, used[from]))
        + (stock(to, used[to] + more) - stock(to, used[to]));
  }

  /**
   * Anneals, and goes back to the best.
   *
   * @param hot temperature at the start, in steps of the lightest repeat for each border of a cell
   * @param cold temperature at the end
   * @return the cost of the best
   */
  long anneal(double hot, double cold, long steps, Draws draws) {
    double unit = problem.prices().step() * bordersInCell;
    double ratio = StrictMath.exp(StrictMath.log(cold / hot) * STRIDE / Math.max(STRIDE, steps));
    double temperature = hot * unit;
    long cost = cost();
    long best = cost;
    int[] bestYarn = yarn.clone();
    for (long step = 0; step < steps; step++) {
      temperature *= step % STRIDE == 0 ? ratio : 1;
      int a = draws.below(yarn.length);
      int from = yarn[a];
      int b = draws.below(CHANGE_EVERY) == 0 ? -1 : draws.below(yarn.length);
      int to = b < 0 ? usable[draws.below(usable.length)] : yarn[b];
      if (to == from) {
        continue;
      }
      long delta = b < 0 ? changed(a, from, to) : exchanged(a, from, b, to);
      if (delta <= (long) (temperature * draws.exponential())) {
        set(a, to);
        if (b >= 0) {
          set(b, from);
        }
        cost += delta;
        if (cost < best) {
          best = cost;
          System.arraycopy(yarn, 0, bestYarn, 0, bestYarn.length);
        }
      }
    }
    begin(bestYarn);
    return best;
  }

  private long changed(int a, int from, int to) {
    int many = weight[a];
    return change(a, from, to)
        + counts(from, many, need[a * yarns + from], to, many, need[a * yarns + to]);
  }

  private long exchanged(int a, int from, int b, int to) {
    long delta = change(a, from, to);
    yarn[a] = to;
    delta += change(b, to, from);
    yarn[a] = from;
    int fewer = weight[a] - weight[b];
    long less = need[a * yarns + from] - need[b * yarns + from];
    long more = need[a * yarns + to] - need[b * yarns + to];
    return delta + counts(from, fewer, less, to, fewer, more);
  }
}
