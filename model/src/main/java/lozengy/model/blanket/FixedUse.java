package lozengy.model.blanket;

import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.LongStream;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Measures;

/**
 * What counts against a yarn whatever the free rounds take: joining, edging and the pile's pieces
 * that stay out, less what counts have settled and what the pile holds beyond the stock. Immutable.
 */
public final class FixedUse {

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  /** Beyond these an outline in binary fractions says nothing. */
  private static final int DECIMALS_OF_CM = 8;

  private final Brief brief;
  private final Layout layout;
  private final ReadyYarns yarns;
  private final ReadyMotifs motifs;
  private final Measures measures;
  private final long joining;
  private final long[] edging;
  private final long[] fixed;
  private final Settled settled;
  private final long[] pileBeyond;
  private final long[] pileOut;

  FixedUse(
      Brief brief,
      Measures measures,
      Layout layout,
      ReadyYarns yarns,
      ReadyMotifs motifs,
      KnownPieces known,
      BorderSeams borderSeams) {
    this.brief = brief;
    this.layout = layout;
    this.yarns = yarns;
    this.motifs = motifs;
    this.measures = measures;
    this.settled = new Settled(brief, layout, yarns, motifs, known, borderSeams);
    this.joining = joining();
    this.edging = edging();
    int count = yarns.count();
    this.pileBeyond = new long[count];
    this.pileOut = new long[count];
    this.fixed = new long[count];
    brief.pile().forEach(this::takeOut);
    findPileBeyondStock();
    brief.joiningInOneYarn().ifPresent(use -> fixed[yarns.index().get(use.yarn())] += joining);
    for (int yarn = 0; yarn < fixed.length; yarn++) {
      fixed[yarn] += edging[yarn] + pileOut[yarn] - settled.millimetres()[yarn] - pileBeyond[yarn];
    }
  }

  /** By yarn, what {@link #millimetres(int)} tells; not to be changed. */
  long[] millimetres() {
    return fixed;
  }

  /**
   * {@return what a yarn is used for beyond all pieces' rounds, in millimetres: joining, edging and
   * the pile's pieces that stay out, less the rounds that had been worked when the yarn was
   * counted, and what the pile holds beyond the stock} Below 0 where these are more: added to the
   * use of all rounds, worked ones included, it gives what counts against the stock.
   *
   * @param yarn the yarn's index, from 0
   */
  public long millimetres(int yarn) {
    return fixed[yarn];
  }

  /**
   * {@return millimetres of a yarn in rounds that had been worked when it was counted, and so do
   * not count against what was left}
   *
   * @param yarn the yarn's index, from 0
   */
  public long settledMillimetres(int yarn) {
    return settled.millimetres()[yarn];
  }

  /**
   * {@return how many rounds of a piece, from the centre, had been worked when a yarn was counted
   * and still are; 0 where it was not}
   *
   * @param yarn the yarn's index, from 0
   * @param piece the piece's index, from 0
   */
  public int settledRounds(int yarn, int piece) {
    int[] rounds = settled.rounds()[yarn];
    return rounds == null ? 0 : rounds[piece];
  }

  /**
   * {@return millimetres that joining in one yarn takes, without seams that had been worked when it
   * was counted; 0 where pieces are joined in their borders' yarns}
   */
  public long joiningMillimetres() {
    return joining;
  }

  /**
   * {@return millimetres that edging takes in all its yarns, without what had been worked when they
   * were counted}
   */
  public long edgingMillimetres() {
    return LongStream.of(edging).sum();
  }

  /**
   * {@return millimetres of a yarn that edging takes, without what had been worked when it was
   * counted}
   *
   * @param yarn the yarn's index, from 0
   */
  public long edgingMillimetres(int yarn) {
    return edging[yarn];
  }

  /**
   * {@return millimetres that finished pieces of the pile hold of a yarn beyond all that may be
   * used of it: a fact, which counts against no stock}
   *
   * @param yarn the yarn's index, from 0
   */
  public long pileBeyondMillimetres(int yarn) {
    return pileBeyond[yarn];
  }

