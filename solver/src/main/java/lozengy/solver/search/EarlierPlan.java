package lozengy.solver.search;

import java.util.Arrays;
import java.util.stream.IntStream;
import lozengy.model.blanket.Sequences;
import lozengy.solver.problem.PilePlaces;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * What of an earlier plan can stand by what single rounds may take: the rest is to be filled.
 *
 * @param yarn the yarn of every slot, or OPEN where it had none or may not keep it
 * @param laid by place, the stack of the pile whose piece lies there, or -1
 */
record EarlierPlan(int[] yarn, int[] laid) {

  /**
   * Reads a plan.
   *
   * @param problem a problem with an earlier plan
   * @param draws where pieces of the pile that lie nowhere yet go
   */
  static EarlierPlan of(Problem problem, Draws draws) {
    Slots slots = problem.slots();
    int[] before = problem.assignment(problem.earlier().orElseThrow());
    int[] laid = laid(problem, before, draws);
    int[] yarn = slots.fixedYarn().clone();
    for (int slot : slots.free()) {
      if (before[slot] != Sequences.OPEN && problem.domains().allows(slot, before[slot])) {
        yarn[slot] = before[slot];
      }
    }
    for (int place = 0; place < laid.length; place++) {
      if (laid[place] >= 0) {
        int[] yarns = problem.pile().yarns()[laid[place]];
        System.arraycopy(yarns, 0, yarn, slots.orbitStart()[place], yarns.length);
      }
    }
    return new EarlierPlan(yarn, laid);
  }

  /** The free slots that have to be filled. */
  int[] loose(Problem problem) {
    return IntStream.of(problem.slots().free())
        .filter(slot -> yarn[slot] == Sequences.OPEN)
        .toArray();
  }

  /** The pieces of the pile where they lay, as far as they did; else all dealt anew. */
  private static int[] laid(Problem problem, int[] before, Draws draws) {
    PilePlaces pile = problem.pile();
    Slots slots = problem.slots();
    int[] laid = new int[slots.orbits()];
    Arrays.fill(laid, -1);
    int[] missing = pile.counts().clone();
    for (int stack = 0; stack < missing.length; stack++) {
      int[] yarns = pile.yarns()[stack];
      for (int place : pile.places()[pile.kinds()[stack]]) {
        int start = slots.orbitStart()[place];
        boolean here =
            missing[stack] > 0
                && laid[place] < 0
                && Arrays.equals(before, start, start + yarns.length, yarns, 0, yarns.length)
                && pile.fits(slots, stack, place);
        if (here) {
          laid[place] = stack;
          missing[stack]--;
        }
      }
    }
    for (int stack = 0; stack < missing.length; stack++) {
      int[] places = pile.places()[pile.kinds()[stack]];
      int first = places.length == 0 ? 0 : draws.below(places.length);
      for (int i = 0; i < places.length && missing[stack] > 0; i++) {
        int place = places[(first + i) % places.length];
        if (laid[place] < 0 && pile.fits(slots, stack, place)) {
          laid[place] = stack;
          missing[stack]--;
        }
      }
    }
    boolean all = IntStream.of(missing).sum() == 0 && !leavesEmpty(problem, laid);
    return all ? laid : pile.deal(slots, problem.domains(), draws::below);
  }

  /** Whether a place without a piece of the pile is left for which no yarn serves. */
  private static boolean leavesEmpty(Problem problem, int[] laid) {
    Slots slots = problem.slots();
    return IntStream.range(0, slots.count())
        .anyMatch(
            slot -> laid[slots.orbit()[slot]] < 0 && problem.domains().yarns(slot).length == 0);
  }
}
