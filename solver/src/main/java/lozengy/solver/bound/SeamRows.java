package lozengy.solver.bound;

import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Points;
import lozengy.solver.bound.PieceGroups.Group;

/**
 * Adds the contrast of seams, and how well people of any colour vision can tell them apart, to a
 * program: s(a, b) seams have the borders a and b.
 *
 * <ul>
 *   <li>All seams together are as many as the layout has.
 *   <li>The borders of yarn a have as many seam ends as their pieces have seams. (Seams of one yarn
 *       on both sides are only where both pieces are joined already, or have the border that the
 *       look gives all; they are counted beforehand.)
 *   <li>A piece with border a that meets b on k &gt;= 1 seams counts k = 1 + (k - 1), so s(a, b)
 *       &lt;= n(a) + r(a, b), where r(a, b) sums k - 1 &lt;= k (k - 1) / 2 over the pieces of
 *       border a: the pairs of b beside one piece. The two of such a pair touch, or lie two sides
 *       apart in a line with the piece between them. Touching pieces have at most two pieces beside
 *       both and weigh 2 as a repeat, those in a line have one and weigh 1. So all r together are
 *       at most the weight of the borders' repeats.
 * </ul>
 */
final class SeamRows {

  private static final int NONE = ScoreProgram.NONE;

  private final Blanket blanket;
  private final Points points;
  private final PieceGroups groups;
  private final ScoreProgram score;
  private final LinearProgram program;
  private final Pairs pairs;
  private final int yarns;
  private final int[][] seams;
  private final int[][] doubled;
  private final int[][] joined;
  private final int[] certainEnds;

  SeamRows(Blanket blanket, Points points, PieceGroups groups, ScoreProgram score) {
    this.blanket = blanket;
    this.points = points;
    this.groups = groups;
    this.score = score;
    this.program = score.program();
    this.pairs = blanket.layout().seams();
    this.yarns = blanket.yarnCount();
    this.seams = new int[yarns][yarns];
    this.doubled = new int[yarns][yarns];
    this.joined = new int[yarns][yarns];
    this.certainEnds = new int[yarns];
  }

  /**
   * Adds the rows.
   *
   * @param repeats variable of the weight of the borders' repeats
   */
  void add(int repeats) {
    if (pairs.size() == 0 || points.pairs().stream().noneMatch(Points.Pair::onSeams)) {
      return;
    }
    countCertain();
    addVariables();
    addTotal();
    for (int a = 0; a < yarns; a++) {
      if (score.count(0, a) != NONE) {
        addEnds(a);
        addMeetings(a);
      }
    }
    program.atMost(0);
    program.put(repeats, -1);
    putAll(doubled);
  }

  private void countCertain() {
    boolean[] certain = new boolean[blanket.pieceCount()];
    groups.fixed().forEach(piece -> certain[piece] = true);
    for (int pair = 0; pair < pairs.size(); pair++) {
      int first = pairs.first()[pair];
      int second = pairs.second()[pair];
      for (int piece : new int[] {first, second}) {
        if (certain[piece]) {
          certainEnds[border(piece)]++;
        }
      }
      if (blanket.bordersMayMatch(first, second)) {
        joined[border(first)][border(second)]++;
        if (border(first) != border(second)) {
          joined[border(second)][border(first)]++;
        }
      }
    }
  }

  private int border(int piece) {
    return blanket.locked(piece, blanket.roundCount(piece) - 1);
  }

  private void addVariables() {
    for (int a = 0; a < yarns; a++) {
      for (int b = 0; b < a; b++) {
        int most = blanket.yarns().sameBorder(a, b) ? joined[a][b] : pairs.size();
        boolean may = score.count(0, a) != NONE && score.count(0, b) != NONE && most > 0;
        seams[a][b] = may ? program.variable(0, most, points.gained(true, a, b)) : NONE;
        seams[b][a] = seams[a][b];
        doubled[a][b] = may ? program.variable(0, most, 0) : NONE;
        doubled[b][a] = may ? program.variable(0, most, 0) : NONE;
      }
      seams[a][a] = NONE;
      doubled[a][a] = NONE;
    }
  }

  private void addTotal() {
    int alike = 0;
    for (int a = 0; a < yarns; a++) {
      alike += joined[a][a];
      program.addConstant(joined[a][a] * points.gained(true, a, a));
    }
    program.equalTo(pairs.size() - alike);
    for (int a = 0; a < yarns; a++) {
      for (int b = 0; b < a; b++) {
        if (seams[a][b] != NONE) {
          program.put(seams[a][b], 1);
        }
      }
    }
  }

  private void addEnds(int yarn) {
    int certain = certainEnds[yarn] - 2 * joined[yarn][yarn];
    boolean exact = groups.groups().stream().allMatch(g -> g.fewestSeams() == g.mostSeams());
    if (exact) {
      program.equalTo(certain);
    } else {
      program.atMost(certain);
    }
    putEnds(yarn, 1, true);
    if (!exact) {
      program.atMost(-certain);
      putEnds(yarn, -1, false);
    }
  }

  private void putEnds(int yarn, int sign, boolean most) {
    for (int seam : seams[yarn]) {
      if (seam != NONE) {
        program.put(seam, sign);
      }
    }
    for (int g = 0; g < groups.groups().size(); g++) {
      Group group = groups.groups().get(g);
      int node = score.node(g, group.allowed().length - 1, yarn);
      if (node != NONE) {
        program.put(node, -sign * (most ? group.mostSeams() : group.fewestSeams()));
      }
    }
  }

  private void addMeetings(int yarn) {
    for (int other = 0; other < yarns; other++) {
      if (seams[yarn][other] != NONE) {
        program.atMost(0);
        program.put(seams[yarn][other], 1);
        program.put(score.count(0, yarn), -1);
        program.put(doubled[yarn][other], -1);
      }
    }
  }

  private void putAll(int[][] variables) {
    for (int[] row : variables) {
      for (int variable : row) {
        if (variable != NONE) {
          program.put(variable, 1);
        }
      }
    }
  }
}
