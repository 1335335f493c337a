package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/**
 * As many pieces show a yarn as the look asks for. Made and joined pieces count, but what they show
 * beyond the largest number is a fact and no fault; nor is it one if pieces that are all made and
 * joined are too few. A piece with an open round counts towards the least number where it can still
 * come to show the yarn. O(rounds of the pieces that are counted).
 */
public final class CountsRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.COUNTS;
  }

  /** One line for each least and each largest number. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (ReadyCount count : ReadyCount.of(blanket)) {
      int all = count.pieces().length;
      if (count.asksAtLeast()) {
        lines.add(
            new BriefLine(
                id(),
                count.atLeastPath(),
                new Subject.Count(count.asked(), true),
                List.of(
                    new Ground.Count(count.yarn(), count.rounds(blanket), count.atLeast(), all))));
      }
      if (count.asksAtMost()) {
        lines.add(
            new BriefLine(
                id(),
                count.atMostPath(),
                new Subject.Count(count.asked(), false),
                List.of(new Ground.Count(count.yarn(), count.rounds(blanket), 0, count.atMost()))));
      }
    }
    return lines;
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change look.counts";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (ReadyCount count : ReadyCount.of(blanket)) {
      List<Integer> showing = new ArrayList<>();
      int open = 0;
      for (int piece : count.pieces()) {
        if (count.shown(sequences, piece)) {
          showing.add(piece);
        } else if (count.open(sequences, piece)) {
          open++;
        }
      }
      if (showing.size() > count.atMost()) {
        faults.add(fault(count, showing, OptionalInt.empty(), count.asked().atMost()));
      }
      if (showing.size() + open < count.atLeast()) {
        OptionalInt least = OptionalInt.of(count.atLeast());
        faults.add(fault(count, showing, least, OptionalInt.empty()));
      }
    }
    return faults;
  }

  private Fault fault(
      ReadyCount count, List<Integer> showing, OptionalInt least, OptionalInt most) {
    return new Fault(
        id(),
        showing,
        List.of(),
        List.of(count.yarn()),
        new Fault.Counted(count.asked(), least, most));
  }
}
