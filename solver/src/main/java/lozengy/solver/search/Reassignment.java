package lozengy.solver.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Slots;

/**
 * Exchanges the yarns of many like rounds at once, the best way there is: rounds that are no pair
 * of each other each cost what their yarn costs, whatever the others take, so who takes which of
 * their yarns is an assignment problem. Counts and stock stay. This finds rings of exchanges of
 * which no single one pays, which a walk that has cooled does not.
 */
final class Reassignment {

  /** Rounds at once, at most. */
  private static final int MOST_AT_ONCE = 48;

  /** Fewer are left to exchanges of two. */
  private static final int LEAST_AT_ONCE = 3;

  /** Looks at a round that take about as long as a move. */
  private static final int COST_OF_MOVE = 3;

  private static final String NAME = "reassignment";

  private final State state;
  private final Draws draws;
  private final Acceptance acceptance;
  private final Slots slots;
  private final List<int[]> groups = new ArrayList<>();
  private final int[] chosen = new int[MOST_AT_ONCE];
  private final long[][] cost = new long[MOST_AT_ONCE][MOST_AT_ONCE];
  private final Set<Integer> pieces = new HashSet<>();
  private final int[] near;
  private int sets;
  private long spent;

  /**
   * Makes ready.
   *
   * @param free slots that may change
   */
  Reassignment(State state, Draws draws, Acceptance acceptance, int[] free) {
    this.state = state;
    this.draws = draws;
    this.acceptance = acceptance;
    this.slots = state.problem.slots();
    this.near = new int[slots.count()];
    for (int[] like : CountPlan.groups(state.problem, free)) {
      Map<Integer, List<Integer>> byWeight = new TreeMap<>();
      for (int slot : like) {
        int orbit = slots.orbit()[slot];
        if (!state.laid.holds(orbit)) {
          byWeight.computeIfAbsent(slots.weight(orbit), w -> new ArrayList<>()).add(slot);
        }
      }
      for (List<Integer> group : byWeight.values()) {
        groups.add(group.stream().mapToInt(Integer::intValue).toArray());
      }
    }
  }

  /**
   * Goes over all rounds again and again until nothing gets better.
   *
   * @param most what to spend, in moves: an assignment of n rounds counts as n^2 / 3
   * @param ends asked before each assignment
   * @return what was spent
   */
  long improve(long most, BooleanSupplier ends) {
    long before;
    do {
      before = state.cost();
      for (int[] group : groups) {
        pass(group, most, ends);
      }
    } while (state.cost() < before && spent < most && !ends.getAsBoolean());
    return spent;
  }

  /** Splits the slots of a group at random into sets without pairs, and reassigns each. */
  private void pass(int[] group, long most, BooleanSupplier ends) {
    for (int i = group.length - 1; i > 0; i--) {
      int j = draws.below(i + 1);
      int slot = group[i];
      group[i] = group[j];
      group[j] = slot;
    }
    int left = group.length;
    while (left >= LEAST_AT_ONCE && spent < most && !ends.getAsBoolean()) {
      int size = 0;
      int at = 0;
      sets++;
      pieces.clear();
      while (at < left && size < MOST_AT_ONCE) {
        int slot = group[at];
        if (near[slot] == sets || !pieces.add(slots.orbit()[slot])) {
          at++;
        } else {
          chosen[size++] = slot;
          markNear(slot);
          left--;
          group[at] = group[left];
          group[left] = slot;
        }
      }
      spent += (at + (long) size * size) / COST_OF_MOVE;
      if (size >= LEAST_AT_ONCE) {
        reassign(size);
      }
    }
  }

  private void markNear(int slot) {
    PairCosts pairs = state.problem.costs().pairs();
    for (int i = pairs.lightStart()[slot]; i < pairs.lightStart()[slot + 1]; i++) {
      near[pairs.lightSlot()[i]] = sets;
    }
    for (int i = pairs.seamStart()[slot]; i < pairs.seamStart()[slot + 1]; i++) {
      near[pairs.seamSlot()[i]] = sets;
    }
    Clashes clashes = state.problem.clashes();
    for (int i = clashes.start()[slot]; i < clashes.start()[slot + 1]; i++) {
      near[clashes.slot()[i]] = sets;
    }
  }

  /** Goes to the best assignment, unless what else counts, such as copies, outweighs the gain. */
  private void reassign(int size) {
    int[] before = new int[size];
    for (int row = 0; row < size; row++) {
      before[row] = state.yarn[chosen[row]];
      for (int column = 0; column < size; column++) {
        cost[row][column] = state.ofPairs(chosen[row], state.yarn[chosen[column]]);
      }
    }
    int[] columns = CheapestAssignment.of(cost, size);
    long gain = 0;
    int[] after = new int[size];
    for (int row = 0; row < size; row++) {
      gain -= cost[row][columns[row]];
      after[row] = before[columns[row]];
    }
    if (gain > 0 && take(after) >= 0) {
      take(before);
    }
  }

  /** Gives each of the chosen its yarn, by exchanges of two. */
  private long take(int[] yarns) {
    long sum = 0;
    for (int row = 0; row < yarns.length; row++) {
      for (int other = row + 1; state.yarn[chosen[row]] != yarns[row]; other++) {
        if (state.yarn[chosen[other]] == yarns[row] && yarns[other] != yarns[row]) {
          long delta = state.exchangeAlike(chosen[row], chosen[other], Moves.NO_LIMIT);
          state.exchange(chosen[row], chosen[other]);
          acceptance.made(NAME, delta, chosen[row], chosen[other]);
          sum += delta;
        }
      }
    }
    return sum;
  }
}
