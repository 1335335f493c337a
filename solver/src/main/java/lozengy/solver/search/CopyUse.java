package lozengy.solver.search;

import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * What it costs that pieces share sequences: the penalty of too many copies, and the loss of
 * variety. To tell and to make a change is O(1) on average. Nothing allocates.
 *
 * <p>A part counts copies by itself, until the whole settles with it.
 */
final class CopyUse {

  private final Slots slots;
  private final int[] orbit;
  private final int[] orbitStart;
  private final int allowed;
  private final long copyCost;
  private final long hardCost;
  private final boolean matter;
  final SequenceCounts sequences;

  CopyUse(Problem problem) {
    this.slots = problem.slots();
    this.orbit = slots.orbit();
    this.orbitStart = slots.orbitStart();
    this.allowed = problem.copies();
    this.copyCost = problem.prices().copy();
    this.hardCost = problem.prices().hard();
    this.matter = allowed < slots.orbits() || copyCost > 0;
    this.sequences = new SequenceCounts(slots, problem.yarns(), allowed);
  }

  /**
   * Makes a part.
   *
   * @param pieces how many pieces may change in it
   */
  CopyUse(CopyUse whole, int pieces) {
    this.slots = whole.slots;
    this.orbit = whole.orbit;
    this.orbitStart = whole.orbitStart;
    this.allowed = whole.allowed;
    this.copyCost = whole.copyCost;
    this.hardCost = whole.hardCost;
    this.matter = whole.matter;
    this.sequences = new SequenceCounts(whole.sequences, pieces);
  }

  /** Takes over what has changed in a part. */
  void settle(CopyUse part) {
    sequences.settle(part.sequences);
  }

  /** Counts an assignment afresh. */
  void reset(int[] assignment) {
    sequences.reset(slots, assignment);
  }

  /** The cost of sequences that several pieces have, but for a constant. */
  long cost() {
    return hardCost * sequences.surplus() - copyCost * sequences.distinct();
  }

  /** Pieces beyond the allowed number of copies, over all sequences. */
  long surplus() {
    return sequences.surplus();
  }

  /** Whether more pieces have the sequence of a piece than may. */
  boolean tooMany(int ofOrbit) {
    return matter && sequences.countOf(ofOrbit) > allowed;
  }

  /** Whether a delta is too much even if two pieces win all that other sequences can win them. */
  boolean beyond(long delta, long most, int orbitA, int orbitB) {
    return delta > most && delta > most + sequenceGain(orbitA) + sequenceGain(orbitB);
  }

  /** Whether other sequences make no difference to a delta, or none that could still matter. */
  boolean settled(long delta, long most, int orbitA, int orbitB) {
    return !matter || beyond(delta, most, orbitA, orbitB);
  }

  /** The most that one piece's other sequence could win; nothing while no other piece has its. */
  private long sequenceGain(int ofOrbit) {
    int count = matter ? sequences.countOf(ofOrbit) : 1;
    return count == 1 ? 0 : count > allowed ? copyCost + hardCost : copyCost;
  }

  /** The cost of giving a slot another yarn. */
  long change(int slot, int from, int to) {
    int p = orbit[slot];
    return oneSequence(p, sequences.change(slot - orbitStart[p], from, to));
  }

  private long oneSequence(int p, long change) {
    int old = sequences.countOf(p);
    int now = sequences.count(sequences.code(p) + change);
    long delta = (old == 1 ? copyCost : 0) - (now == 0 ? copyCost : 0);
    if (old > allowed) {
      delta -= hardCost;
    }
    return now >= allowed ? delta + hardCost : delta;
  }

  /** The cost of exchanging the yarns of two slots, of any pieces and layers. */
  long exchange(int slotA, int slotB, int a, int b) {
    int orbitA = orbit[slotA];
    int orbitB = orbit[slotB];
    long codeA = sequences.code(orbitA);
    long changeA = sequences.change(slotA - orbitStart[orbitA], a, b);
    long changeB = sequences.change(slotB - orbitStart[orbitB], b, a);
    if (orbitA == orbitB) {
      return oneSequence(orbitA, changeA + changeB);
    }
    long codeB = sequences.code(orbitB);
    long newA = codeA + changeA;
    long newB = codeB + changeB;
    int oldA = sequences.countOf(orbitA);
    int oldB = sequences.countOf(orbitB) - (codeB == codeA ? 1 : 0);
    int nowA = sequences.count(newA) - (newA == codeA ? 1 : 0) - (newA == codeB ? 1 : 0);
    int nowB =
        sequences.count(newB)
            - (newB == codeA ? 1 : 0)
            - (newB == codeB ? 1 : 0)
            + (newB == newA ? 1 : 0);
    int copiesMore = (oldA == 1 ? 1 : 0) + (oldB == 1 ? 1 : 0);
    copiesMore -= (nowA == 0 ? 1 : 0) + (nowB == 0 ? 1 : 0);
    int surplusMore = (nowA >= allowed ? 1 : 0) + (nowB >= allowed ? 1 : 0);
    surplusMore -= (oldA > allowed ? 1 : 0) + (oldB > allowed ? 1 : 0);
    return copiesMore * copyCost + surplusMore * hardCost;
  }

  /** Gives a slot another yarn. */
  void apply(int slot, int from, int to) {
    if (matter) {
      int p = orbit[slot];
      sequences.move(p, sequences.code(p) + sequences.change(slot - orbitStart[p], from, to));
    }
  }
}
