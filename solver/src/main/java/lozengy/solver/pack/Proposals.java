package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lozengy.solver.explain.argument.Shortfall;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * The packs of least cost that nothing known speaks against, and of these one whose shades lack as
 * little as can be of their shares; what is known grows.
 */
final class Proposals {

  /** Parts that lengths are counted in: packs' are rounded up and needs down, so none is lost. */
  private static final long PARTS = 1_000_000;

  /** What costs may add up to in the model. */
  private static final long MOST_COST = 1_000_000_000;

  private static final long FAILS = 20_000;

  /** Where no pack was found within the limit, dearer ones are looked for, by such parts. */
  private static final int STEPS = 30;

  private static final int MOST_RAISED = 60;

  /** Units by which the gain of a ball may be rounded up. */
  private static final long ROUNDING = 4;

  /** Not all of some yarns' balls stay within these. */
  private record Refuted(int[] balls, BitSet yarns) {}

  /** So much is missing of a pack, and what a ball more of some yarns gives at the most. */
  private record Missing(int[] balls, long missing, Map<Integer, Long> gains) {}

  /** What one of the sizes asks for. */
  private record Demand(Shades shades, List<Cover> covers, Floors floors) {
    static Demand of(Shades shades) {
      List<Cover> covers = Cover.of(shades);
      return new Demand(shades, covers, new Floors(shades, covers));
    }
  }

  private final List<Demand> demands;

  /** Whose balls and costs are those of all sizes. */
  private final Shades shades;

  private final long unitOfCost;
  private final boolean exactCosts;
  private final List<Refuted> refuted = new ArrayList<>();
  private final List<Missing> missing = new ArrayList<>();
  private long least;
  private boolean complete = true;
  private boolean limited;

  Proposals(List<Shades> sizes) {
    this.shades = sizes.get(0);
    this.demands = sizes.stream().map(Demand::of).toList();
    this.least = floor();
    long gcd = 0;
    long all = 0;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      gcd = gcd(gcd, shades.cost(yarn));
      all += shades.most(yarn) * shades.cost(yarn);
    }
    gcd = Math.max(1, gcd);
    this.exactCosts = all / gcd <= MOST_COST;
    this.unitOfCost = exactCosts ? gcd : all / MOST_COST + 1;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** No pack costs less, by totals alone. */
  long floor() {
    return demands.stream().mapToLong(each -> each.floors().ofAll()).max().orElseThrow();
  }

  /**
   * No more than so many balls of each of some yarns do not do for a size, whatever there is of
   * others.
   */
  void refute(Shades size, int[] balls, BitSet yarns) {
    BitSet helping = new BitSet();
    yarns.stream().filter(yarn -> !size.capped(yarn, balls[yarn])).forEach(helping::set);
    refuted.add(new Refuted(balls.clone(), helping));
  }

  /**
   * A pack falls short for a size. Of a yarn whose share bends no further, neither more balls give
   * more nor does each ball less take away as much as a ball gives: it is left out.
   */
  void learn(Shades size, int[] balls, Shortfall shortfall) {
    Map<Integer, Long> gains = new TreeMap<>();
    shortfall
        .gains()
        .forEach(
            (yarn, gain) -> {
              if (!size.capped(yarn, balls[yarn])) {
                gains.put(yarn, (long) Math.ceil(size.reckoned(gain)));
              }
            });
    missing.add(new Missing(balls.clone(), shortfall.missing(), gains));
  }

  /** Asks for packs that cost so much from now on. */
  void atLeast(long cost) {
    least = Math.max(least, cost);
  }

  /** Whether nothing that costs less than what was proposed was passed over unseen. */
  boolean complete() {
    return complete && exactCosts;
  }

