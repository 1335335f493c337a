package lozengy.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.solver.SolveResult.Unsettled;

/** Says that more moves may well find a better arrangement, and which command tries them. */
public final class MoreToFind {

  private MoreToFind() {}

  /**
   * Two lines of words and one with the command, each with a line break.
   *
   * @param input name of the file that was solved; may be empty
   * @param options options that changed what was asked for
   */
  public static String text(
      Unsettled unsettled, Arrangement arrangement, Optional<String> input, List<String> options) {
    return "More moves may find better: two searches ended "
        + Figures.fixed(unsettled.pointsApart(), 1)
        + " points apart, and the score lies\n"
        + Figures.fixed(unsettled.pointsBelowBound(), 1)
        + " points below what is proved. To try:\n  "
        + SolveLine.of(arrangement, input, options, unsettled.movesToTry())
        + "\n\n";
  }

  /** The same for programs. */
  public static Map<String, Object> data(Unsettled unsettled, Arrangement arrangement) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("points_apart", Decimals.rounded(unsettled.pointsApart(), 2));
    data.put("points_below_bound", Decimals.rounded(unsettled.pointsBelowBound(), 2));
    data.put("try_seed", arrangement.solved().orElseThrow().seed());
    data.put("try_moves", unsettled.movesToTry());
    return data;
  }
}
