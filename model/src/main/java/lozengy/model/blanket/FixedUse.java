package lozengy.model.blanket;

import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Measures;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/**
 * What counts against a yarn whatever the free rounds take. Where a yarn's stock was counted in the
 * middle of the work, the rounds that had been worked by then are settled: they no longer count,
 * unless they were given up since.
 */
final class FixedUse {

  private static final YarnAmount NOTHING = new YarnAmount.Length(0);

  private static final List<String> ALL = List.of("all");

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  /** Beyond these an outline in binary fractions says nothing. */
  private static final int DECIMALS_OF_CM = 8;

  private final Brief brief;
  private final Layout layout;
  private final ReadyYarns yarns;
  private final ReadyMotifs motifs;
  private final KnownPieces known;
  private final Measures measures;
  private final BorderSeams borderSeams;
  private final long joining;
  private final long[] edging;
  private final long[] fixed;
  private final long[] settled;
  private final int[][] settledRounds;
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
    this.borderSeams = borderSeams;
    this.brief = brief;
    this.layout = layout;
    this.yarns = yarns;
    this.motifs = motifs;
    this.known = known;
    this.measures = measures;
    this.joining = joining();
    this.edging = edging();
    this.settled = new long[yarns.tones().length];
    this.settledRounds = new int[settled.length][];
    this.pileBeyond = new long[settled.length];
    this.pileOut = new long[settled.length];
    this.fixed = new long[settled.length];
    settlePieces();
    brief.pile().forEach(this::settle);
    brief.pile().forEach(this::takeOut);
    findPileBeyondStock();
    brief.joiningInOneYarn().ifPresent(use -> fixed[yarns.index().get(use.yarn())] += joining);
    for (int yarn = 0; yarn < fixed.length; yarn++) {
      fixed[yarn] += edging[yarn] + pileOut[yarn] - settled[yarn] - pileBeyond[yarn];
    }
  }

  /** Millimetres that joining takes, without seams that a count has settled. */
  long joiningMillimetres() {
    return joining;
  }

  /**
   * By yarn, millimetres that edging takes, without what a count has settled; not to be changed.
   */
  long[] edgingMillimetres() {
    return edging;
  }

  /**
   * By yarn, millimetres of joining and edging and of the pile's pieces that stay out, less those
   * settled in rounds and those that the pile holds beyond the stock; not to be changed.
   */
  long[] fixedMillimetres() {
    return fixed;
  }

  /** By yarn, millimetres that the pile holds beyond the stock; not to be changed. */
  long[] pileBeyondMillimetres() {
    return pileBeyond;
  }

  /** By yarn, millimetres in the pile's pieces that stay out; not to be changed. */
  long[] pileOutMillimetres() {
    return pileOut;
  }

  /** By yarn, millimetres of rounds, and of seams that their borders took, settled by a count. */
  long[] settledMillimetres() {
    return settled;
  }

  /**
   * By yarn and piece, how many rounds a count has settled, null without a count; not to be
   * changed.
   */
  int[][] settledRounds() {
    return settledRounds;
  }

  /** Settles what worked pieces hold of the yarns that were counted since. */
  private void settlePieces() {
    for (int yarn = 0; yarn < settled.length; yarn++) {
      int each = yarn;
      counted(brief.yarns().get(yarn)).ifPresent(counted -> settle(counted, each));
    }
  }

  private void settle(Counted counted, int yarn) {
    int[] rounds = settledRounds(counted);
    settledRounds[yarn] = rounds;
    if (brief.joiningInBorders().isPresent()) {
      settleSeams(counted, yarn);
    }
    for (int piece = 0; piece < rounds.length; piece++) {
      PieceKind kind = layout.places().get(piece).kind();
      for (int round = 0; round < rounds[piece]; round++) {
        if (known.locks().yarn(piece, round) == yarn) {
          settled[yarn] += motifs.needMillimetres()[kind.ordinal()][round][yarn];
        }
      }
    }
  }

  /** Settles what the border of a piece has given to seams. */
  private void settleSeams(Counted counted, int yarn) {
    BitSet joined = joinedNow(counted.joined());
    Pairs seams = layout.seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      if (joined.get(seams.first()[seam]) && joined.get(seams.second()[seam])) {
        int ofFirst = borderSeams.halvesOfFirst()[seam];
        int halves =
            (border(seams.first()[seam]) == yarn ? ofFirst : 0)
                + (border(seams.second()[seam]) == yarn ? 2 - ofFirst : 0);
        settled[yarn] += halves * borderSeams.halfMillimetres()[yarn];
      }
    }
  }

  private int border(int piece) {
    int rounds = motifs.roundCount(layout.places().get(piece).kind());
    return known.locks().yarn(piece, rounds - 1);
  }

  /** Settles what pieces on the pile hold of yarns that were counted since. */
  private void settle(PileEntry entry) {
    for (int round = 0; round < entry.rounds().size(); round++) {
      int yarn = yarns.index().get(entry.rounds().get(round));
      if (settles(entry, yarn)) {
        long need = motifs.needMillimetres()[entry.kind().ordinal()][round][yarn];
        settled[yarn] += need * entry.count();
      }
    }
  }

  private boolean settles(PileEntry entry, int yarn) {
    Yarn each = brief.yarns().get(yarn);
    return each.gone() || entry.counted().contains(each.code());
  }

  /** What pieces that stay out hold is worked, too. */
  private void takeOut(PileEntry entry) {
    for (int round = 0; round < entry.rounds().size(); round++) {
      int yarn = yarns.index().get(entry.rounds().get(round));
      pileOut[yarn] += motifs.needMillimetres()[entry.kind().ordinal()][round][yarn] * entry.out();
    }
  }

  /**
   * Settles what finished pieces hold of a yarn beyond its stock: that they are there is a fact,
   * and no reason to buy yarn.
   */
  private void findPileBeyondStock() {
    long[] held = new long[settled.length];
    for (PileEntry entry : brief.pile()) {
      for (int round = 0; round < entry.rounds().size(); round++) {
        int yarn = yarns.index().get(entry.rounds().get(round));
        if (!settles(entry, yarn)) {
          held[yarn] +=
              motifs.needMillimetres()[entry.kind().ordinal()][round][yarn] * entry.count();
        }
      }
    }
    for (int yarn = 0; yarn < held.length; yarn++) {
      pileBeyond[yarn] = Math.max(0, held[yarn] - yarns.usableMillimetres()[yarn]);
    }
  }

  private long joining() {
    long settled =
        brief.joiningInOneYarn().flatMap(this::counted).map(this::settledSeams).orElse(0L);
    return joiningMillimetres(layout.seams().size() - settled);
  }

  /** Millimetres of yarn that joining along so many seams takes. */
  long joiningMillimetres(long seams) {
    return brief
        .joiningInOneYarn()
        .map(
            use ->
                millimetres(
                    BigDecimal.valueOf(measures.sideCm()).multiply(BigDecimal.valueOf(seams)), use))
        .orElse(0L);
  }

  private long[] edging() {
    long[] sums = new long[yarns.tones().length];
    for (YarnUse use : brief.edging()) {
      double edged = counted(use).map(Counted::edgedPercent).orElse(0.0);
      BigDecimal open = HUNDRED.subtract(BigDecimal.valueOf(edged)).movePointLeft(2);
      sums[yarns.index().get(use.yarn())] += edging(use, open);
    }
    return sums;
  }

  /** Millimetres of a yarn that edging the whole outline takes. */
  long wholeEdgingMillimetres(int yarn) {
    return brief.edging().stream()
        .filter(use -> yarns.index().get(use.yarn()) == yarn)
        .mapToLong(use -> edging(use, BigDecimal.ONE))
        .sum();
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
    return yarn(use).flatMap(FixedUse::counted);
  }

  /** What had been worked when a yarn was counted; of one that is gone, all that is. */
  private static Optional<Counted> counted(Yarn yarn) {
    return yarn.gone()
        ? Optional.of(
            new Counted(NOTHING, ALL, ALL, yarn.counted().map(Counted::edgedPercent).orElse(0.0)))
        : yarn.counted();
  }

  private long settledSeams(Counted counted) {
    BitSet joined = joinedNow(counted.joined());
    Pairs seams = layout.seams();
    long settled = 0;
    for (int seam = 0; seam < seams.size(); seam++) {
      settled += joined.get(seams.first()[seam]) && joined.get(seams.second()[seam]) ? 1 : 0;
    }
    return settled;
  }

  private BitSet joinedNow(List<String> selectors) {
    BitSet joined = new BitSet();
    layout.select(selectors).stream()
        .mapToInt(Place::index)
        .filter(piece -> known.states()[piece] == PieceState.JOINED)
        .forEach(joined::set);
    return joined;
  }

  /** By piece, how many rounds a count has settled, from the centre: worked then and now. */
  private int[] settledRounds(Counted counted) {
    int[] rounds = new int[layout.places().size()];
    for (List<String> selectors : List.of(counted.made(), counted.joined())) {
      layout.select(selectors).forEach(place -> rounds[place.index()] = Integer.MAX_VALUE);
    }
    for (PartWorked part : counted.partWorked()) {
      for (Place place : layout.select(part.at())) {
        rounds[place.index()] = Math.max(rounds[place.index()], part.rounds());
      }
    }
    Arrays.setAll(rounds, piece -> Math.min(rounds[piece], known.roundsWorked()[piece]));
    return rounds;
  }
}
