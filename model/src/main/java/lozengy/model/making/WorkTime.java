package lozengy.model.making;

import static java.math.MathContext.DECIMAL128;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.Round;
import lozengy.model.brief.StitchCounts;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.PieceKind;
import lozengy.model.yarn.YarnWork;

/**
 * How long the work takes that is still to be done, and the ends that its rounds leave to weave in.
 *
 * @param perPieceMinutes minutes that a whole piece takes, by kind; a kind is left out where the
 *     brief does not tell of all its rounds
 * @param roundsMinutes minutes that all rounds of pieces take that are still to be worked; empty
 *     where the brief does not tell of one of them
 * @param joiningMinutes minutes that the seams take that are still open; empty where the brief has
 *     no joining, or does not tell how long it takes
 * @param edgingMinutes minutes that the outline takes that is still open; empty likewise
 * @param ends ends of these rounds of pieces: two for each length of yarn, and none between two
 *     neighbouring rounds in one yarn
 */
public record WorkTime(
    Map<PieceKind, BigDecimal> perPieceMinutes,
    Optional<BigDecimal> roundsMinutes,
    Optional<BigDecimal> joiningMinutes,
    Optional<BigDecimal> edgingMinutes,
    long ends) {

  private static final int CM_DECIMALS = 2;

  /**
   * Copies the minutes.
   *
   * @param perPieceMinutes minutes that a whole piece takes, by kind
   * @param roundsMinutes minutes that all rounds take that are still to be worked
   * @param joiningMinutes minutes that the open seams take
   * @param edgingMinutes minutes that the open outline takes
   * @param ends ends of these rounds
   */
  public WorkTime {
    Map<PieceKind, BigDecimal> byKind = new EnumMap<>(PieceKind.class);
    byKind.putAll(perPieceMinutes);
    perPieceMinutes = Collections.unmodifiableMap(byKind);
  }

  /**
   * The time of what is still to be worked; O(rounds).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @return the time and the ends
   */
  public static WorkTime of(Blanket blanket, Sequences sequences) {
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    Optional<BigDecimal> left = Optional.of(BigDecimal.ZERO);
    long ends = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = laid.roundsWorked(piece); round < sequences.rounds(piece); round++) {
        Optional<BigDecimal> minutes = minutes(blanket, blanket.kind(piece), round);
        left = left.flatMap(sum -> minutes.map(sum::add));
        int yarn = sequences.yarn(piece, round);
        boolean goesOn =
            round > 0 && yarn != Sequences.OPEN && yarn == sequences.yarn(piece, round - 1);
        ends += goesOn ? 0 : 2;
      }
    }
    return new WorkTime(perPiece(blanket), left, joining(blanket), edging(blanket), ends);
  }

  private static Optional<BigDecimal> joining(Blanket blanket) {
    int open = blanket.layout().seams().size() - YarnWork.joinedSeams(blanket);
    BigDecimal metres =
        BigDecimal.valueOf(blanket.measures().sideCm())
            .multiply(BigDecimal.valueOf(open))
            .movePointLeft(CM_DECIMALS);
    return blanket.brief().joining().flatMap(use -> use.minutes(metres));
  }

  /** What of the edging is done only a count of its yarn tells. */
  private static Optional<BigDecimal> edging(Blanket blanket) {
    Optional<BigDecimal> sum = Optional.empty();
    for (YarnUse use : blanket.brief().edging()) {
      double edged =
          blanket
              .yarn(blanket.yarnIndex(use.yarn()))
              .counted()
              .map(Counted::edgedPercent)
              .orElse(0.0);
      BigDecimal open =
          BigDecimal.valueOf(blanket.measures().outlineLengthCm())
              .multiply(BigDecimal.valueOf(100 - edged))
              .movePointLeft(2 * CM_DECIMALS);
      Optional<BigDecimal> minutes = use.minutes(open);
      if (minutes.isEmpty()) {
        return Optional.empty();
      }
      sum = Optional.of(sum.orElse(BigDecimal.ZERO).add(minutes.get()));
    }
    return sum;
  }

  /**
   * {@return minutes of all that is still to be done and whose time is told, joining and edging
   * included; empty where the time of a round is not}
   */
  public Optional<BigDecimal> allMinutes() {
    return roundsMinutes.map(
        rounds ->
            rounds
                .add(joiningMinutes.orElse(BigDecimal.ZERO))
                .add(edgingMinutes.orElse(BigDecimal.ZERO)));
  }

  private static Map<PieceKind, BigDecimal> perPiece(Blanket blanket) {
    Map<PieceKind, BigDecimal> minutes = new EnumMap<>(PieceKind.class);
    blanket
        .brief()
        .motifs()
        .forEach(
            (kind, motif) -> {
              Optional<BigDecimal> sum = Optional.of(BigDecimal.ZERO);
              for (int round = 0; round < motif.rounds().size(); round++) {
                Optional<BigDecimal> each = minutes(blanket, kind, round);
                sum = sum.flatMap(before -> each.map(before::add));
              }
              sum.ifPresent(all -> minutes.put(kind, all));
            });
    return minutes;
  }

  /**
   * {@return minutes that a round takes, as stated or by its stitches; empty where the brief tells
   * neither}
   *
   * @param blanket the blanket
   * @param kind a kind of piece that it has a motif for
   * @param at the round, from 0 at the centre
   */
  public static Optional<BigDecimal> minutes(Blanket blanket, PieceKind kind, int at) {
    Brief brief = blanket.brief();
    Round round = blanket.motif(kind).rounds().get(at);
    return round
        .minutes()
        .or(
            () ->
                brief
                    .stitching()
                    .perMinute()
                    .filter(pace -> round.amount() instanceof StitchCounts)
                    .map(
                        pace ->
                            BigDecimal.valueOf(((StitchCounts) round.amount()).total())
                                .divide(pace, DECIMAL128)));
  }
}
