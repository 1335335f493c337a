package lozengy.solver.explain.remedy;

import java.util.Arrays;
import java.util.BitSet;
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

/**
 * The fewest balls to buy. In turns, a small model proposes the fewest balls, of the fewest shades,
 * that make good all shortages that are known; the brief with these balls is settled, and what
 * still speaks against it becomes known (a decomposition in the manner of Benders, 1962; see Hooker
 * and Ottosson, "Logic-based Benders decomposition", Mathematical Programming 96, 2003). Where
 * balls of few shades do not do, as many are dealt evenly; where that is not settled either, more
 * are bought, and what proves to be too many is left out again.
 */
final class Balls {

  private static final int MOST_TURNS = 60;

  /** Proposals of one number that are settled before more are bought. */
  private static final int SETTLED_OF_A_NUMBER = 3;

  private static final int MOST_LEFT_OUT = 12;

  /** Units by which the gain of a ball may be rounded up. */
  private static final long ROUNDING = 4;

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
  private final ConsistencyOracle oracle;
  private final Proposals proposals;

  /** The least number of which it is not proved that it does not do; endless at first. */
  private int open = Integer.MAX_VALUE;

  Balls(Blanket blanket, ConsistencyOracle oracle) {
    this.blanket = blanket;
    this.oracle = oracle;
    this.proposals = new Proposals(blanket.yarnCount(), gone(blanket));
  }

  private static BitSet gone(Blanket blanket) {
    BitSet gone = new BitSet();
    IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> blanket.yarn(yarn).gone())
        .forEach(gone::set);
    return gone;
  }

  /** The fewest balls; empty where no number up to a limit does, or none was found. */
  Optional<Bought> find() {
    int[] plenty = new int[blanket.yarnCount()];
    Arrays.fill(plenty, Proposals.MOST_BALLS);
    if (!Root.findings(Requirements.all(with(plenty))).isEmpty()) {
      return Optional.empty();
    }
    Proposals.Deal deal = Proposals.Deal.FEWEST_SHADES;
    int settledOfNumber = 0;
    int step = 1;
    for (int turn = 0; turn < MOST_TURNS && !oracle.stop().getAsBoolean(); turn++) {
      Optional<int[]> proposed = proposals.fewest(deal);
      if (proposed.isEmpty()) {
        return Optional.empty();
      }
      int[] balls = proposed.get();
      Blanket bought = with(balls);
      Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(bought));
      if (!findings.isEmpty()) {
        findings.values().forEach(each -> each.forEach(finding -> learn(finding, balls)));
        continue;
      }
      int count = Arrays.stream(balls).sum();
      Settled settled = oracle.settleUnargued(bought);
      if (settled.witness().isPresent()) {
        boolean fewest = proposals.complete() && count <= open;
        Bought found = new Bought(balls, fewest, settled.witness().get());
        return Optional.of(step > 1 ? withoutNeedless(found) : found);
      }
      proposals.refute(balls, IntStream.range(0, balls.length).boxed().toList());
      open = settled.verdict() == Verdict.CONFLICTS ? open : Math.min(open, count);
      deal = Proposals.Deal.EVENLY;
      if (++settledOfNumber == SETTLED_OF_A_NUMBER) {
        open = Math.min(open, count);
        proposals.atLeast(count + step);
        step *= 2;
        settledOfNumber = 0;
      }
    }
    return Optional.empty();
  }

  /** The same without balls of which it is seen that it does without. */
  Bought withoutNeedless(Bought found) {
    int[] balls = found.balls().clone();
    Sequences witness = found.witness();
    int tried = 0;
    for (int yarn = 0; yarn < balls.length; yarn++) {
      while (balls[yarn] > 0 && tried < MOST_LEFT_OUT && !oracle.stop().getAsBoolean()) {
        balls[yarn]--;
        Optional<Sequences> fewer = oracle.settle(with(balls)).witness();
        tried++;
        if (fewer.isEmpty()) {
          balls[yarn]++;
          break;
        }
        witness = fewer.get();
      }
    }
    return new Bought(balls, found.fewest(), witness);
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
      proposals.add(new Shortfall(missing, left.gains()));
    }
    proposals.refute(balls, yarns);
  }
}
