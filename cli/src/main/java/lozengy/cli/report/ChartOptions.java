package lozengy.cli.report;

import java.util.OptionalInt;

/**
 * What a chart shows.
 *
 * @param names whether every piece bears its name, and its border's code
 * @param codes whether every round bears its yarn's code
 * @param scale n of the scale 1:n, at least 1; where empty, the largest drawing at which the chart
 *     fits a sheet of A4 or letter paper with its legend
 * @param weak whether the places that cost most are marked, which needs complete sequences
 */
public record ChartOptions(boolean names, boolean codes, OptionalInt scale, boolean weak) {

  /** Neither names nor codes, at a scale that fits a sheet. */
  public static final ChartOptions PLAIN = new ChartOptions(false, false, OptionalInt.empty());

  /**
   * Checks the scale.
   *
   * @throws IllegalArgumentException if the scale is below 1
   */
  public ChartOptions {
    if (scale.isPresent() && scale.getAsInt() < 1) {
      throw new IllegalArgumentException("the scale must be 1:1 or smaller, n at least 1");
    }
  }

  /**
   * Without marks on weak places.
   *
   * @throws IllegalArgumentException if the scale is below 1
   */
  public ChartOptions(boolean names, boolean codes, OptionalInt scale) {
    this(names, codes, scale, false);
  }
}
