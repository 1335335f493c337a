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
import lozengy.model.brief.Round;
import lozengy.model.brief.StitchCounts;
import lozengy.model.layout.PieceKind;

/**
 * How long the rounds take that are still to be worked, and the ends they leave to weave in.
 * Joining and edging are not counted.
 *
 * @param perPieceMinutes minutes that a whole piece takes, by kind; a kind is left out where the
 *     brief does not tell of all its rounds
 * @param leftMinutes minutes that all rounds take that are still to be worked; empty where the
 *     brief does not tell of one of them, or none is left
 * @param ends ends of these rounds: two for each length of yarn, and none between two neighbouring
 *     rounds in one yarn
 */
public record WorkTime(
    Map<PieceKind, BigDecimal> perPieceMinutes, Optional<BigDecimal> leftMinutes, long ends) {

  /**
   * Copies the minutes.
   *
   * @param perPieceMinutes minutes that a whole piece takes, by kind
   * @param leftMinutes minutes that all rounds take that are still to be worked
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
    Optional<BigDecimal> left = Optional.empty();
    boolean known = true;
    long ends = 0;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = laid.roundsWorked(piece); round < sequences.rounds(piece); round++) {
        Optional<BigDecimal> minutes = minutes(blanket, blanket.kind(piece), round);
        known &= minutes.isPresent();
        left = Optional.of(left.orElse(BigDecimal.ZERO).add(minutes.orElse(BigDecimal.ZERO)));
        int yarn = sequences.yarn(piece, round);
        boolean goesOn =
            round > 0 && yarn != Sequences.OPEN && yarn == sequences.yarn(piece, round - 1);
        ends += goesOn ? 0 : 2;
      }
    }
    return new WorkTime(perPiece(blanket), known ? left : Optional.empty(), ends);
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

  /** Minutes of a round: as stated, or by its stitches. */
  private static Optional<BigDecimal> minutes(Blanket blanket, PieceKind kind, int at) {
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
