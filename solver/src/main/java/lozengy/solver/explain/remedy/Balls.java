package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.argument.Shortfall;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ConsistencyOracle.Settled;
import lozengy.solver.explain.conflict.ConsistencyOracle.Verdict;
import lozengy.solver.explain.conflict.Root;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * The fewest balls to buy. In turns, a small model proposes the fewest balls, of the fewest shades,
 * that make good all shortages that are known; the brief with these balls is settled, and what
 * still speaks against it becomes known (a decomposition in the manner of Benders, 1962; see Hooker
 * and Ottosson, "Logic-based Benders decomposition", Mathematical Programming 96, 2003).
 */
final class Balls {

  private static final int MOST_TURNS = 60;
  private static final int MOST_BALLS = 40;
  private static final int SHADE_WEIGHT = 1;
  private static final int BALL_WEIGHT = 1000;

  /** Units by which the gain of a ball may be rounded up. */
  private static final long ROUNDING = 4;

  private static final long MASTER_FAILS = 20_000;

  /** Each yarn's balls must not all stay within these of some turn. */
  private record Refuted(int[] balls, List<Integer> yarns) {}

  /**
   * What was found.
   *
   * @param balls balls to buy, by yarn
   * @param fewest whether it is proved that no fewer do
   * @param witness an arrangement with them
   */
  record Bought(int[] balls, boolean fewest, Sequences witness) {

    /** How many balls in all. */
    int count() {
      return Arrays.stream(balls).sum();
    }
  }

  private final Blanket blanket;
  private final ConsistencyOracle settling;
  private final List<Shortfall> shortfalls = new ArrayList<>();
  private final List<Refuted> refuted = new ArrayList<>();
  private boolean certain = true;

  Balls(Blanket blanket, ConsistencyOracle settling) {
    this.blanket = blanket;
    this.settling = settling;
  }

  /** The fewest balls; empty where no number up to a limit does, or none was found. */
  Optional<Bought> find() {
    int[] plenty = new int[blanket.yarnCount()];
    Arrays.fill(plenty, MOST_BALLS);
    if (!Root.findings(Requirements.all(with(plenty))).isEmpty()) {
      return Optional.empty();
    }
    for (int turn = 0; turn < MOST_TURNS && !settling.stop().getAsBoolean(); turn++) {
      int[] balls = fewest();
      if (balls == null) {
        return Optional.empty();
      }
      Blanket bought = with(balls);
      Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(bought));
      if (!findings.isEmpty()) {
        findings.values().forEach(each -> each.forEach(finding -> learn(finding, balls)));
        continue;
      }
      Settled settled = settling.settleUnargued(bought);
      if (settled.witness().isPresent()) {
        return Optional.of(new Bought(balls, certain, settled.witness().get()));
      }
      certain &= settled.verdict() == Verdict.CONFLICTS;
      refuted.add(new Refuted(balls, IntStream.range(0, balls.length).boxed().toList()));
    }
    return Optional.empty();
  }

  /** Whether other balls would do as well. */
  boolean does(int[] balls) {
    Blanket bought = with(balls);
    return settling.settle(bought).witness().isPresent();
  }

  private Blanket with(int[] balls) {
    return StockRelaxing.with(blanket, balls);
  }

  private void learn(Finding finding, int[] balls) {
    List<Integer> yarns = finding.yarns().stream().boxed().toList();
    if (finding.shortfall().isPresent()) {
      // that is with these balls: without them more was missing, by what they give at the least
      Shortfall left = finding.shortfall().get();
      long missing = left.missing();
      for (int yarn : yarns) {
        missing += balls[yarn] * Math.max(0, left.gains().getOrDefault(yarn, 0L) - ROUNDING);
      }
      shortfalls.add(new Shortfall(missing, left.gains()));
    }
    refuted.add(new Refuted(balls, yarns));
  }

  /** The fewest balls that nothing known speaks against; null if there are none. */
  private int[] fewest() {
    Model model = new Model("balls");
    int yarns = blanket.yarnCount();
    IntVar[] balls = model.intVarArray(yarns, 0, MOST_BALLS);
    for (Shortfall shortfall : shortfalls) {
      List<Integer> of = List.copyOf(shortfall.gains().keySet());
      IntVar[] variables = of.stream().map(yarn -> balls[yarn]).toArray(IntVar[]::new);
      if (shortfall.fewestBalls() > MOST_BALLS * variables.length) {
        return null;
      }
      // in units of which a ball has few, rounded so that no ball is asked for in vain
      long most = shortfall.gains().values().stream().mapToLong(Long::longValue).max().orElse(1);
      long unit = Math.max(1, most / BALL_WEIGHT);
      int[] gains =
          of.stream().mapToInt(y -> (int) (shortfall.gains().get(y) / unit + 1)).toArray();
      model.scalar(variables, gains, ">=", (int) (shortfall.missing() / unit)).post();
      model.sum(variables, ">=", shortfall.fewestBalls()).post();
    }
    for (Refuted each : refuted) {
      BoolVar[] more =
          each.yarns().stream()
              .map(yarn -> model.arithm(balls[yarn], ">", each.balls()[yarn]).reify())
              .toArray(BoolVar[]::new);
      if (more.length == 0) {
        return null;
      }
      model.or(more).post();
    }
    BoolVar[] shades = new BoolVar[yarns];
    int[] weights = new int[2 * yarns];
    IntVar[] all = new IntVar[2 * yarns];
    for (int yarn = 0; yarn < yarns; yarn++) {
      shades[yarn] = model.arithm(balls[yarn], ">", 0).reify();
      all[yarn] = balls[yarn];
      weights[yarn] = BALL_WEIGHT;
      all[yarns + yarn] = shades[yarn];
      weights[yarns + yarn] = SHADE_WEIGHT;
    }
    IntVar cost = model.intVar(0, MOST_BALLS * yarns * BALL_WEIGHT + yarns);
    model.scalar(all, weights, "=", cost).post();
    model.setObjective(Model.MINIMIZE, cost);
    model.getSolver().setSearch(Search.inputOrderLBSearch(cost), Search.inputOrderUBSearch(balls));
    model.getSolver().limitFail(MASTER_FAILS);
    int[] best = null;
    while (model.getSolver().solve()) {
      best = Arrays.stream(balls).mapToInt(IntVar::getValue).toArray();
    }
    certain &= !model.getSolver().isStopCriterionMet();
    return best;
  }
}
