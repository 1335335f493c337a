package lozengy.solver.explain.conflict;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Ground;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Start;

/**
 * The lines of a brief about what rounds may take and what may meet. Where they alone conflict, a
 * search of the whole may spend all its dead ends on stock, copies and counts instead.
 */
final class MeetingLines {

  /** Dead ends: without the other lines a conflict shows soon or never. */
  private static final int MOST_FAILS = 2_000;

  private MeetingLines() {}

  /**
   * Whether those among some lines are proved to conflict.
   *
   * @param lines lines that a search has not settled
   */
  static boolean conflict(Blanket blanket, List<BriefLine> lines, long seed, Limits limits) {
    List<BriefLine> meeting = lines.stream().filter(MeetingLines::isOne).toList();
    if (meeting.size() == lines.size() || limits.stop().getAsBoolean()) {
      return false;
    }
    Limits few = new Limits(limits.nodes(), Math.min(limits.fails(), MOST_FAILS), limits.stop());
    return Start.find(ConstraintModel.of(blanket, meeting), seed, few) instanceof Start.None;
  }

  private static boolean isOne(BriefLine line) {
    return line.grounds().stream()
        .allMatch(
            ground ->
                ground instanceof Ground.May
                    || ground instanceof Ground.Clash
                    || ground instanceof Ground.Same);
  }
}
