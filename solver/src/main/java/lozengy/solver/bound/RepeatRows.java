package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.score.Targets;

/** Adds the weight of repeats to a program: at least each layer's {@link RepeatFloor}. */
final class RepeatRows {

  private static final int NONE = ScoreProgram.NONE;

  private final Blanket blanket;
  private final Targets targets;
  private final Weights weights;
  private final ScoreProgram score;
  private final LinearProgram program;

  RepeatRows(Blanket blanket, Targets targets, Weights weights, ScoreProgram score) {
    this.blanket = blanket;
    this.targets = targets;
    this.weights = weights;
    this.score = score;
    this.program = score.program();
  }

  /** Adds the rows, and gives the variable of each layer's weight of repeats. */
  int[] add(RepeatFloor[] floors) {
    int[] repeats = new int[floors.length];
    for (int layer = 0; layer < floors.length; layer++) {
      RepeatFloor floor = floors[layer];
      double least = Math.min(floor.least(), floor.total());
      repeats[layer] = program.variable(least, floor.total(), -weights.repeats()[layer]);
      int[] shares = new int[blanket.yarnCount()];
      for (int yarn = 0; yarn < shares.length; yarn++) {
        shares[yarn] = addShare(floor, layer, yarn);
      }
      program.atMost(-floor.base());
      program.put(repeats[layer], -1);
      for (int share : shares) {
        if (share != NONE) {
          program.put(share, 1);
        }
      }
    }
    return repeats;
  }

  /** A yarn's share: at least each of its lines; its range holds the highest line's values. */
  private int addShare(RepeatFloor floor, int layer, int yarn) {
    double[][] toll = floor.toll()[yarn];
    double[] height = floor.height()[yarn];
    if (toll.length == 0) {
      return NONE;
    }
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int line = 0; line < toll.length; line++) {
      double least = height[line];
      double most = height[line];
      for (int kind = 0; kind < toll[line].length; kind++) {
        double change = -toll[line][kind] * score.pieces(layer, kind);
        least += Math.min(0, change);
        most += Math.max(0, change);
      }
      low = Math.max(low, least);
      high = Math.max(high, most);
    }
    int share = program.variable(low, high, 0);
    for (int line = 0; line < toll.length; line++) {
      program.atMost(-height[line]);
      program.put(share, -1);
      for (int kind = 0; kind < toll[line].length; kind++) {
        int count = score.count(layer, kind, yarn);
        if (count != NONE) {
          program.put(count, -toll[line][kind]);
        }
      }
    }
    return share;
  }
}
