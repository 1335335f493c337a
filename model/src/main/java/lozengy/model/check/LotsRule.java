package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Lots;
import lozengy.model.input.BriefPath;

/**
 * Two dye lots of one shade do not meet, where the difference between them would show: neither as
 * borders on a seam nor as rounds side by side in a piece. Finds no fault between two joined
 * pieces, nor within a finished one. O(pieces x rounds + seams + yarns squared).
 */
public final class LotsRule implements Rule {

  private static final int UPSET = 3;

  @Override
  public RuleId id() {
    return RuleId.LOTS;
  }

  /** One line. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    Lots lots = asked(blanket);
    List<List<Integer>> shades = lots.shades();
    if (shades.isEmpty()) {
      return List.of();
    }
    YarnPairs barred = YarnPairs.of(blanket.yarnCount(), lots::differ);
    RoundPairs seams =
        RoundPairs.borders(
            blanket, (first, second) -> RoundPairs.bothJoined(blanket, first, second));
    List<Ground> clashes =
        List.of(
            new Ground.Clash(seams, barred),
            new Ground.Clash(RoundPairs.within(blanket, 1), barred));
    BriefPath path = BriefPath.of("rules", "lots");
    return List.of(new BriefLine(id(), path, new Subject.Lots(shades), clashes));
  }

  /** The lots that are kept from meeting; none of them lots of one shade where none are. */
  private static Lots asked(Blanket blanket) {
    return Lots.of(blanket.brief().rules().lotsApart() ? blanket.brief().yarns() : List.of());
  }

  @Override
  public Optional<Easing> easing(BriefLine line) {
    return Optional.of(
        new Easing(
            Optional.of("free"),
            UPSET,
            brief -> brief.withRules(brief.rules().withLotsApart(false))));
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change lots";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    Lots lots = asked(blanket);
    if (lots.shades().isEmpty()) {
      return List.of();
    }
    Meetings meetings = new Meetings(id(), blanket, sequences);
    List<Fault> faults = new ArrayList<>(meetings.onSeams(lots::differ));
    faults.addAll(meetings.withinPieces(lots::differ));
    return faults;
  }
}
