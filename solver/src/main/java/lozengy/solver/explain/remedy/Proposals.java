package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.solver.explain.argument.Shortfall;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** The fewest balls that nothing known speaks against; what is known grows. */
final class Proposals {

  /** How balls of one number are dealt to shades. */
  enum Deal {
    FEWEST_SHADES,
    EVENLY
  }

  /** Most balls of one yarn. */
  static final int MOST_BALLS = 40;

  /** What the gain of a ball is counted in: rounded so that no ball is asked for in vain. */
  private static final long PARTS = 1000;

  private static final long FAILS = 20_000;

  /** Each yarn's balls must not all stay within these. */
  private record Refuted(int[] balls, List<Integer> yarns) {}

  private final int yarns;
  private final BitSet gone;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final List<Refuted> refuted = new ArrayList<>();
  private int least;
  private boolean complete = true;

  /**
   * Without anything known yet.
   *
   * @param gone yarns of which no ball can be had
   */
  Proposals(int yarns, BitSet gone) {
    this.yarns = yarns;
    this.gone = gone;
  }

  void add(Shortfall shortfall) {
    shortfalls.add(shortfall);
  }

  /** No more than so many balls of each of some yarns do not do, whatever is bought of others. */
  void refute(int[] balls, List<Integer> which) {
    refuted.add(new Refuted(balls.clone(), which));
  }

  /** Asks for so many balls in all from now on. */
  void atLeast(int balls) {
    least = balls;
  }

  /** Whether every proposal was the fewest that what was known then allows. */
  boolean complete() {
    return complete;
  }

  /** The fewest balls by yarn, dealt in a way; empty if there are none, or none was found. */
  Optional<int[]> fewest(Deal deal) {
    int[] disjoint = disjoint();
    int fewest = Math.max(least, disjoint[0]);
    if (fewest > MOST_BALLS * yarns) {
      return Optional.empty();
    }
    Model model = new Model("balls");
    IntVar[] balls = new IntVar[yarns];
    Arrays.setAll(balls, yarn -> model.intVar(0, gone.get(yarn) ? 0 : MOST_BALLS));
    IntVar total = model.intVar(fewest, MOST_BALLS * yarns);
    BoolVar[] bought = new BoolVar[yarns];
    Arrays.setAll(bought, yarn -> model.arithm(balls[yarn], ">", 0).reify());
    IntVar shades = model.intVar(disjoint[1], yarns);
    IntVar most = model.intVar(0, MOST_BALLS);
    model.sum(balls, "=", total).post();
    model.sum(bought, "=", shades).post();
    model.max(most, balls).post();
    for (Shortfall shortfall : shortfalls) {
      if (!post(model, balls, shortfall)) {
        return Optional.empty();
      }
    }
    for (Refuted each : refuted) {
      if (each.yarns().isEmpty()) {
        return Optional.empty();
      }
      model
          .or(
              each.yarns().stream()
                  .map(yarn -> model.arithm(balls[yarn], ">", each.balls()[yarn]).reify())
                  .toArray(BoolVar[]::new))
          .post();
    }
    // the first solution is the least: the total is tried from below, and then how it is dealt
    model
        .getSolver()
        .setSearch(
            Search.inputOrderLBSearch(total, deal == Deal.EVENLY ? most : shades),
            Search.inputOrderUBSearch(balls));
    model.getSolver().limitFail(FAILS);
    boolean found = model.getSolver().solve();
    complete &= !model.getSolver().isStopCriterionMet() || found;
    return found
        ? Optional.of(Arrays.stream(balls).mapToInt(IntVar::getValue).toArray())
        : Optional.empty();
  }

  /** Whether a shortfall can be made good at all. */
  private static boolean post(Model model, IntVar[] balls, Shortfall shortfall) {
    List<Integer> of = List.copyOf(shortfall.gains().keySet());
    if (shortfall.fewestBalls() > MOST_BALLS * of.size()) {
      return false;
    }
    IntVar[] variables = of.stream().map(yarn -> balls[yarn]).toArray(IntVar[]::new);
    long most = shortfall.gains().values().stream().mapToLong(Long::longValue).max().orElse(1);
    long unit = Math.max(1, most / PARTS);
    int[] gains = of.stream().mapToInt(y -> (int) (shortfall.gains().get(y) / unit + 1)).toArray();
    model.scalar(variables, gains, ">=", (int) (shortfall.missing() / unit)).post();
    model.sum(variables, ">=", shortfall.fewestBalls()).post();
    return true;
  }

  /** How many balls, and of how many shades, shortfalls without a yarn in common ask for. */
  private int[] disjoint() {
    int[] bySize = disjoint(Comparator.comparingInt(each -> each.gains().size()));
    int[] byBalls = disjoint(Comparator.comparingInt(each -> -each.fewestBalls()));
    return new int[] {Math.max(bySize[0], byBalls[0]), Math.max(bySize[1], byBalls[1])};
  }

  private int[] disjoint(Comparator<Shortfall> order) {
    Set<Integer> taken = new HashSet<>();
    int[] sums = new int[2];
    for (Shortfall each : shortfalls.stream().sorted(order).toList()) {
      if (each.gains().keySet().stream().noneMatch(taken::contains)) {
        taken.addAll(each.gains().keySet());
        sums[0] += Math.min(MOST_BALLS * yarns + 1, each.fewestBalls());
        sums[1]++;
      }
    }
    return sums;
  }
}
