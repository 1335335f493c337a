package lozengy.solver.explain.remedy;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;

/** A rule's ways to ask for less: what a maker might change in a line of the brief. */
interface Relaxing {

  /**
   * All that are known, one for each sort of line. A rule without one gets no remedy of its own.
   */
  List<Relaxing> ALL =
      List.of(
          new NoteRelaxing(),
          new PileRelaxing(),
          new StockRelaxing(),
          new FinishRelaxing(),
          new LookRelaxing(),
          new RuleRelaxing(),
          new GivingUp(),
          new ToneRelaxing(),
          new SizeRelaxing());

  /**
   * Changes of a line.
   *
   * @param blanket the blanket
   * @param line one of its lines
   * @return ladders of changes; none where this is not the line's sort
   */
  List<Ladder> ladders(Blanket blanket, BriefLine line);

  /** Changes of a line by itself: all but what to buy and how many rows, which are of the whole. */
  static List<Ladder> ofLine(Blanket blanket, BriefLine line) {
    return ALL.stream()
        .filter(each -> !(each instanceof StockRelaxing || each instanceof SizeRelaxing))
        .flatMap(each -> each.ladders(blanket, line).stream())
        .toList();
  }

  /** All changes of a line that are known. */
  static List<Ladder> all(Blanket blanket, BriefLine line) {
    return ALL.stream().flatMap(each -> each.ladders(blanket, line).stream()).toList();
  }

  /**
   * The number in the first brackets of a path, such as 3 of {@code yarns[3].balls}; -1 if none.
   */
  static int index(BriefLine line) {
    return line.path().index().orElse(-1);
  }
}
