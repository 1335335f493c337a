package lozengy.solver.bound;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.Points;

/** Adds the weight of repeats to a program: at least each layer's {@link RepeatFloor}. */
final class RepeatRows {

  private static final int NONE = ScoreProgram.NONE;

  private final Blanket blanket;
  private final Points points;
  private final ScoreProgram score;
  private final LinearProgram program;

  RepeatRows(Blanket blanket, Points points, ScoreProgram score) {
    this.blanket = blanket;
    this.points = points;
    this.score = score;
    this.program = score.program();
  }

  /**
   * Adds the rows, and gives the variable of each layer's weight of repeats.
   *
   * @param floors by layer, floors that all hold
   */
  int[] add(List<List<RepeatFloor>> floors) {
    int[] repeats = new int[floors.size()];
    for (int layer = 0; layer < repeats.length; layer++) {
      double total = floors.get(layer).get(0).total();
      double least = floors.get(layer).stream().mapToDouble(RepeatFloor::least).max().orElse(0);
      repeats[layer] = program.variable(Math.min(least, total), total, -points.repeat(layer));
      for (RepeatFloor floor : floors.get(layer)) {
        addFloor(floor, layer, repeats[layer]);
      }
    }
    return repeats;
  }

  private void addFloor(RepeatFloor floor, int layer, int repeats) {
    int[] shares = new int[blanket.yarnCount()];
    for (int yarn = 0; yarn < shares.length; yarn++) {
      shares[yarn] = addShare(floor, layer, yarn);
    }
    program.atMost(-floor.base());
    program.put(repeats, -1);
    for (int share : shares) {
      if (share != NONE) {
        program.put(share, 1);
      }
    }
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
