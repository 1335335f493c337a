package lozengy.solver.search;

import java.util.Arrays;
import java.util.stream.IntStream;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The borders as a graph: which lie side by side on a seam, and which yarns may not meet there.
 * Seams between two borders that are both fixed are facts, and left out.
 */
final class BorderGraph {

  private final Problem problem;
  private final int[][] beside;
  private final boolean[][] clash;

  BorderGraph(Problem problem) {
    this.problem = problem;
    Slots slots = problem.slots();
    this.beside = new int[slots.pieces()][];
    int[] start = problem.pairs().seamStart();
    for (int piece = 0; piece < beside.length; piece++) {
      int slot = slots.border(piece);
      boolean fixed = slots.fixedYarn()[slot] != Sequences.OPEN;
      beside[piece] =
          Arrays.stream(problem.pairs().seamSlot(), start[slot], start[slot + 1])
              .filter(other -> !fixed || slots.fixedYarn()[other] == Sequences.OPEN)
              .map(other -> slots.piece()[other])
              .toArray();
    }
    this.clash = new boolean[problem.yarns()][problem.yarns()];
    for (int a = 0; a < clash.length; a++) {
      for (int b = 0; b < clash.length; b++) {
        clash[a][b] = problem.blanket().bordersClash(a, b);
      }
    }
  }

  /** How many pieces, and so borders. */
  int size() {
    return beside.length;
  }

  /** The border slot of a piece. */
  int slot(int piece) {
    return problem.slots().border(piece);
  }

  /** The pieces whose borders lie beside a piece's; not to be changed. */
  int[] beside(int piece) {
    return beside[piece];
  }

  /** Whether two yarns may not meet. */
  boolean clash(int a, int b) {
    return clash[a][b];
  }

  /** The yarns that some border may take or has. */
  int[] yarns() {
    boolean[] any = new boolean[clash.length];
    for (int piece = 0; piece < beside.length; piece++) {
      for (int yarn : problem.domains().yarns(slot(piece))) {
        any[yarn] = true;
      }
    }
    return IntStream.range(0, any.length).filter(y -> any[y]).toArray();
  }

  /** By piece 0 or 1, so that no two on a seam are of one side, where that is possible at all. */
  int[] sides() {
    int[] side = new int[beside.length];
    Arrays.fill(side, -1);
    int[] reached = new int[side.length];
    for (int first = 0; first < side.length; first++) {
      if (side[first] >= 0) {
        continue;
      }
      int end = 0;
      side[first] = 0;
      reached[end++] = first;
      for (int next = 0; next < end; next++) {
        for (int other : beside[reached[next]]) {
          if (side[other] < 0) {
            side[other] = 1 - side[reached[next]];
            reached[end++] = other;
          }
        }
      }
    }
    return side;
  }
}
