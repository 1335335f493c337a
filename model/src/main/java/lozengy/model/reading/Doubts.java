package lozengy.model.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Extras;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.EdgeFit;
import lozengy.model.layout.PieceKind;
import lozengy.model.unit.Units;

/** Looks for values of a brief that are worth a question. The limits are our own choice. */
public final class Doubts {

  /** Worked edges give, but not so many per cent. */
  private static final double FAR_PERCENT = 30;

  /** In the other unit, the edge then fits within so many per cent. */
  private static final double MEANT_PERCENT = 20;

  /** A point that slipped makes a tenth or ten times; rounds beside each other may differ too. */
  private static final int FAR_TIMES = 6;

  private static final double CM_OF_INCH = Units.cmOfInches(BigDecimal.ONE).doubleValue();

  /** What R, pandas and databases take for a missing value where they read CSV, in capitals. */
  private static final Set<String> MISSING = Set.of("NA", "NULL", "NAN", "-NAN", "NONE");

  private Doubts() {}

  /**
   * What is doubtful of a brief.
   *
   * @param blanket the brief made ready
   * @return the doubts, in the brief's order
   */
  public static List<Doubt> of(Blanket blanket) {
    List<Doubt> doubts = new ArrayList<>();
    Brief brief = blanket.brief();
    newer(brief.extras().placed(brief.itemNames()), doubts);
    newer(brief.around().fields(), doubts);
    edge(blanket).ifPresent(doubts::add);
    for (PieceKind kind : blanket.brief().motifs().keySet()) {
      amounts(blanket, kind, doubts);
    }
    doubts.addAll(SampleDoubts.of(blanket));
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      if (MISSING.contains(blanket.yarn(yarn).code().toUpperCase(Locale.ROOT))) {
        BriefPath path = BriefPath.of("yarns").item(yarn).field("code");
        doubts.add(new Doubt.Missing(path, blanket.yarn(yarn).code()));
      }
      count(blanket, yarn).ifPresent(doubts::add);
    }
    return doubts;
  }

  private static void newer(Map<BriefPath, Map<String, String>> fields, List<Doubt> doubts) {
    fields.forEach(
        (at, values) ->
            values.keySet().stream()
                .filter(name -> !Extras.foreign(name))
                .forEach(name -> doubts.add(new Doubt.Newer(at.field(name)))));
  }

  private static Optional<Doubt> edge(Blanket blanket) {
    return blanket
        .edgeFit()
        .filter(fit -> Math.abs(fit.trianglePercent()) > FAR_PERCENT)
        .map(
            fit ->
                new Doubt.Edge(
                    BriefPath.of("motifs", PieceKind.SIDE_TRIANGLE.word(), "base"),
                    fit,
                    meant(blanket, fit)));
  }

  private static Optional<String> meant(Blanket blanket, EdgeFit fit) {
    if (near(blanket, fit.measuredCm() / CM_OF_INCH)) {
      return Optional.of("cm");
    }
    return near(blanket, fit.measuredCm() * CM_OF_INCH) ? Optional.of("in") : Optional.empty();
  }

  private static boolean near(Blanket blanket, double edgeCm) {
    return EdgeFit.of(blanket.layout(), blanket.measures(), OptionalDouble.of(edgeCm))
        .filter(fit -> Math.abs(fit.trianglePercent()) <= MEANT_PERCENT)
        .isPresent();
  }

  /** Rounds that are far from all rounds beside them; a centre may be as small as it likes. */
  private static void amounts(Blanket blanket, PieceKind kind, List<Doubt> doubts) {
    long[] needs = new long[blanket.motif(kind).rounds().size()];
    Arrays.setAll(needs, round -> blanket.motifs().needMillimetres(kind, round, 0));
    for (int round = 0; round < needs.length; round++) {
      boolean large = large(needs, round);
      if ((large || round > 0 && small(needs, round)) && !belongsToNext(needs, round)) {
        LongSummaryStatistics beside =
            beside(needs, round).mapToLong(r -> needs[r]).summaryStatistics();
        BriefPath path = BriefPath.of("motifs", kind.word()).field("rounds").item(round);
        long nearest = large ? beside.getMax() : beside.getMin();
        doubts.add(new Doubt.Amount(path, kind, round, needs[round], nearest));
      }
    }
  }

  private static boolean large(long[] needs, int round) {
    return needs.length > 1
        && beside(needs, round).allMatch(each -> needs[round] >= FAR_TIMES * needs[each]);
  }

  private static boolean small(long[] needs, int round) {
    return needs.length > 1
        && beside(needs, round).allMatch(each -> needs[round] * FAR_TIMES <= needs[each]);
  }

  /** Whether an outermost or innermost round only looks wrong because the one beside it is. */
  private static boolean belongsToNext(long[] needs, int round) {
    if (beside(needs, round).count() > 1) {
      return false;
    }
    int next = beside(needs, round).findFirst().orElseThrow();
    boolean wrong = large(needs, next) || small(needs, next);
    return wrong && (beside(needs, next).count() > 1 || needs[round] < needs[next]);
  }

  private static IntStream beside(long[] needs, int round) {
    return IntStream.of(round - 1, round + 1).filter(each -> each >= 0 && each < needs.length);
  }

  private static Optional<Doubt> count(Blanket blanket, int yarn) {
    Yarn counted = blanket.yarn(yarn);
    if (counted.counted().isEmpty()) {
      return Optional.empty();
    }
    long bought = counted.withCount(Optional.empty()).stockMillimetres();
    long left = blanket.yarn(yarn).stockMillimetres();
    BriefPath path = BriefPath.of("yarns").item(yarn).field("counted").field("left");
    return bought > 0 && left > bought
        ? Optional.of(new Doubt.Count(path, yarn, left, bought))
        : Optional.empty();
  }
}
