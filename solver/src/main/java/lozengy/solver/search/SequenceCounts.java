package lozengy.solver.search;

import java.util.Arrays;
import java.util.SplittableRandom;
import lozengy.solver.problem.Slots;

/**
 * How many pieces share each sequence, by a 64-bit sum of random numbers, one for each round
 * (counted from the centre) and yarn. Two sequences with one sum are taken for equal: among a
 * million sequences a chance of some 3e-8, and the result is checked from scratch in any case.
 *
 * <p>An open hash table of fixed size: entries whose count falls to 0 stay until the table is half
 * full, when it is rebuilt in place of a spare. O(1) a look-up on average.
 */
final class SequenceCounts {

  private final long[] codes;
  private final int yarns;
  private final long[] lengthCodes;
  private final long[] pieceCode;
  private long[] keys;
  private int[] counts;
  private long[] spareKeys;
  private int[] spareCounts;
  private final int mask;
  private int entries;
  private int distinct;
  private long surplus;
  private final int copies;

  /**
   * Makes an empty table.
   *
   * @param slots the pieces and their rounds
   * @param yarns how many yarns
   * @param copies how many pieces may share a sequence
   */
  SequenceCounts(Slots slots, int yarns, int copies) {
    this.yarns = yarns;
    this.copies = copies;
    int longest = 0;
    for (int orbit = 0; orbit < slots.orbits(); orbit++) {
      longest = Math.max(longest, slots.rounds(orbit));
    }
    // One fixed seed: the codes' only role is to differ.
    SplittableRandom random = new SplittableRandom(0x5eed);
    codes = new long[longest * yarns];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = random.nextLong();
    }
    lengthCodes = new long[longest + 1];
    for (int i = 0; i < lengthCodes.length; i++) {
      lengthCodes[i] = random.nextLong();
    }
    pieceCode = new long[slots.orbits()];
    int size = Integer.highestOneBit(Math.max(16, slots.orbits() * 8 - 1)) * 2;
    mask = size - 1;
    keys = new long[size];
    counts = new int[size];
    spareKeys = new long[size];
    spareCounts = new int[size];
  }

  /** Counts an assignment afresh. */
  void reset(Slots slots, int[] assignment) {
    Arrays.fill(keys, 0);
    Arrays.fill(counts, 0);
    entries = 0;
    distinct = 0;
    surplus = 0;
    for (int orbit = 0; orbit < slots.orbits(); orbit++) {
      int start = slots.orbitStart()[orbit];
      long code = lengthCodes[slots.rounds(orbit)];
      for (int slot = start; slot < slots.orbitStart()[orbit + 1]; slot++) {
        code += codes[(slot - start) * yarns + assignment[slot]];
      }
      pieceCode[orbit] = code;
      add(code);
    }
  }

  /** The code of a piece's sequence. */
  long code(int orbit) {
    return pieceCode[orbit];
  }

  /** What a round's change of yarn adds to a code. */
  long change(int round, int from, int to) {
    return codes[round * yarns + to] - codes[round * yarns + from];
  }

  /** How many pieces have a sequence. */
  int count(long code) {
    int at = find(code);
    return keys[at] == code ? counts[at] : 0;
  }

  /** Different sequences in use. */
  int distinct() {
    return distinct;
  }

  /** Pieces beyond the allowed number of copies, over all sequences. */
  long surplus() {
    return surplus;
  }

  /** Gives a piece another sequence. */
  void move(int orbit, long code) {
    remove(pieceCode[orbit]);
    pieceCode[orbit] = code;
    add(code);
  }

  private void add(long code) {
    int at = find(code);
    if (keys[at] != code) {
      if (2 * (entries + 1) > keys.length) {
        rebuild();
        at = find(code);
      }
      keys[at] = code;
      entries++;
    }
    int before = counts[at]++;
    if (before == 0) {
      distinct++;
    }
    if (before >= copies) {
      surplus++;
    }
  }

  private void remove(long code) {
    int after = --counts[find(code)];
    if (after == 0) {
      distinct--;
    }
    if (after >= copies) {
      surplus--;
    }
  }

  /**
   * The entry of a code, or the empty one where it would go. The code 0 is never drawn in practice.
   */
  private int find(long code) {
    int at = (int) (code ^ code >>> 32) & mask;
    while (keys[at] != 0 && keys[at] != code) {
      at = at + 1 & mask;
    }
    return at;
  }

  private void rebuild() {
    long[] oldKeys = keys;
    int[] oldCounts = counts;
    keys = spareKeys;
    counts = spareCounts;
    Arrays.fill(keys, 0);
    Arrays.fill(counts, 0);
    entries = 0;
    for (int i = 0; i < oldKeys.length; i++) {
      if (oldCounts[i] > 0) {
        int at = find(oldKeys[i]);
        keys[at] = oldKeys[i];
        counts[at] = oldCounts[i];
        entries++;
      }
    }
    spareKeys = oldKeys;
    spareCounts = oldCounts;
  }
}
