package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.List;

/**
 * The most of a small linear program without squares, by the simplex method with Bland's rule on a
 * dense tableau: for tests alone, which it tells how far a proved bound is from the best.
 */
final class ExactProgram {

  private static final double ROUNDING = 1e-9;

  private final double[][] table;
  private final int[] basic;
  private final int[] other;
  private final int rows;
  private final int columns;

  private ExactProgram(List<double[]> kept, double[] gains) {
    rows = kept.size();
    columns = gains.length;
    table = new double[rows + 2][columns + 2];
    basic = new int[rows];
    other = new int[columns + 1];
    for (int row = 0; row < rows; row++) {
      System.arraycopy(kept.get(row), 0, table[row], 0, columns);
      table[row][columns] = -1;
      table[row][columns + 1] = kept.get(row)[columns];
      basic[row] = columns + row;
    }
    for (int column = 0; column < columns; column++) {
      other[column] = column;
      table[rows][column] = -gains[column];
    }
    other[columns] = -1;
    table[rows + 1][columns] = 1;
  }

  /** The most of a program, negative infinity where no point keeps its rows. */
  static double most(LinearProgram program) {
    int variables = program.variables();
    List<double[]> kept = new ArrayList<>();
    for (int row = 0; row < program.rows(); row++) {
      double[] as = new double[variables + 1];
      for (int entry = program.start(row); entry < program.start(row + 1); entry++) {
        as[program.column(entry)] += program.coefficient(entry);
      }
      as[variables] = program.right(row);
      kept.add(as);
      if (program.equal(row)) {
        double[] back = new double[variables + 1];
        for (int i = 0; i <= variables; i++) {
          back[i] = -as[i];
        }
        kept.add(back);
      }
    }
    double[] gains = new double[variables];
    for (int variable = 0; variable < variables; variable++) {
      double[] range = new double[variables + 1];
      range[variable] = 1;
      range[variables] = 1;
      kept.add(range);
      gains[variable] = program.gain(variable);
    }
    return program.constant() + new ExactProgram(kept, gains).solve();
  }

  private double solve() {
    int least = 0;
    for (int row = 1; row < rows; row++) {
      least = table[row][columns + 1] < table[least][columns + 1] ? row : least;
    }
    if (table[least][columns + 1] < -ROUNDING) {
      pivot(least, columns);
      climb(rows + 1);
      if (table[rows + 1][columns + 1] < -ROUNDING) {
        return Double.NEGATIVE_INFINITY;
      }
      for (int row = 0; row < rows; row++) {
        if (basic[row] == -1) {
          int column = 0;
          for (int i = 1; i <= columns; i++) {
            column = Math.abs(table[row][i]) > Math.abs(table[row][column]) ? i : column;
          }
          pivot(row, column);
        }
      }
    }
    climb(rows);
    return table[rows][columns + 1];
  }

  private void climb(int goal) {
    while (true) {
      int column = -1;
      for (int i = 0; i <= columns; i++) {
        boolean may = goal > rows || other[i] >= 0;
        if (may && table[goal][i] < -ROUNDING && (column < 0 || other[i] < other[column])) {
          column = i;
        }
      }
      int row = -1;
      for (int i = 0; i < rows && column >= 0; i++) {
        if (table[i][column] > ROUNDING) {
          double ahead =
              row < 0
                  ? -1
                  : table[i][columns + 1] / table[i][column]
                      - table[row][columns + 1] / table[row][column];
          row = ahead < -1e-12 || ahead <= 1e-12 && basic[i] < basic[row] ? i : row;
        }
      }
      if (row < 0) {
        return;
      }
      pivot(row, column);
    }
  }

  private void pivot(int row, int column) {
    double inverse = 1 / table[row][column];
    for (int i = 0; i < table.length; i++) {
      double times = table[i][column] * inverse;
      for (int j = 0; j < columns + 2 && i != row && times != 0; j++) {
        table[i][j] -= j == column ? 0 : table[row][j] * times;
      }
    }
    for (int j = 0; j < columns + 2; j++) {
      table[row][j] *= j == column ? 1 : inverse;
    }
    for (int i = 0; i < table.length; i++) {
      table[i][column] *= i == row ? 1 : -inverse;
    }
    table[row][column] = inverse;
    int was = basic[row];
    basic[row] = other[column];
    other[column] = was;
  }
}
