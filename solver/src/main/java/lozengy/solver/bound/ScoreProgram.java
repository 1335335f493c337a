package lozengy.solver.bound;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Points;
import lozengy.model.score.Targets;
import lozengy.solver.bound.PieceGroups.Group;

/**
 * The convex program whose value no arrangement's total exceeds.
 *
 * <p>Every valid arrangement gives a point of it with at least its own total, read off like this:
 *
 * <ul>
 *   <li>paths: how many pieces of a group have yarn a in a round, and a then b in two rounds side
 *       by side, which gives the contrast within pieces exactly;
 *   <li>n(l, c): how many pieces show yarn c in layer l; balance loses by sum |n - t| = 2 sum
 *       max(0, n - t) - sum (n - t), exactly; {@link WholeCounts} says what the sum of max(0, n -
 *       t) is at least;
 *   <li>the weight of repeats: {@link RepeatRows};
 *   <li>the contrast of seams: {@link SeamRows};
 *   <li>stock and leeway: {@link StockRows};
 *   <li>variety: a constant, the most that it can be.
 * </ul>
 */
final class ScoreProgram {

  /** In place of a variable that is not there. */
  static final int NONE = -1;

  private static final int KINDS = PieceKind.values().length;

  private final Blanket blanket;
  private final Points points;
  private final Targets targets;
  private final PieceGroups groups;
  private final LinearProgram program = new LinearProgram();
  private final int[][][] nodes;
  private final int[][] counts;
  private final int[][] overs;
  private final int[][][] kindCounts;
  private final int[][][] certainCounts;
  private final int[][] kindPieces;

  /**
   * Puts the program together.
   *
   * @param floors by layer, floors under the repeats that all hold
   * @param over by layer, the pieces by which targets are exceeded at least
   * @param certain points that are gained whatever the arrangement
   */
  ScoreProgram(
      Blanket blanket,
      Points points,
      PieceGroups groups,
      List<List<RepeatFloor>> floors,
      int[] over,
      double certain) {
    this.blanket = blanket;
    this.points = points;
    this.targets = points.targets();
    this.groups = groups;
    this.nodes = new int[groups.groups().size()][][];
    this.counts = new int[blanket.layerCount()][blanket.yarnCount()];
    this.overs = new int[blanket.layerCount()][blanket.yarnCount()];
    this.kindCounts = new int[blanket.layerCount()][KINDS][blanket.yarnCount()];
    this.certainCounts = new int[blanket.layerCount()][KINDS][blanket.yarnCount()];
    this.kindPieces = new int[blanket.layerCount()][KINDS];
    program.addConstant(certain);
    addPaths();
    addCertain();
    addCounts();
    int[] repeats = new RepeatRows(blanket, points, this).add(floors);
    new SeamRows(blanket, points, groups, this).add(repeats[0]);
    new StockRows(blanket, groups, this).add(points.whole(Part.LEEWAY));
    addLeastOver(over);
    program.scale();
  }

  LinearProgram program() {
    return program;
  }

  /** The variable of how many pieces of a group have a yarn in a round, or NONE. */
  int node(int group, int round, int yarn) {
    return nodes[group][round][yarn];
  }

  /** The variable of how often a layer shows a yarn, or NONE where it never does. */
  int count(int layer, int yarn) {
    return counts[layer][yarn];
  }

  /** The variable of how many pieces of a kind show a yarn in a layer, or NONE where none does. */
  int count(int layer, int kind, int yarn) {
    return kindCounts[layer][kind][yarn];
  }

  /** How many pieces of a kind have a layer. */
  int pieces(int layer, int kind) {
    return kindPieces[layer][kind];
  }

