package lozengy.solver.constraint;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * Which yarns each round of each piece may still take, as a bit set per round. Mutable; pieces,
 * rounds (from the centre) and yarns are the indices of a {@link Blanket}.
 */
public final class Domains {

  private final int[] start;
  private final int yarns;
  private final int words;
  private final long[] bits;

  private Domains(int[] start, int yarns, long[] bits) {
    this.start = start;
    this.yarns = yarns;
    this.words = words(yarns);
    this.bits = bits;
  }

  private static int words(int yarns) {
    return (yarns + 63) / 64;
  }

  /**
   * Domains in which every round may take every yarn.
   *
   * @param blanket the blanket
   * @return the domains
   */
  public static Domains all(Blanket blanket) {
    int[] start = new int[blanket.pieceCount() + 1];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      start[piece + 1] = start[piece] + blanket.roundCount(piece);
    }
    int yarns = blanket.yarnCount();
    int words = words(yarns);
    long[] bits = new long[start[blanket.pieceCount()] * words];
    for (int i = 0; i < bits.length; i++) {
      int left = yarns - i % words * 64;
      bits[i] = left >= 64 ? -1 : (1L << left) - 1;
    }
    return new Domains(start, yarns, bits);
  }

  /**
   * {@return what the lines of the brief leave each round by themselves: its lock, its tones, and
   * the bans on its piece; or what pieces of the pile show that may lie there}
   *
   * @param blanket the blanket
   */
  public static Domains direct(Blanket blanket) {
    return direct(blanket, RulePostings.lines(blanket));
  }

  /**
   * {@return the same by some of the brief's lines alone}
   *
   * @param blanket the blanket
   * @param lines the lines of the brief that hold
   */
  public static Domains direct(Blanket blanket, List<BriefLine> lines) {
    Domains domains = all(blanket);
    lines.forEach(line -> line.content().restrict(domains));
    return PileDomains.widened(blanket, domains, lines);
  }

  /** {@return a copy that changes on its own} */
  public Domains copy() {
    return new Domains(start, yarns, bits.clone());
  }

  /** {@return how many pieces} */
  public int pieces() {
    return start.length - 1;
  }

  /**
   * {@return how many rounds a piece has}
   *
   * @param piece the piece's index, from 0
   */
  public int rounds(int piece) {
    return start[piece + 1] - start[piece];
  }

  /** {@return how many yarns there are} */
  public int yarns() {
    return yarns;
  }

  /**
   * {@return whether a round may take a yarn}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean allows(int piece, int round, int yarn) {
    return (bits[word(piece, round, yarn)] >>> yarn & 1) != 0;
  }

  /**
   * Takes a yarn out of what a round may take.
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public void remove(int piece, int round, int yarn) {
    bits[word(piece, round, yarn)] &= ~(1L << yarn);
  }

  /** Lets a round take a yarn. */
  void add(int piece, int round, int yarn) {
    bits[word(piece, round, yarn)] |= 1L << yarn;
  }

  /**
   * Leaves a round no other yarn than this; none at all if it could not take it.
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public void keepOnly(int piece, int round, int yarn) {
    boolean had = allows(piece, round, yarn);
    int from = (start[piece] + round) * words;
    Arrays.fill(bits, from, from + words, 0);
    if (had) {
      bits[word(piece, round, yarn)] |= 1L << yarn;
    }
  }

  /**
   * {@return how many yarns a round may take}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int size(int piece, int round) {
    int from = (start[piece] + round) * words;
    int size = 0;
    for (int i = from; i < from + words; i++) {
      size += Long.bitCount(bits[i]);
    }
    return size;
  }

  /**
   * {@return the only yarn that a round may take, or {@link Sequences#OPEN} if it may take none or
   * more}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int only(int piece, int round) {
    return size(piece, round) == 1 ? yarnsOf(piece, round)[0] : Sequences.OPEN;
  }

  /**
   * {@return the yarns that a round may take, in order}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int[] yarnsOf(int piece, int round) {
    int[] found = new int[size(piece, round)];
    int count = 0;
    for (int yarn = 0; count < found.length; yarn++) {
      if (allows(piece, round, yarn)) {
        found[count++] = yarn;
      }
    }
    return found;
  }

  private int word(int piece, int round, int yarn) {
    return (start[piece] + round) * words + yarn / 64;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Domains that
        && Arrays.equals(start, that.start)
        && Arrays.equals(bits, that.bits);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bits);
  }
}
