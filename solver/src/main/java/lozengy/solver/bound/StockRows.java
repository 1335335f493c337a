package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.score.LeewayMeasure;
import lozengy.solver.bound.PieceGroups.Group;

/**
 * Adds stock and leeway to a program. No yarn takes more than what is usable of its stock. Leeway
 * loses the square of a yarn's tightness, which what is used beyond some length makes grow evenly:
 * one variable for each yarn, whose square is lost.
 */
final class StockRows {

  private final Blanket blanket;
  private final PieceGroups groups;
  private final ScoreProgram score;
  private final LinearProgram program;

  StockRows(Blanket blanket, PieceGroups groups, ScoreProgram score) {
    this.blanket = blanket;
    this.groups = groups;
    this.score = score;
    this.program = score.program();
  }

  /**
   * Adds the rows.
   *
   * @param leeway points of full leeway of all yarns
   */
  void add(double leeway) {
    program.addConstant(leeway);
    long[] certain = certainUse();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      double usable = blanket.yarns().usableMillimetres(yarn);
      double ample = Math.min(usable, LeewayMeasure.used(blanket.yarn(yarn).stockMillimetres(), 0));
      double most = certain[yarn] + mostUse(yarn);
      if (leeway > 0 && ample < usable && most > ample) {
        double perMillimetre = LeewayMeasure.tightens(blanket.yarn(yarn).stockMillimetres());
        double tightest = (usable - ample) * perMillimetre;
        program.atMost(ample - certain[yarn]);
        putUse(yarn);
        program.put(program.squared(tightest, leeway / blanket.yarnCount()), -1 / perMillimetre);
      } else if (most > usable) {
        program.atMost(usable - certain[yarn]);
        putUse(yarn);
      }
    }
  }

  private long[] certainUse() {
    long[] use = new long[blanket.yarnCount()];
    for (int yarn = 0; yarn < use.length; yarn++) {
      use[yarn] = blanket.fixedUse().millimetres(yarn);
    }
    for (int piece : groups.fixed()) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = blanket.locked(piece, round);
        use[yarn] += blanket.takenMillimetres(piece, round, yarn);
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
          most += group.count() * blanket.takenMillimetres(group.piece(), round, yarn);
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
          program.put(node, blanket.takenMillimetres(group.piece(), round, yarn));
        }
      }
    }
  }
}
