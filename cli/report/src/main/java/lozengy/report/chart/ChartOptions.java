package lozengy.report.chart;

import java.util.OptionalInt;

/**
 * What a chart shows.
 *
 * @param names whether every piece bears its name
 * @param signs what tells the yarn of every round, beside its colour
 * @param scale n of the scale 1:n, at least 1; where empty, the largest drawing at which the chart
 *     fits a sheet of A4 or letter paper with its legend
 * @param weak whether the places that cost most are marked, which needs complete sequences
 */
public record ChartOptions(boolean names, Signs signs, OptionalInt scale, boolean weak) {

  /** Letters and no names, at a scale that fits a sheet. */
  public static final ChartOptions PLAIN =
      new ChartOptions(false, Signs.LETTERS, OptionalInt.empty());

  /** What stands on a round. */
  public enum Signs {
    /** Nothing. */
    NONE,
    /**
     * The yarn's letter, which the legend explains; nothing where it would be too small to read.
     */
    LETTERS,
    /** The yarn's code. */
    CODES
  }

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
  public ChartOptions(boolean names, Signs signs, OptionalInt scale) {
    this(names, signs, scale, false);
  }
}
