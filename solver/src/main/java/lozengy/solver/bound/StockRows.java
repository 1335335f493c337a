package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.score.Scorer;
import lozengy.solver.bound.PieceGroups.Group;

/**
 * Adds stock and leeway to a program. No yarn takes more than what is usable of its stock. A leeway
 * g in [low, high] means left &gt;= 0.1 g used, so used &lt;= stock / (1 + 0.1 g); that is convex
 * in g, so the chord over the range is above it, and used stays at most the chord. (A yarn that is
 * not used keeps the row too.)
 */
final class StockRows {

  private final Blanket blanket;
  private final Weights weights;
  private final PieceGroups groups;
  private final ScoreProgram score;
  private final LinearProgram program;

  StockRows(Blanket blanket, Weights weights, PieceGroups groups, ScoreProgram score) {
    this.blanket = blanket;
    this.weights = weights;
    this.groups = groups;
    this.score = score;
    this.program = score.program();
  }

  /** Adds the rows, and gives the variable of leeway. */
  int add(double low, double high) {
    int leeway = program.variable(low, high, weights.leeway());
    double atLow = 1 / (1 + Scorer.AMPLE_LEEWAY * low);
    double atHigh = 1 / (1 + Scorer.AMPLE_LEEWAY * high);
    double slope = high > low ? (atHigh - atLow) / (high - low) : 0;
    long[] certain = certainUse();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      double stock = blanket.stockMillimetres(yarn);
      double most = certain[yarn] + mostUse(yarn);
      if (weights.leeway() > 0 && most > stock * atHigh) {
        program.atMost(stock * (atLow - slope * low) - certain[yarn]);
        putUse(yarn);
        program.put(leeway, -stock * slope);
      }
      if (most > blanket.usableMillimetres(yarn)) {
        program.atMost(blanket.usableMillimetres(yarn) - certain[yarn]);
        putUse(yarn);
      }
    }
    return leeway;
  }

  private long[] certainUse() {
    long[] use = new long[blanket.yarnCount()];
    for (int yarn = 0; yarn < use.length; yarn++) {
      use[yarn] = blanket.fixedUseMillimetres(yarn);
    }
    for (int piece : groups.fixed()) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = blanket.locked(piece, round);
        use[yarn] += blanket.needMillimetres(blanket.kind(piece), round, yarn);
      }
    }
    return use;
  }

  private long mostUse(int yarn) {
    long most = 0;
    for (int g = 0; g < groups.groups().size(); g++) {
      Group group = groups.groups().get(g);
      for (int round = 0; round < group.allowed().length; round++) {
        if (group.allowed()[round][yarn]) {
          most += group.count() * blanket.needMillimetres(group.kind(), round, yarn);
        }
      }
    }
    return most;
  }

  private void putUse(int yarn) {
    for (int g = 0; g < groups.groups().size(); g++) {
      Group group = groups.groups().get(g);
      for (int round = 0; round < group.allowed().length; round++) {
        int node = score.node(g, round, yarn);
        if (node != ScoreProgram.NONE) {
          program.put(node, blanket.needMillimetres(group.kind(), round, yarn));
        }
      }
    }
  }
}
