package lozengy.model.brief;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * How much the yarn of work may differ from what is reckoned. As stated; or else as the samples
 * differ: from the lightest to the heaviest, each held against what is reckoned for it. An amount
 * that alone tells of its rounds is what is reckoned, and says nothing of how hands differ.
 *
 * @param lowPercent per cent of the reckoned length by which it may be more at the least, mostly
 *     below 0
 * @param highPercent the same at the most, mostly above 0
 * @param stated whether the brief states it
 */
public record HandRange(double lowPercent, double highPercent, boolean stated) {

  /** What binary fractions may be off, far less than a hundredth. */
  private static final double ROUNDING = 1e-9;

  /**
   * {@return per cent of a stock that must stay untouched so that it lasts through the range: 100 h
   * / (100 + h) where the hand takes up to h per cent more, rounded up to hundredths}
   */
  public double keepBackPercent() {
    double more = Math.max(0, highPercent);
    return Math.ceil(10_000 * more / (100 + more) - ROUNDING) / 100;
  }

  /**
   * The range of a brief.
   *
   * @param brief the brief
   * @return the range; empty where it states none and has fewer than two amounts of samples that
   *     can be compared
   */
  public static Optional<HandRange> of(Brief brief) {
    if (brief.stitching().variesPercent().isPresent()) {
      double percent = brief.stitching().variesPercent().get().doubleValue();
      return Optional.of(new HandRange(-percent, percent, true));
    }
    List<RoundLengths.Held> held =
        RoundLengths.of(brief).held().stream().filter(each -> compares(brief, each)).toList();
    if (held.size() < 2) {
      return Optional.empty();
    }
    DoubleSummaryStatistics ratios =
        held.stream().mapToDouble(RoundLengths.Held::ratio).summaryStatistics();
    return Optional.of(
        new HandRange(100 * (ratios.getMin() - 1), 100 * (ratios.getMax() - 1), false));
  }

  /** Whether others tell of the same rounds, or the brief tells otherwise what they take. */
  private static boolean compares(Brief brief, RoundLengths.Held held) {
    List<Sample> samples = brief.stitching().samples();
    Sample own = samples.get(held.sample());
    long alike =
        samples.stream()
            .filter(each -> each.of() == own.of() && rounds(brief, each).equals(rounds(brief, own)))
            .mapToLong(each -> each.takes().size())
            .sum();
    return alike > 1 || Math.abs(held.ratio() - 1) > ROUNDING;
  }

  /** The rounds of a sample; none where it is of whole pieces, however that is said. */
  private static List<Integer> rounds(Brief brief, Sample sample) {
    boolean whole = sample.rounds().size() == brief.motifs().get(sample.of()).rounds().size();
    return whole ? List.of() : sample.rounds();
  }
}
