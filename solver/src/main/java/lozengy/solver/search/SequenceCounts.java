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
 *
 * <p>A part counts how its own pieces change what the whole counts, which stays as it is until it
 * takes the part's changes over.
 */
final class SequenceCounts {

  /** Buckets by which sequences of a single piece are told from most others. */
  private static final int MOST_BUCKETS = 1 << 14;

  private final long[] codes;
  private final int yarns;
  private final long[] lengthCodes;
  private final long[] pieceCode;

  /** A byte of each key that is never 0, or 0: most new sequences are told by these few bytes. */
  private byte[] tags;

  private long[] keys;
  private int[] counts;
  private byte[] spareTags;
  private long[] spareKeys;
  private int[] spareCounts;
  private final int mask;

  /** By buckets, how many sequences there are that several pieces have. */
  private final int[] several;

  private int entries;
  private int distinct;
  private long surplus;
  private final int copies;
  private final SequenceCounts whole;

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
    this.whole = null;
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
    int size = size(slots.orbits());
    mask = size - 1;
    tags = new byte[size];
    keys = new long[size];
    counts = new int[size];
    spareTags = new byte[size];
    spareKeys = new long[size];
    spareCounts = new int[size];
    several = new int[Math.min(size, MOST_BUCKETS)];
  }

  /**
   * Makes a part without changes.
   *
   * @param pieces how many pieces may change in it
   */
  SequenceCounts(SequenceCounts whole, int pieces) {
    this.whole = whole;
    this.codes = whole.codes;
    this.yarns = whole.yarns;
    this.lengthCodes = whole.lengthCodes;
    this.pieceCode = whole.pieceCode;
    this.copies = whole.copies;
    this.distinct = whole.distinct;
    this.surplus = whole.surplus;
    int size = size(2 * pieces);
    mask = size - 1;
    tags = new byte[size];
    keys = new long[size];
    counts = new int[size];
    spareTags = new byte[size];
    spareKeys = new long[size];
    spareCounts = new int[size];
    several = whole.several.clone();
  }

  private static int size(int pieces) {
    return Integer.highestOneBit(Math.max(16, pieces * 4 - 1)) * 2;
  }

  /** Takes over what has changed in a part. O(pieces of the part). */
  void settle(SequenceCounts part) {
    for (int i = 0; i < part.tags.length; i++) {
      int more = part.tags[i] == 0 ? 0 : part.counts[i];
      for (; more > 0; more--) {
        add(part.keys[i]);
      }
      for (; more < 0; more++) {
        remove(part.keys[i]);
      }
    }
  }

  /** Counts an assignment afresh. */
  void reset(Slots slots, int[] assignment) {
    Arrays.fill(tags, (byte) 0);
    Arrays.fill(several, 0);
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
    int own = tags[at] != 0 ? counts[at] : 0;
    return whole == null ? own : own + whole.count(code);
  }

  /** How many pieces have the sequence of a piece, itself among them. */
  int countOf(int orbit) {
    long code = pieceCode[orbit];
    return several[bucket(code)] == 0 ? 1 : count(code);
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
    int at = entry(code);
    int before = counts[at]++ + (whole == null ? 0 : whole.count(code));
    if (before == 0) {
      distinct++;
    }
    if (before == 1) {
      several[bucket(code)]++;
    }
    if (before >= copies) {
      surplus++;
    }
  }

  private void remove(long code) {
    int at = entry(code);
    int after = --counts[at] + (whole == null ? 0 : whole.count(code));
    if (after == 0) {
      distinct--;
    }
    if (after == 1) {
      several[bucket(code)]--;
    }
    if (after >= copies) {
      surplus--;
    }
  }

  private int bucket(long code) {
    return (int) (code >>> 32) & several.length - 1;
  }

  /** The entry of a code, made where there is none. */
  private int entry(long code) {
    int at = find(code);
    if (tags[at] == 0) {
      if (2 * (entries + 1) > keys.length) {
        rebuild();
        at = find(code);
      }
      put(at, code, 0);
    }
    return at;
  }

  /** The entry of a code, or the empty one where it would go; most of the latter by tags alone. */
  private int find(long code) {
    byte tag = tag(code);
    int at = (int) (code ^ code >>> 32) & mask;
    while (tags[at] != 0 && (tags[at] != tag || keys[at] != code)) {
      at = at + 1 & mask;
    }
    return at;
  }

  private static byte tag(long code) {
    return (byte) (code >>> 56 | 1);
  }

  private void put(int at, long code, int count) {
    tags[at] = tag(code);
    keys[at] = code;
    counts[at] = count;
    entries++;
  }

  private void rebuild() {
    byte[] oldTags = tags;
    long[] oldKeys = keys;
    int[] oldCounts = counts;
    tags = spareTags;
    keys = spareKeys;
    counts = spareCounts;
    Arrays.fill(tags, (byte) 0);
    entries = 0;
    for (int i = 0; i < oldTags.length; i++) {
      if (oldTags[i] != 0 && oldCounts[i] != 0) {
        put(find(oldKeys[i]), oldKeys[i], oldCounts[i]);
      }
    }
    spareTags = oldTags;
    spareKeys = oldKeys;
    spareCounts = oldCounts;
  }
}
