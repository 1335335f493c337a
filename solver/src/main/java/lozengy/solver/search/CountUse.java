package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.PieceCounts;
import lozengy.solver.problem.Problem;

/**
 * How many pieces show the yarns that the look's counts ask for, with the penalty of too many or
 * too few: by count and piece in how many rounds it shows the yarn. To tell and to make a change is
 * O(counts of the two yarns). Nothing allocates.
 */
final class CountUse {

  private final PieceCounts counts;
  private final int[] orbit;
  private final int[] orbitStart;
  private final long hardCost;
  private final int[][] rounds;
  private final int[] pieces;
  private long broken;

  CountUse(Problem problem) {
    this.counts = problem.counts();
    this.orbit = problem.slots().orbit();
    this.orbitStart = problem.slots().orbitStart();
    this.hardCost = problem.prices().hard();
    int size = counts == null ? 0 : counts.size();
    this.rounds = new int[size][problem.slots().orbits()];
    this.pieces = new int[size];
  }

  /** Counts an assignment afresh. */
  void reset(int[] assignment) {
    broken = 0;
    for (int count = 0; count < pieces.length; count++) {
      Arrays.fill(rounds[count], 0);
      pieces[count] = 0;
      broken += counts.off(count, 0);
    }
    for (int slot = 0; slot < assignment.length && pieces.length > 0; slot++) {
      add(slot, assignment[slot], 1);
    }
  }

  /** Whether the look asks for any number of pieces. */
  boolean any() {
    return pieces.length > 0;
  }

  /** Pieces too many or too few, over all counts. */
  long broken() {
    return broken;
  }

  /** The cost of giving a slot another yarn. */
  long change(int slot, int from, int to) {
    return hardCost * (off(slot, from, -1) + off(slot, to, 1));
  }

  /** Gives a slot another yarn. */
  void apply(int slot, int from, int to) {
    add(slot, from, -1);
    add(slot, to, 1);
  }

  /** The cost of exchanging the yarns of two slots. */
  long exchange(int slotA, int slotB, int a, int b) {
    long delta = change(slotA, a, b);
    apply(slotA, a, b);
    delta += change(slotB, b, a);
    apply(slotA, b, a);
    return delta;
  }

  /** The cost of exchanging the whole sequences of two pieces with as many rounds. */
  long exchangeSequences(int orbitA, int orbitB, int[] yarn) {
    long before = broken;
    exchangeAll(orbitA, orbitB, yarn, false);
    long delta = hardCost * (broken - before);
    exchangeAll(orbitA, orbitB, yarn, true);
    return delta;
  }

  private void exchangeAll(int orbitA, int orbitB, int[] yarn, boolean back) {
    int slotB = orbitStart[orbitB];
    for (int slotA = orbitStart[orbitA]; slotA < orbitStart[orbitA + 1]; slotA++, slotB++) {
      int a = back ? yarn[slotB] : yarn[slotA];
      int b = back ? yarn[slotA] : yarn[slotB];
      if (a != b) {
        apply(slotA, a, b);
        apply(slotB, b, a);
      }
    }
  }

  /** How many more are off if a slot shows a yarn, or no longer does. */
  private int off(int slot, int yarn, int by) {
    int off = 0;
    for (int count : counts.ofYarn()[yarn]) {
      if (counts.covers()[count][slot] && rounds[count][orbit[slot]] == (by > 0 ? 0 : 1)) {
        int weight = by * counts.weight()[count][orbit[slot]];
        off += counts.off(count, pieces[count] + weight) - counts.off(count, pieces[count]);
      }
    }
    return off;
  }

  private void add(int slot, int yarn, int by) {
    broken += off(slot, yarn, by);
    for (int count : counts.ofYarn()[yarn]) {
      if (counts.covers()[count][slot]) {
        int before = rounds[count][orbit[slot]];
        rounds[count][orbit[slot]] += by;
        if (before == 0 || before + by == 0) {
          pieces[count] += by * counts.weight()[count][orbit[slot]];
        }
      }
    }
  }
}
