package lozengy.solver.search;

import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * Exchanges yarns along chains of borders. A border takes another yarn; each border beside it that
 * may not meet that yarn takes the one that was given up, and so on until nothing clashes that did
 * not before. Where borders clash only by the same yarn, these are Kempe chains; where min-contrast
 * joins yarns into classes, a chain exchanges the classes. O(pairs of the chain's slots); no move
 * allocates.
 */
final class Chains {

  private static final String CHAIN = "Kempe chain";

  /** Where many yarns may meet, a chain longer than this is given up: single changes do as well. */
  private static final int LONGEST = 64;

  /** Borders that chains of any length may go through for each chain that is drawn. */
  private static final int CREDIT = 4;

  private static final int MOST_CREDIT = 1000;

  private final Problem problem;
  private final State state;
  private final Draws draws;
  private final Acceptance acceptance;
  private final Slots slots;
  private final Clashes clashes;
  private final boolean any;
  private final int longest;
  private int credit;
  private final int[] chain;
  private final int[] before;
  private final int[] after;
  private final boolean[] inChain;

  /**
   * Makes the chains of a state.
   *
   * @param any whether chains may have any length; then so few are tried that they stay a small
   *     part of all work
   */
  Chains(State state, Draws draws, Acceptance acceptance, boolean any) {
    this.problem = state.problem;
    this.state = state;
    this.draws = draws;
    this.acceptance = acceptance;
    this.slots = problem.slots();
    this.clashes = problem.clashes();
    this.any = any;
    this.longest = any ? slots.orbits() : Math.min(LONGEST, slots.orbits());
    this.chain = new int[this.longest];
    this.before = new int[this.longest];
    this.after = new int[this.longest];
    this.inChain = new boolean[slots.count()];
  }

  /** Exchanges along the chain from a border with another of its yarns. */
  void exchange(int seed, double temperature) {
    credit = Math.min(MOST_CREDIT, credit + CREDIT);
    if (any && credit < 0 || !state.free(seed)) {
      return;
    }
    int[] domain = problem.domains().yarns(seed);
    int to = domain[draws.below(domain.length)];
    if (state.yarn[seed] == to) {
      return;
    }
    int length = collect(seed, to);
    credit -= length;
    if (length < 2) {
      return;
    }
    long delta = 0;
    for (int i = 0; i < length; i++) {
      // what clashed before may be given the yarn that it has
      if (after[i] != before[i]) {
        delta += state.change(chain[i], after[i], Moves.NO_LIMIT);
        state.apply(chain[i], after[i]);
      }
    }
    if (acceptance.triesOut()) {
      undo(length);
      acceptance.tryOut(CHAIN, delta, () -> make(length), () -> undo(length), seed);
      make(length);
    }
    if (acceptance.accepts(delta, acceptance.most(temperature), temperature)) {
      acceptance.made(CHAIN, delta, seed, seed);
    } else {
      undo(length);
    }
  }

  private void make(int length) {
    for (int i = 0; i < length; i++) {
      state.apply(chain[i], after[i]);
    }
  }

  private void undo(int length) {
    for (int i = length - 1; i >= 0; i--) {
      state.apply(chain[i], before[i]);
    }
  }

  /** Collects a chain; its length, or 0 if it is too long or meets a slot that may not change. */
  private int collect(int seed, int to) {
    int[] start = clashes.start();
    int length = add(0, seed, to);
    boolean possible = true;
    for (int next = 0; next < length && possible; next++) {
      int slot = chain[next];
      for (int i = start[slot]; i < start[slot + 1] && possible; i++) {
        int other = clashes.slot()[i];
        int yarn = state.yarn[other];
        boolean pushed = clashes.bars(i, after[next], yarn);
        boolean own = slots.orbit()[other] == slots.orbit()[slot];
        if (own || inChain[other] || !pushed && yarn != before[next]) {
          continue;
        }
        int its = pushed ? before[next] : after[next];
        possible = length < longest && state.free(other) && problem.domains().allows(other, its);
        if (possible) {
          length = add(length, other, its);
        }
      }
    }
    for (int i = 0; i < length; i++) {
      inChain[chain[i]] = false;
    }
    return possible ? length : 0;
  }

  private int add(int length, int slot, int to) {
    chain[length] = slot;
    before[length] = state.yarn[slot];
    after[length] = to;
    inChain[slot] = true;
    return length + 1;
  }
}
