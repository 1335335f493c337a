package lozengy.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.score.WeakSpot;
import lozengy.model.score.WeakSpots;

/** What an arrangement amounts to: size, score, weak spots, yarn, how it was found. */
public final class Summary {

  private static final int WEAK_SPOTS = 3;

  private Summary() {}

  /**
   * The summary for a terminal: lines of up to 80 columns where the names in it allow, each with a
   * line break. Plain ASCII but for what the brief itself says.
   *
   * @param arrangement a complete arrangement
   * @param input name of the file that was solved, to say how to repeat it; may be empty
   */
  public static String text(Arrangement arrangement, Optional<String> input) {
    return text(arrangement, input, List.of());
  }

  /**
   * The same.
   *
   * @param options options that changed what was asked for, to say how to repeat it
   */
  public static String text(Arrangement arrangement, Optional<String> input, List<String> options) {
    return new SummaryText(arrangement, weakSpots(arrangement), Screen.PLAIN).write(input, options);
  }

  /**
   * The same for a terminal: no line is wider than it but the one that is to be copied, and in
   * colours every yarn has a swatch.
   *
   * @param screen what the terminal shows
   */
  public static String text(Arrangement arrangement, Screen screen) {
    return new SummaryText(arrangement, weakSpots(arrangement), screen)
        .write(Optional.empty(), List.of());
  }

  /**
   * The summary for programs: maps from names to values, lists, strings, integers and decimals.
   * Units stand in the names; those that the arrangement file has too are called the same.
   *
   * @param arrangement a complete arrangement
   */
  public static Map<String, Object> data(Arrangement arrangement) {
    return new SummaryData(arrangement, weakSpots(arrangement)).write();
  }

  private static List<WeakSpot> weakSpots(Arrangement arrangement) {
    return WeakSpots.of(arrangement.blanket(), arrangement.sequences(), WEAK_SPOTS);
  }
}
