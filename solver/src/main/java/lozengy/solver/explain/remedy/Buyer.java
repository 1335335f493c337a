package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.argument.Shortfall;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ConsistencyOracle.Settled;
import lozengy.solver.explain.conflict.ConsistencyOracle.Verdict;
import lozengy.solver.explain.conflict.Root;

/** Looks for what to buy. */
final class Buyer {

  /** So many balls of a yarn can be chosen one by one; what is beyond is bought evenly. */
  private static final int CHOSEN = 20;

  private static final int MOST_BALLS = 1_000_000;

  private final Blanket blanket;
  private final ConsistencyOracle oracle;

  /** Whether it is proved that nothing fits, however much is bought. */
  private boolean inVain;

  Buyer(Blanket blanket, ConsistencyOracle oracle) {
    this.blanket = blanket;
    this.oracle = oracle;
  }

  /** What to buy. */
  Buying find() {
    Settled now = oracle.settle(blanket);
    if (now.witness().isPresent()) {
      return new Buying.Nothing(now.witness().get());
    }
    Optional<Balls.Bought> bought = bought();
    if (bought.isPresent()) {
      return amounts(bought.get());
    }
    return inVain ? new Buying.NoHelp() : new Buying.Unsettled();
  }

  /** What to buy of a brief that has no arrangement as it is; empty where nothing was found. */
  Optional<Balls.Bought> bought() {
    int[] inBulk = inBulk();
    boolean few = Arrays.stream(inBulk).allMatch(balls -> balls == 0);
    Optional<Balls.Bought> chosen = new Balls(with(inBulk), oracle).find();
    if (chosen.isEmpty()) {
      return ofAll();
    }
    int[] balls = chosen.get().balls();
    for (int yarn = 0; yarn < balls.length; yarn++) {
      balls[yarn] += inBulk[yarn];
    }
    return Optional.of(
        new Balls.Bought(balls, few && chosen.get().fewest(), chosen.get().witness()));
  }

  /** What is missing by far, shared among the yarns that can make up for it. */
  private int[] inBulk() {
    int[] balls = new int[blanket.yarnCount()];
    Optional<Shortfall> large = large(balls);
    while (large.isPresent()) {
      List<Integer> yarns = List.copyOf(large.get().gains().keySet());
      int each = (large.get().fewestBalls() - CHOSEN) / yarns.size() + 1;
      yarns.forEach(yarn -> balls[yarn] += each);
      large = large(balls);
    }
    return balls;
  }

  private Optional<Shortfall> large(int[] balls) {
    return Root.findings(Requirements.all(with(balls))).values().stream()
        .flatMap(List::stream)
        .flatMap(finding -> finding.shortfall().stream())
        .filter(s -> s.fewestBalls() > CHOSEN && s.fewestBalls() < MOST_BALLS)
        .findFirst();
  }

  /** With all yarns in plenty, what an arrangement takes then. */
  private Optional<Balls.Bought> ofAll() {
    Settled settled = oracle.settle(with(plenty()));
    inVain = settled.verdict() == Verdict.CONFLICTS;
    return settled
        .witness()
        .map(witness -> new Balls.Bought(taken(witness), false, witness))
        .map(new Balls(blanket, oracle)::withoutNeedless);
  }

  /** As many balls of each yarn as all rounds, joining and edging would take in it alone. */
  private int[] plenty() {
    int[] plenty = new int[blanket.yarnCount()];
    for (int yarn = 0; yarn < plenty.length; yarn++) {
      Sequences all = blanket.open();
      for (int piece = 0; piece < all.pieces(); piece++) {
        for (int round = 0; round < all.rounds(piece); round++) {
          all.set(piece, round, yarn);
        }
      }
      plenty[yarn] = balls(yarn, blanket.usedMillimetres(all)[yarn]);
    }
    return plenty;
  }

  /** The balls that sequences take beyond what is there. */
  private int[] taken(Sequences sequences) {
    long[] used = blanket.usedMillimetres(sequences);
    int[] balls = new int[used.length];
    for (int yarn = 0; yarn < balls.length; yarn++) {
      balls[yarn] = balls(yarn, used[yarn] - blanket.yarns().usableMillimetres(yarn));
    }
    return balls;
  }

  private int balls(int yarn, long millimetres) {
    if (millimetres <= 0 || blanket.yarn(yarn).gone()) {
      return 0;
    }
    double usable = 1 - blanket.brief().rules().keepBackPercent() / 100;
    double ball = Shortfall.ballMillimetres(blanket.yarn(yarn)) * usable;
    return (int) Math.min(MOST_BALLS, Math.ceil((millimetres + 1) / ball));
  }

  private Buying amounts(Balls.Bought bought) {
    int[] balls = bought.balls();
    List<Buying.Amount> amounts = new ArrayList<>();
    for (int yarn = 0; yarn < balls.length; yarn++) {
      if (balls[yarn] > 0) {
        long each = Shortfall.ballMillimetres(blanket.yarn(yarn));
        amounts.add(new Buying.Amount(yarn, balls[yarn], balls[yarn] * each));
      }
    }
    return new Buying.Amounts(amounts, bought.fewest(), with(balls).brief(), bought.witness());
  }

  private Blanket with(int[] balls) {
    return StockRelaxing.with(blanket, balls);
  }
}
