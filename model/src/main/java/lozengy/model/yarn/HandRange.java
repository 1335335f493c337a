package lozengy.model.yarn;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import lozengy.model.brief.Brief;
import lozengy.model.brief.RoundLengths;

/**
 * How much the yarn of work may differ from what is reckoned. As stated; or else as the samples
 * differ: from the lightest to the heaviest, each held against what is reckoned for it.
 *
 * @param lowPercent per cent of the reckoned length by which it may be more at the least, mostly
 *     below 0
 * @param highPercent the same at the most, mostly above 0
 * @param stated whether the brief states it
 */
public record HandRange(double lowPercent, double highPercent, boolean stated) {

  /**
   * The range of a brief.
   *
   * @param brief the brief
   * @return the range; empty where it states none and has fewer than two amounts of samples
   */
  public static Optional<HandRange> of(Brief brief) {
    if (brief.stitching().variesPercent().isPresent()) {
      double percent = brief.stitching().variesPercent().get().doubleValue();
      return Optional.of(new HandRange(-percent, percent, true));
    }
    List<RoundLengths.Held> held = RoundLengths.of(brief).held();
    if (held.size() < 2) {
      return Optional.empty();
    }
    DoubleSummaryStatistics ratios =
        held.stream().mapToDouble(RoundLengths.Held::ratio).summaryStatistics();
    return Optional.of(
        new HandRange(100 * (ratios.getMin() - 1), 100 * (ratios.getMax() - 1), false));
  }
}
