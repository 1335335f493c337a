package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Pairs;

/**
 * Two pieces on a seam have different centres, where a brief asks for that. Finds no fault between
 * two joined pieces. O(pieces x rounds + seams).
 */
public final class NeighbourCentresRule implements Rule {

  private static final int UPSET = 4;

  @Override
  public RuleId id() {
    return RuleId.NEIGHBOUR_CENTRES;
  }

  /** One line. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    if (!blanket.brief().rules().centresDiffer() || blanket.layout().seams().size() == 0) {
      return List.of();
    }
    RoundPairs pairs =
        RoundPairs.centres(
            blanket, (first, second) -> RoundPairs.bothJoined(blanket, first, second));
    Ground clash = new Ground.Clash(pairs, YarnPairs.same(blanket.yarnCount()));
    BriefPath path = BriefPath.of("rules", "neighbour-centres");
    return List.of(
        new BriefLine(id(), path, new Subject.Differ(Subject.SeamPart.CENTRES), List.of(clash)));
  }

  @Override
  public Optional<Easing> easing(BriefLine line) {
    return Optional.of(
        new Easing(
            Optional.of("free"),
            UPSET,
            brief -> brief.withRules(brief.rules().withCentresDiffer(false))));
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change neighbour-centres";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; blanket.brief().rules().centresDiffer() && seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int yarn = sequences.yarn(first, 0);
      boolean same = yarn != Sequences.OPEN && yarn == sequences.yarn(second, 0);
      if (same && !RoundPairs.bothJoined(blanket, first, second)) {
        faults.add(new Fault(id(), List.of(first, second), List.of(0), List.of(yarn)));
      }
    }
    return faults;
  }
}
