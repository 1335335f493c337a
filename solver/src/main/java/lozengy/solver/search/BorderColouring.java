package lozengy.solver.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.Problem;

/**
 * Gives every border a yarn so that no two on a seam clash, counts and stock left out: the border
 * with the fewest yarns left comes first (DSATUR: Brélaz, New methods to color the vertices of a
 * graph, 1979), what it takes is taken from the borders beside it, and one that is left with
 * nothing comes earlier in the next try. Exact where the yarns are of two classes that may not meet
 * themselves: there each border follows from one before it. O(borders log borders x yarns) a try.
 */
final class BorderColouring {

  private static final int TRIES = 24;

  private final Problem problem;
  private final Draws draws;
  private final BorderGraph graph;
  private final boolean[][] wanted;
  private final int[] failed;
  private boolean[][] left;
  private int[] size;
  private int[] taken;

  /**
   * Sets up a colouring.
   *
   * @param wanted by piece the yarns that its border takes first
   */
  BorderColouring(Problem problem, BorderGraph graph, Draws draws, boolean[][] wanted) {
    this.problem = problem;
    this.graph = graph;
    this.draws = draws;
    this.wanted = wanted;
    this.failed = new int[graph.size()];
  }

  /** By piece the yarn of its border; null if none was found. */
  int[] find() {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      if (attempt()) {
        return taken;
      }
    }
    return null;
  }

  /** A border to be settled, as many yarns as it had left when it was put down. */
  private record Open(int orbit, int left, int failed, int chance) {}

  private static final Comparator<Open> FIRST =
      Comparator.comparingInt(Open::left)
          .thenComparing(Comparator.comparingInt(Open::failed).reversed())
          .thenComparingInt(Open::chance)
          .thenComparingInt(Open::orbit);

  private boolean attempt() {
    int count = graph.size();
    left = new boolean[count][problem.yarns()];
    size = new int[count];
    taken = new int[count];
    Arrays.fill(taken, Sequences.OPEN);
    PriorityQueue<Open> queue = new PriorityQueue<>(FIRST);
    for (int orbit = 0; orbit < count; orbit++) {
      for (int yarn : problem.domains().yarns(graph.slot(orbit))) {
        left[orbit][yarn] = true;
        size[orbit]++;
      }
    }
    for (int orbit = 0; orbit < count; orbit++) {
      int fixed = problem.slots().fixedYarn()[graph.slot(orbit)];
      if (fixed == Sequences.OPEN) {
        queue.add(open(orbit));
      } else {
        take(orbit, fixed, queue);
      }
    }
    while (!queue.isEmpty()) {
      Open open = queue.remove();
      int orbit = open.orbit();
      if (taken[orbit] != Sequences.OPEN || open.left() != size[orbit]) {
        continue;
      }
      if (size[orbit] == 0) {
        failed[orbit]++;
        return false;
      }
      take(orbit, choose(orbit), queue);
    }
    return true;
  }

  private Open open(int orbit) {
    return new Open(orbit, size[orbit], failed[orbit], draws.below(graph.size()));
  }

  private void take(int orbit, int yarn, PriorityQueue<Open> queue) {
    taken[orbit] = yarn;
    for (int other : graph.beside(orbit)) {
      if (taken[other] != Sequences.OPEN) {
        continue;
      }
      int before = size[other];
      for (int b = 0; b < problem.yarns(); b++) {
        if (left[other][b] && graph.clash(yarn, b)) {
          left[other][b] = false;
          size[other]--;
        }
      }
      if (size[other] < before) {
        queue.add(open(other));
      }
    }
  }

  /** The yarn that leaves most borders beside what they want; a wanted one first. */
  private int choose(int orbit) {
    int best = Sequences.OPEN;
    int bestLoss = Integer.MAX_VALUE;
    int ties = 0;
    for (int yarn = 0; yarn < problem.yarns(); yarn++) {
      if (!left[orbit][yarn]) {
        continue;
      }
      int loss = wanted[orbit][yarn] ? 0 : 2;
      for (int other : graph.beside(orbit)) {
        loss += taken[other] == Sequences.OPEN && spoils(yarn, other) ? 1 : 0;
      }
      ties = loss == bestLoss ? ties + 1 : 1;
      if (loss < bestLoss || loss == bestLoss && draws.below(ties) == 0) {
        best = yarn;
        bestLoss = loss;
      }
    }
    return best;
  }

  /** Whether a border would be left without any yarn that it wants. */
  private boolean spoils(int yarn, int other) {
    boolean some = false;
    for (int b = 0; b < problem.yarns(); b++) {
      if (left[other][b] && wanted[other][b]) {
        if (!graph.clash(yarn, b)) {
          return false;
        }
        some = true;
      }
    }
    return some;
  }
}
