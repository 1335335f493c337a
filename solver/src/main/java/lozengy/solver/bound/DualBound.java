package lozengy.solver.bound;

import lozengy.solver.bound.LinearProgram.Paths;

/**
 * What multipliers prove of a linear program, whoever found them.
 *
 * <p>For multipliers y of the rows, at least 0 where a row says at most, every x that keeps the
 * rows has c x &lt;= y b + (c - y A) x (weak duality). The last term is at most what the variables'
 * ranges allow: for a variable on its own max(0, r) with r its reduced gain, in scaled units, or
 * the most of r x - b x^2 where its square is lost; for paths the best path's sum of r, since every
 * piece takes one whole path and all variables of the paths are scaled by the same number of
 * pieces. No optimality is needed, only arithmetic (A. Neumaier and O. Shcherbina, Safe bounds in
 * linear and mixed-integer linear programming, Mathematical Programming 99, 2004); its rounding is
 * far below {@link #MARGIN}, which is added.
 */
final class DualBound {

  /** Covers the rounding of the program's own numbers. */
  static final double MARGIN = 1e-6;

  private final LinearProgram program;
  private final double[] reduced;
  private final boolean[] onPath;

  DualBound(LinearProgram program) {
    this.program = program;
    this.reduced = new double[program.variables()];
    this.onPath = new boolean[program.variables()];
    for (Paths paths : program.paths()) {
      mark(paths.nodes());
      for (int[][] layer : paths.arcs()) {
        mark(layer);
      }
    }
  }

  private void mark(int[][] variables) {
    for (int[] row : variables) {
      for (int variable : row) {
        if (variable >= 0) {
          onPath[variable] = true;
        }
      }
    }
  }

  /** The bound that multipliers prove; negative ones of rows that say at most count as 0. */
  double of(double[] multipliers) {
    double bound = program.constant();
    double size = Math.abs(bound);
    for (int variable = 0; variable < reduced.length; variable++) {
      reduced[variable] = program.gain(variable);
      size += Math.abs(reduced[variable]);
    }
    for (int row = 0; row < program.rows(); row++) {
      double times = program.equal(row) ? multipliers[row] : Math.max(0, multipliers[row]);
      bound += times * program.right(row);
      size += Math.abs(times * program.right(row));
      for (int entry = program.start(row); entry < program.start(row + 1); entry++) {
        double pulled = times * program.coefficient(entry);
        reduced[program.column(entry)] -= pulled;
        size += Math.abs(pulled);
      }
    }
    for (int variable = 0; variable < reduced.length; variable++) {
      bound += onPath[variable] ? 0 : most(reduced[variable], program.bend(variable));
    }
    for (Paths paths : program.paths()) {
      bound += bestPath(paths);
    }
    return bound + MARGIN + size * program.terms() * 0x1p-52;
  }

  /** The most of gain x - bend x^2 for x from 0 to 1. */
  private static double most(double gain, double bend) {
    if (gain <= 0 || gain >= 2 * bend) {
      return Math.max(0, gain - bend);
    }
    return gain / (4 * bend) * gain;
  }

  private double bestPath(Paths paths) {
    double[] best = nodes(paths.nodes()[0], null);
    for (int layer = 1; layer < paths.nodes().length; layer++) {
      int[][] arcs = paths.arcs()[layer - 1];
      double[] reached = new double[paths.nodes()[layer].length];
      java.util.Arrays.fill(reached, Double.NEGATIVE_INFINITY);
      for (int from = 0; from < best.length; from++) {
        for (int to = 0; to < reached.length; to++) {
          if (arcs[from][to] >= 0) {
            reached[to] = Math.max(reached[to], best[from] + reduced[arcs[from][to]]);
          }
        }
      }
      best = nodes(paths.nodes()[layer], reached);
    }
    double most = Double.NEGATIVE_INFINITY;
    for (double each : best) {
      most = Math.max(most, each);
    }
    return most;
  }

  private double[] nodes(int[] variables, double[] reached) {
    double[] sums = new double[variables.length];
    for (int node = 0; node < variables.length; node++) {
      sums[node] =
          variables[node] < 0
              ? Double.NEGATIVE_INFINITY
              : reduced[variables[node]] + (reached == null ? 0 : reached[node]);
    }
    return sums;
  }
}