  /** By layer and kind of piece, how often each yarn shows at a search's best point. */
  double[][][] counts(PrimalDual search) {
    double[][][] shown = new double[counts.length][KINDS][blanket.yarnCount()];
    for (int layer = 0; layer < counts.length; layer++) {
      for (int kind = 0; kind < KINDS; kind++) {
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          int count = kindCounts[layer][kind][yarn];
          shown[layer][kind][yarn] = count == NONE ? 0 : search.hint(count);
        }
      }
    }
    return shown;
  }

  private void addPaths() {
    for (int g = 0; g < nodes.length; g++) {
      Group group = groups.groups().get(g);
      int rounds = group.allowed().length;
      nodes[g] = new int[rounds][blanket.yarnCount()];
      for (int round = 0; round < rounds; round++) {
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          nodes[g][round][yarn] =
              group.allowed()[round][yarn] ? program.variable(0, group.count(), 0) : NONE;
        }
      }
      int[][][] arcs = new int[rounds - 1][][];
      for (int round = 0; round + 1 < rounds; round++) {
        arcs[round] = arcs(group, nodes[g][round], nodes[g][round + 1]);
      }
      program.equalTo(group.count());
      for (int node : nodes[g][0]) {
        if (node != NONE) {
          program.put(node, 1);
        }
      }
      program.paths(new LinearProgram.Paths(nodes[g], arcs));
    }
  }

  private int[][] arcs(Group group, int[] from, int[] to) {
    int[][] arcs = new int[from.length][to.length];
    int[][] back = new int[to.length][from.length];
    for (int a = 0; a < from.length; a++) {
      for (int b = 0; b < to.length; b++) {
        boolean may = from[a] != NONE && to[b] != NONE && !(group.neighboursDiffer() && a == b);
        double each = points.gained(false, a, b);
        arcs[a][b] = may ? program.variable(0, group.count(), each) : NONE;
        back[b][a] = arcs[a][b];
      }
    }
    conserve(from, arcs);
    conserve(to, back);
    return arcs;
  }

  private void conserve(int[] nodesHere, int[][] arcs) {
    for (int yarn = 0; yarn < nodesHere.length; yarn++) {
      if (nodesHere[yarn] != NONE) {
        program.equalTo(0);
        program.put(nodesHere[yarn], -1);
        for (int arc : arcs[yarn]) {
          if (arc != NONE) {
            program.put(arc, 1);
          }
        }
      }
    }
  }

  private void addCertain() {
    for (int piece : groups.fixed()) {
      int rounds = blanket.roundCount(piece);
      for (int round = 0; round < rounds; round++) {
        int yarn = blanket.locked(piece, round);
        certainCounts[rounds - 1 - round][blanket.kind(piece).ordinal()][yarn]++;
        if (round > 0) {
          int inner = blanket.locked(piece, round - 1);
          program.addConstant(points.gained(false, inner, yarn));
        }
      }
    }
  }

  private void addCounts() {
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int layer = 0; layer < blanket.roundCount(piece); layer++) {
        kindPieces[layer][blanket.kind(piece).ordinal()]++;
      }
    }
    for (int layer = 0; layer < counts.length; layer++) {
      int pieces = targets.pieces()[layer];
      int wanted = Arrays.stream(targets.counts()[layer]).sum();
      program.addConstant(points.balance(layer) * (pieces - wanted));
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        boolean shown = false;
        for (int kind = 0; kind < KINDS; kind++) {
          int count = addKind(layer, kind, yarn);
          kindCounts[layer][kind][yarn] = count;
          shown |= count != NONE;
        }
        overs[layer][yarn] = NONE;
        counts[layer][yarn] = shown ? addCount(layer, yarn, pieces) : NONE;
      }
    }
  }

  private int addKind(int layer, int kind, int yarn) {
    boolean shown = certainCounts[layer][kind][yarn] > 0;
    for (int g = 0; g < nodes.length; g++) {
      shown |= node(g, layer, kind, yarn) != NONE;
    }
    if (!shown) {
      return NONE;
    }
    int count = program.variable(0, kindPieces[layer][kind], 0);
    program.equalTo(certainCounts[layer][kind][yarn]);
    program.put(count, 1);
    for (int g = 0; g < nodes.length; g++) {
      int node = node(g, layer, kind, yarn);
      if (node != NONE) {
        program.put(node, -1);
      }
    }
    return count;
  }

  private int node(int group, int layer, int kind, int yarn) {
    int round = nodes[group].length - 1 - layer;
    boolean other = groups.groups().get(group).kind().ordinal() != kind;
    return other || round < 0 ? NONE : nodes[group][round][yarn];
  }

  private void addLeastOver(int[] least) {
    for (int layer = 0; layer < least.length; layer++) {
      program.atMost(-least[layer]);
      for (int over : overs[layer]) {
        if (over != NONE) {
          program.put(over, -1);
        }
      }
    }
  }

  private int addCount(int layer, int yarn, int pieces) {
    int count = program.variable(0, pieces, 0);
    program.equalTo(0);
    program.put(count, 1);
    for (int kind = 0; kind < KINDS; kind++) {
      if (kindCounts[layer][kind][yarn] != NONE) {
        program.put(kindCounts[layer][kind][yarn], -1);
      }
    }
    int wanted = targets.counts()[layer][yarn];
    if (points.balance(layer) > 0 && wanted < pieces) {
      int over = program.variable(0, pieces - wanted, -2 * points.balance(layer));
      program.atMost(wanted);
      program.put(count, 1);
      program.put(over, -1);
      overs[layer][yarn] = over;
    }
    return count;
  }
}
