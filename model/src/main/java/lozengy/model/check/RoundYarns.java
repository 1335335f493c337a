package lozengy.model.check;

import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.blanket.Sequences;

/**
 * Which yarns each round of each piece may still take, as a bit set per round. Mutable; pieces,
 * rounds (from the centre) and yarns are the indices of a {@link Blanket}.
 */
public final class RoundYarns {

  private final Blanket blanket;
  private final RoundIndex index;
  private final int yarns;
  private final int words;
  private final long[] bits;

  private RoundYarns(Blanket blanket, long[] bits) {
    this.blanket = blanket;
    this.index = blanket.index();
    this.yarns = blanket.yarnCount();
    this.words = words(yarns);
    this.bits = bits;
  }

  private static int words(int yarns) {
    return (yarns + 63) / 64;
  }

  /**
   * Every round may take every yarn.
   *
   * @param blanket the blanket
   * @return the yarns of its rounds
   */
  public static RoundYarns all(Blanket blanket) {
    int yarns = blanket.yarnCount();
    int words = words(yarns);
    long[] bits = new long[blanket.index().count() * words];
    for (int i = 0; i < bits.length; i++) {
      int left = yarns - i % words * 64;
      bits[i] = left >= 64 ? -1 : (1L << left) - 1;
    }
    return new RoundYarns(blanket, bits);
  }

  /**
   * {@return what the lines of the brief leave each round by themselves: its lock, its tones, and
   * the bans on its piece; or what pieces of the pile show that may lie there}
   *
   * @param blanket the blanket
   */
  public static RoundYarns direct(Blanket blanket) {
    return direct(blanket, RuleBook.lines(blanket));
  }

  /**
   * {@return the same by some of the brief's lines alone}
   *
   * @param blanket the blanket
   * @param lines the lines of the brief that hold
   */
  public static RoundYarns direct(Blanket blanket, List<BriefLine> lines) {
    return PileFits.widened(blanket, toWork(blanket, lines), lines);
  }

  /**
   * {@return what some lines leave the rounds of pieces that are still to be worked}
   *
   * @param blanket the blanket
   * @param lines the lines of the brief that hold
   */
  public static RoundYarns toWork(Blanket blanket, List<BriefLine> lines) {
    RoundYarns yarns = all(blanket);
    lines.forEach(yarns::restrict);
    return yarns;
  }

  /**
   * {@return what some lines leave the rounds of places, whatever comes to lie there}
   *
   * @param blanket the blanket
   * @param lines the lines of the brief that hold
   */
  public static RoundYarns ofPlaces(Blanket blanket, List<BriefLine> lines) {
    return only(blanket, lines, true);
  }

  /**
   * {@return what some lines leave rounds that are still to be worked and not locked, counts aside}
   *
   * @param blanket the blanket
   * @param lines the lines of the brief that hold
   */
  public static RoundYarns unlocked(Blanket blanket, List<BriefLine> lines) {
    return only(blanket, lines, false);
  }

  private static RoundYarns only(Blanket blanket, List<BriefLine> lines, boolean ofPlace) {
    RoundYarns yarns = all(blanket);
    lines.stream()
        .flatMap(line -> line.grounds(Ground.May.class))
        .filter(may -> may.ofPlace() == ofPlace)
        .forEach(yarns::restrict);
    return yarns;
  }

  /** {@return a copy that changes on its own} */
  public RoundYarns copy() {
    return new RoundYarns(blanket, bits.clone());
  }

  /** {@return how many pieces} */
  public int pieces() {
    return blanket.pieceCount();
  }

  /**
   * {@return how many rounds a piece has}
   *
   * @param piece the piece's index, from 0
   */
  public int rounds(int piece) {
    return index.border(piece) - index.centre(piece) + 1;
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
   * Takes out what a line forbids single rounds that are still to be worked.
   *
   * @param line a line of the brief
   */
  public void restrict(BriefLine line) {
    line.grounds(Ground.May.class).forEach(this::restrict);
    line.grounds(Ground.Count.class).filter(count -> count.most() == 0).forEach(this::restrict);
  }

  /** That no piece shows a yarn is a ban. */
  private void restrict(Ground.Count none) {
    for (int[] rounds : none.rounds()) {
      for (int number : rounds) {
        int piece = index.piece(number);
        if (!blanket.worked(piece, index.round(number))) {
          remove(piece, index.round(number), none.yarn());
        }
      }
    }
  }

  private void restrict(Ground.May may) {
    long[] kept = Arrays.copyOf(may.yarns().toLongArray(), words);
    for (int number : may.rounds()) {
      for (int i = 0; i < words; i++) {
        bits[number * words + i] &= kept[i];
      }
    }
  }

  /**
   * {@return how many yarns a round may take}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int size(int piece, int round) {
    int from = index.number(piece, round) * words;
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
    return index.number(piece, round) * words + yarn / 64;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RoundYarns that
        && blanket == that.blanket
        && Arrays.equals(bits, that.bits);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bits);
  }
}
