package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Look;
import lozengy.model.input.BriefPath;

/**
 * Yarns that are kept apart do not meet: as borders on a seam, as rounds side by side in a piece,
 * or both, as the brief says. Finds no fault between two joined pieces, nor within a finished one.
 * O(pieces x rounds + seams), for each pair of yarns.
 */
public final class ApartRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.APART;
  }

  /** One line for each pair of yarns. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<Look.Pair> asked = blanket.brief().look().apart();
    if (asked.isEmpty()) {
      return List.of();
    }
    List<BriefLine> lines = new ArrayList<>();
    RoundPairs seams =
        RoundPairs.borders(
            blanket, (first, second) -> RoundPairs.bothJoined(blanket, first, second));
    RoundPairs rounds = RoundPairs.within(blanket, 1);
    for (int i = 0; i < asked.size(); i++) {
      Look.Pair pair = asked.get(i);
      int first = blanket.yarnIndex(pair.first());
      int second = blanket.yarnIndex(pair.second());
      YarnPairs barred =
          YarnPairs.of(blanket.yarnCount(), (yarn, other) -> yarn == first && other == second);
      List<Ground> clashes = new ArrayList<>();
      if (pair.on().seams()) {
        clashes.add(new Ground.Clash(seams, barred));
      }
      if (pair.on().rounds()) {
        clashes.add(new Ground.Clash(rounds, barred));
      }
      Subject subject = new Subject.Apart(pair.first(), pair.second(), pair.on());
      lines.add(new BriefLine(id(), BriefPath.of("look", "apart").item(i), subject, clashes));
    }
    return lines;
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change look.apart";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    Meetings meetings = new Meetings(id(), blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (Look.Pair pair : blanket.brief().look().apart()) {
      int first = blanket.yarnIndex(pair.first());
      int second = blanket.yarnIndex(pair.second());
      Meetings.Barred barred =
          (yarn, other) -> yarn == first && other == second || yarn == second && other == first;
      if (pair.on().seams()) {
        faults.addAll(meetings.onSeams(barred));
      }
      if (pair.on().rounds()) {
        faults.addAll(meetings.withinPieces(barred));
      }
    }
    return faults;
  }
}