  /**
   * {@return millimetres of a yarn in finished pieces of the pile that stay out of the blanket}
   *
   * @param yarn the yarn's index, from 0
   */
  public long pileOutMillimetres(int yarn) {
    return pileOut[yarn];
  }

  /**
   * {@return millimetres that joining in one yarn takes along so many seams; 0 without it}
   *
   * @param seams how many seams, 0 or more
   */
  public long joiningMillimetres(int seams) {
    return joining((long) seams);
  }

  /**
   * {@return millimetres of a yarn that edging the whole outline takes; 0 where none is in it}
   *
   * @param yarn the yarn's index, from 0
   */
  public long wholeEdgingMillimetres(int yarn) {
    return brief.edging().stream()
        .filter(use -> yarns.index().get(use.yarn()) == yarn)
        .mapToLong(use -> edging(use, BigDecimal.ONE))
        .sum();
  }

  /** What pieces that stay out hold is worked, too. */
  private void takeOut(PileEntry entry) {
    for (int round = 0; round < entry.rounds().size(); round++) {
      int yarn = yarns.index().get(entry.rounds().get(round));
      pileOut[yarn] += motifs.needMillimetres(entry.kind(), round, yarn) * entry.out();
    }
  }

  /**
   * Settles what finished pieces hold of a yarn beyond its stock: that they are there is a fact,
   * and no reason to buy yarn.
   */
  private void findPileBeyondStock() {
    long[] held = new long[pileBeyond.length];
    for (PileEntry entry : brief.pile()) {
      for (int round = 0; round < entry.rounds().size(); round++) {
        int yarn = yarns.index().get(entry.rounds().get(round));
        if (!settled.holds(entry, yarn)) {
          held[yarn] += motifs.needMillimetres(entry.kind(), round, yarn) * entry.count();
        }
      }
    }
    for (int yarn = 0; yarn < held.length; yarn++) {
      pileBeyond[yarn] = Math.max(0, held[yarn] - yarns.usableMillimetres(yarn));
    }
  }

  private long joining() {
    long seams = brief.joiningInOneYarn().flatMap(this::counted).map(settled::seams).orElse(0L);
    return joining(layout.seams().size() - seams);
  }

  /** Millimetres of yarn that joining along so many seams takes. */
  private long joining(long seams) {
    return brief
        .joiningInOneYarn()
        .map(
            use ->
                millimetres(
                    BigDecimal.valueOf(measures.sideCm()).multiply(BigDecimal.valueOf(seams)), use))
        .orElse(0L);
  }

  private long[] edging() {
    long[] sums = new long[yarns.count()];
    for (YarnUse use : brief.edging()) {
      double edged = counted(use).map(Counted::edgedPercent).orElse(0.0);
      BigDecimal open = HUNDRED.subtract(BigDecimal.valueOf(edged)).movePointLeft(2);
      sums[yarns.index().get(use.yarn())] += edging(use, open);
    }
    return sums;
  }

  private long edging(YarnUse use, BigDecimal part) {
    BigDecimal outlineCm =
        BigDecimal.valueOf(measures.outlineLengthCm()).setScale(DECIMALS_OF_CM, HALF_EVEN);
    return millimetres(outlineCm.multiply(part), use);
  }

  /** Whole millimetres of yarn along a length, rounded down. */
  private long millimetres(BigDecimal lengthCm, YarnUse use) {
    Ball ball = yarn(use).flatMap(Yarn::ball).orElse(null);
    return brief.stitching().inHand(use.along(lengthCm.movePointRight(1), ball)).down();
  }

  private Optional<Yarn> yarn(YarnUse use) {
    return brief.yarns().stream().filter(yarn -> yarn.code().equals(use.yarn())).findFirst();
  }

  private Optional<Counted> counted(YarnUse use) {
    return yarn(use).flatMap(Settled::counted);
  }
}
