package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
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

  /** So much is missing of a pack, and what a ball more of each yarn gives. */
  private record Missing(int[] balls, Shortfall shortfall) {}

  private final Shades shades;
  private final List<Cover> covers;
  private final Floors floors;
  private final long unitOfCost;
  private final boolean exactCosts;
  private final List<Refuted> refuted = new ArrayList<>();
  private final List<Missing> missing = new ArrayList<>();
  private long least;
  private boolean complete = true;
  private boolean limited;

  Proposals(Shades shades) {
    this.shades = shades;
    this.covers = Cover.of(shades);
    this.floors = new Floors(shades, covers);
    this.least = floors.ofAll();
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
    return floors.ofAll();
  }

  /** No more than so many balls of each of some yarns do not do, whatever there is of others. */
  void refute(int[] balls, BitSet yarns) {
    refuted.add(new Refuted(balls.clone(), yarns));
  }

  /** A pack falls short. */
  void learn(int[] balls, Shortfall shortfall) {
    missing.add(new Missing(balls.clone(), shortfall));
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

  /** The constraint model of one choice. */
  private final class Choice {
    private final Model model = new Model("pack");
    private final IntVar[] balls = new IntVar[shades.count()];
    private final IntVar[] usable = new IntVar[shades.count()];
    private final IntVar total;
    private final long unit;
    private boolean possible = true;

    Choice(Optional<Long> cost) {
      long all = 1;
      long dearest = 0;
      int[] costs = new int[shades.count()];
      for (int yarn = 0; yarn < costs.length; yarn++) {
        all += shades.usable(yarn, shades.most(yarn)) + shades.shared(yarn);
        costs[yarn] = (int) (shades.cost(yarn) / unitOfCost);
        dearest += (long) shades.most(yarn) * costs[yarn];
      }
      unit = all / PARTS + 1;
      for (int yarn = 0; yarn < costs.length; yarn++) {
        int few = shades.least(yarn);
        int[] held = new int[shades.most(yarn) - few + 1];
        for (int more = 0; more < held.length; more++) {
          held[more] = (int) ((shades.usable(yarn, few + more) + unit - 1) / unit);
        }
        balls[yarn] = model.intVar("balls", few, shades.most(yarn));
        usable[yarn] = model.intVar("usable", 0, held[held.length - 1]);
        model.element(usable[yarn], held, balls[yarn], few).post();
      }
      int from = (int) cost.orElse(least / unitOfCost).longValue();
      total = model.intVar("total", from, (int) (long) cost.orElse(Math.max(from, dearest)));
      model.scalar(balls, costs, "=", total).post();
      for (int cover = 0; cover < covers.size(); cover++) {
        post(covers.get(cover), floors.of(cover), costs);
      }
      missing.forEach(this::post);
      refuted.forEach(this::post);
    }

    private void post(Cover cover, long floor, int[] costs) {
      int[] yarns = cover.yarns().stream().toArray();
      model.sum(of(usable, yarns), ">=", (int) (cover.millimetres() / unit)).post();
      int[] each = Arrays.stream(yarns).map(yarn -> costs[yarn]).toArray();
      if (exactCosts) {
        model.scalar(of(balls, yarns), each, ">=", (int) (floor / unitOfCost)).post();
      }
    }

    private void post(Missing each) {
      int[] yarns = each.shortfall().gains().keySet().stream().mapToInt(y -> y).toArray();
      long most = each.shortfall().gains().values().stream().mapToLong(g -> g).max().orElse(1);
      long part = most / 1000 + 1;
      int[] gains = new int[yarns.length];
      long wanted = each.shortfall().missing() / part;
      for (int i = 0; i < yarns.length; i++) {
        long gain = each.shortfall().gains().get(yarns[i]);
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
      int[] most = new int[balls.length];
      IntVar[] lacks = new IntVar[balls.length];
      for (int yarn = 0; yarn < balls.length; yarn++) {
        most[yarn] = (int) (shades.shared(yarn) / unit);
        lacks[yarn] = model.intVar("lacks", 0, most[yarn]);
        model.arithm(lacks[yarn], "+", usable[yarn], ">=", most[yarn]).post();
      }
      IntVar sum = model.intVar("lacking", 0, Arrays.stream(most).sum());
      model.sum(lacks, "=", sum).post();
      model.setObjective(Model.MINIMIZE, sum);
      Solver solver = model.getSolver();
      solver.setSearch(Search.domOverWDegSearch(balls), Search.inputOrderLBSearch(lacks));
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
