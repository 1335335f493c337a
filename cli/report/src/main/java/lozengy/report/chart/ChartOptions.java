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
 * @param look how the blanket is drawn
 * @param bare whether the blanket stands alone, without a word, a sign, a scale or a frame
 */
public record ChartOptions(
    boolean names, Signs signs, OptionalInt scale, boolean weak, Look look, boolean bare) {

  /** Letters and no names, at a scale that fits a sheet. */
  public static final ChartOptions PLAIN =
      new ChartOptions(false, Signs.LETTERS, OptionalInt.empty());

  /** How the blanket is drawn. */
  public enum Look {
    /** As it is worked: with stitches, seams and edging. */
    WORKED,
    /** As a diagram: its rounds as flat bands between lines. */
    FLAT
  }

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
   * As worked, with all around it, without marks on weak places.
   *
   * @throws IllegalArgumentException if the scale is below 1
   */
  public ChartOptions(boolean names, Signs signs, OptionalInt scale) {
    this(names, signs, scale, false, Look.WORKED, false);
  }

  /** The same with or without marks on the places that cost most. */
  public ChartOptions withWeak(boolean marked) {
    return new ChartOptions(names, signs, scale, marked, look, bare);
  }

  /** The same in another look. */
  public ChartOptions withLook(Look other) {
    return new ChartOptions(names, signs, scale, weak, other, bare);
  }

  /** The blanket alone, or not. */
  public ChartOptions withBare(boolean alone) {
    return new ChartOptions(names, signs, scale, weak, look, alone);
  }
}