  /** The next pack, balls by yarn; empty where there is none, or none was found. */
  Optional<int[]> next() {
    Optional<int[]> cheapest = new Choice(Optional.empty()).cheapest();
    for (int raised = 0; raised < MOST_RAISED && cheapest.isEmpty() && limited; raised++) {
      least += Math.max(1, least / STEPS);
      cheapest = new Choice(Optional.empty()).cheapest();
    }
    if (cheapest.isEmpty()) {
      return cheapest;
    }
    long cost = 0;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      cost += cheapest.get()[yarn] * (shades.cost(yarn) / unitOfCost);
    }
    Optional<int[]> fairest = new Choice(Optional.of(cost)).fairest();
    return fairest.isPresent() ? fairest : cheapest;
  }

  /** All that is known of a yarn. */
  private List<Object> known(int yarn) {
    List<Object> known = new ArrayList<>(List.of(shades.cost(yarn), shades.least(yarn)));
    known.add(shades.most(yarn));
    for (Demand demand : demands) {
      Shades size = demand.shades();
      known.add(size.shared(yarn));
      for (int balls = size.least(yarn); balls <= size.most(yarn); balls++) {
        known.add(size.usable(yarn, balls));
      }
      demand.covers().forEach(cover -> known.add(cover.yarns().get(yarn)));
    }
    missing.forEach(each -> known.add(each.gains().getOrDefault(yarn, 0L)));
    refuted.forEach(each -> known.add(each.yarns().get(yarn) ? each.balls()[yarn] : -1));
    return known;
  }

  /** The constraint model of one choice. */
  private final class Choice {
    private final Model model = new Model("pack");
    private final IntVar[] balls = new IntVar[shades.count()];
    private final List<IntVar> lacks = new ArrayList<>();
    private final IntVar total;
    private boolean possible = true;

    Choice(Optional<Long> cost) {
      long dearest = 0;
      int[] costs = new int[shades.count()];
      for (int yarn = 0; yarn < costs.length; yarn++) {
        balls[yarn] = model.intVar("balls", shades.least(yarn), shades.most(yarn));
        costs[yarn] = (int) (shades.cost(yarn) / unitOfCost);
        dearest += (long) shades.most(yarn) * costs[yarn];
      }
      int from = (int) cost.orElse(least / unitOfCost).longValue();
      total = model.intVar("total", from, (int) (long) cost.orElse(Math.max(from, dearest)));
      model.scalar(balls, costs, "=", total).post();
      demands.forEach(demand -> post(demand, costs, cost.isPresent()));
      missing.forEach(this::post);
      refuted.forEach(this::post);
      orderAlike();
    }

    /**
     * Of yarns that nothing known tells apart, an earlier one has no fewer balls: any choice can be
     * renamed to such a one, and there are far fewer of these to look through.
     */
    private void orderAlike() {
      Map<List<Object>, Integer> last = new HashMap<>();
      for (int yarn = 0; yarn < balls.length; yarn++) {
        Integer before = last.put(known(yarn), yarn);
        if (before != null) {
          model.arithm(balls[before], ">=", balls[yarn]).post();
        }
      }
    }

    private void post(Demand demand, int[] costs, boolean shared) {
      Shades size = demand.shades();
      long all = 1;
      for (int yarn = 0; yarn < costs.length; yarn++) {
        all += size.usable(yarn, size.most(yarn)) + size.shared(yarn);
      }
      long unit = all / PARTS + 1;
      IntVar[] usable = new IntVar[costs.length];
      for (int yarn = 0; yarn < costs.length; yarn++) {
        int few = size.least(yarn);
        int[] held = new int[size.most(yarn) - few + 1];
        for (int more = 0; more < held.length; more++) {
          held[more] = (int) ((size.usable(yarn, few + more) + unit - 1) / unit);
        }
        usable[yarn] = model.intVar("usable", 0, held[held.length - 1]);
        model.element(usable[yarn], held, balls[yarn], few).post();
        if (shared) {
          int share = (int) (size.shared(yarn) / unit);
          IntVar lack = model.intVar("lacks", 0, share);
          model.arithm(lack, "+", usable[yarn], ">=", share).post();
          lacks.add(lack);
        }
      }
      for (int at = 0; at < demand.covers().size(); at++) {
        Cover cover = demand.covers().get(at);
        int[] yarns = cover.yarns().stream().toArray();
        model.sum(of(usable, yarns), ">=", (int) (cover.millimetres() / unit)).post();
        if (exactCosts) {
          int[] each = Arrays.stream(yarns).map(yarn -> costs[yarn]).toArray();
          int floor = (int) (demand.floors().of(at) / unitOfCost);
          model.scalar(of(balls, yarns), each, ">=", floor).post();
        }
      }
    }

    private void post(Missing each) {
      int[] yarns = each.gains().keySet().stream().mapToInt(y -> y).toArray();
      long most = each.gains().values().stream().mapToLong(g -> g).max().orElse(1);
      long part = most / 1000 + 1;
      int[] gains = new int[yarns.length];
      long wanted = each.missing() / part;
      for (int i = 0; i < yarns.length; i++) {
        long gain = each.gains().get(yarns[i]);
        gains[i] = (int) ((gain + ROUNDING) / part + 1);
        // with these balls so much was missing: without them more, by what they give at the least
        wanted += each.balls()[yarns[i]] * (Math.max(0, gain - ROUNDING) / part);
      }
      possible &= yarns.length > 0 && wanted < MOST_COST;
      if (possible) {
        model.scalar(of(balls, yarns), gains, ">=", (int) wanted).post();
      }
    }

    private void post(Refuted each) {
      BoolVar[] more =
          each.yarns().stream()
              .filter(yarn -> each.balls()[yarn] < shades.most(yarn))
              .mapToObj(yarn -> model.arithm(balls[yarn], ">", each.balls()[yarn]).reify())
              .toArray(BoolVar[]::new);
      possible &= more.length > 0;
      if (possible) {
        model.or(more).post();
      }
    }

    private static IntVar[] of(IntVar[] variables, int[] yarns) {
      return Arrays.stream(yarns).mapToObj(yarn -> variables[yarn]).toArray(IntVar[]::new);
    }

    /** The total is tried from below: the first solution is the cheapest. */
    Optional<int[]> cheapest() {
      if (!possible) {
        return Optional.empty();
      }
      Solver solver = model.getSolver();
      solver.setSearch(Search.inputOrderLBSearch(total), Search.domOverWDegSearch(balls));
      solver.limitFail(FAILS);
      boolean found = solver.solve();
      limited = !found && solver.isStopCriterionMet();
      complete &= !limited;
      return found ? Optional.of(values()) : Optional.empty();
    }

    /** What lacks least of the shares. */
    Optional<int[]> fairest() {
      IntVar[] lacking = lacks.toArray(IntVar[]::new);
      IntVar sum = model.intVar("lacking", 0, Arrays.stream(lacking).mapToInt(IntVar::getUB).sum());
      model.sum(lacking, "=", sum).post();
      model.setObjective(Model.MINIMIZE, sum);
      Solver solver = model.getSolver();
      solver.setSearch(Search.domOverWDegSearch(balls), Search.inputOrderLBSearch(lacking));
      solver.limitFail(FAILS);
      Optional<int[]> best = Optional.empty();
      while (solver.solve()) {
        best = Optional.of(values());
      }
      return best;
    }

    private int[] values() {
      return Arrays.stream(balls).mapToInt(IntVar::getValue).toArray();
    }
  }
}
