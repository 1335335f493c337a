package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear program to be bounded from above: maximise constant + c x where the rows hold and every
 * variable keeps to its range; some variables may also lose by their square. Variables are scaled
 * to run from 0 to 1 and rows to a largest coefficient of 1. Layered networks of variables can be
 * marked as {@link Paths}, which makes the dual bound stronger.
 */
final class LinearProgram {

  /**
   * Variables that are the flow of so many pieces through a layered network, one node in each layer
   * for each piece.
   *
   * @param nodes variable of each node by layer, or -1
   * @param arcs variable of each arc by layer and the nodes it leads from and to, or -1
   */
  record Paths(int[][] nodes, int[][][] arcs) {}

  private double constant;
  private int variables;
  private double[] low = new double[64];
  private double[] range = new double[64];
  private double[] gain = new double[64];
  private double[] bend = new double[64];
  private int rows;
  private int entries;
  private int[] rowStart = new int[64];
  private int[] column = new int[256];
  private double[] coefficient = new double[256];
  private double[] right = new double[64];
  private boolean[] equal = new boolean[64];
  private final List<Paths> paths = new ArrayList<>();

  /** Adds to what is maximised, whatever the variables. */
  void addConstant(double amount) {
    constant += amount;
  }

  /**
   * Adds a variable.
   *
   * @param lowest its least value
   * @param highest its largest value
   * @param each what is gained for each unit
   * @return its index
   */
  int variable(double lowest, double highest, double each) {
    if (variables == low.length) {
      low = Arrays.copyOf(low, 2 * variables);
      range = Arrays.copyOf(range, 2 * variables);
      gain = Arrays.copyOf(gain, 2 * variables);
      bend = Arrays.copyOf(bend, 2 * variables);
    }
    low[variables] = lowest;
    range[variables] = highest - lowest;
    gain[variables] = each * range[variables];
    constant += each * lowest;
    return variables++;
  }

  /**
   * Adds a variable from 0 whose square is lost.
   *
   * @param highest its largest value
   * @param each what is lost for each unit of its square
   * @return its index
   */
  int squared(double highest, double each) {
    int variable = variable(0, highest, 0);
    bend[variable] = each * highest * highest;
    return variable;
  }

  /** Starts a row: what is put until the next row stays at most {@code most}. */
  void atMost(double most) {
    start(most, false);
  }

  /** Starts a row: what is put until the next row sums to {@code sum}. */
  void equalTo(double sum) {
    start(sum, true);
  }

  private void start(double side, boolean isEqual) {
    if (rows + 1 == rowStart.length) {
      rowStart = Arrays.copyOf(rowStart, 2 * rowStart.length);
      right = Arrays.copyOf(right, 2 * right.length);
      equal = Arrays.copyOf(equal, 2 * equal.length);
    }
    rowStart[rows] = entries;
    right[rows] = side;
    equal[rows] = isEqual;
    rows++;
    rowStart[rows] = entries;
  }

  /** Puts {@code times} times a variable into the last row. */
  void put(int variable, double times) {
    if (entries == column.length) {
      column = Arrays.copyOf(column, 2 * entries);
      coefficient = Arrays.copyOf(coefficient, 2 * entries);
    }
    right[rows - 1] -= times * low[variable];
    column[entries] = variable;
    coefficient[entries++] = times * range[variable];
    rowStart[rows] = entries;
  }

  /** Marks variables as paths. All have the range from 0 to the number of pieces. */
  void paths(Paths flow) {
    paths.add(flow);
  }

  /** Scales the rows; to be called once, when all rows are put. */
  void scale() {
    for (int row = 0; row < rows; row++) {
      double most = 0;
      for (int entry = rowStart[row]; entry < rowStart[row + 1]; entry++) {
        most = Math.max(most, Math.abs(coefficient[entry]));
      }
      if (most > 0) {
        // a power of 2, so that scaling rounds nothing
        double scale = Math.scalb(1.0, -Math.getExponent(most));
        for (int entry = rowStart[row]; entry < rowStart[row + 1]; entry++) {
          coefficient[entry] *= scale;
        }
        right[row] *= scale;
      }
    }
  }

  /** How many numbers a bound sums up, at most. */
  double terms() {
    return (double) entries + variables + rows + 1;
  }

  double constant() {
    return constant;
  }

  int variables() {
    return variables;
  }

  int rows() {
    return rows;
  }

  /** What is gained by a variable's whole range. */
  double gain(int variable) {
    return gain[variable];
  }

  /** What is lost by the square of a variable at the end of its range. */
  double bend(int variable) {
    return bend[variable];
  }

  /** The value of a variable that lies at this part of its range. */
  double value(int variable, double part) {
    return low[variable] + part * range[variable];
  }

  double right(int row) {
    return right[row];
  }

  boolean equal(int row) {
    return equal[row];
  }

  int start(int row) {
    return rowStart[row];
  }

  int column(int entry) {
    return column[entry];
  }

  double coefficient(int entry) {
    return coefficient[entry];
  }

  List<Paths> paths() {
    return paths;
  }
}
