package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Pairs;

/**
 * Two pieces on a seam have different borders, by at least min-contrast. Finds no fault between two
 * joined pieces, nor between two with the border that the look gives all. O(pieces x rounds +
 * seams).
 */
public final class NeighbourBordersRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.NEIGHBOUR_BORDERS;
  }

  /** One line that borders differ at all, and one for how much. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    if (blanket.layout().seams().size() == 0) {
      return List.of();
    }
    List<BriefLine> lines = new ArrayList<>();
    RoundPairs pairs = RoundPairs.borders(blanket, blanket::bordersMayMatch);
    int yarns = blanket.yarnCount();
    lines.add(
        new BriefLine(
            id(),
            BriefPath.of("rules", "neighbour-borders"),
            new Subject.Differ(Subject.SeamPart.BORDERS),
            List.of(new Ground.Clash(pairs, YarnPairs.same(yarns)))));
    double contrast = blanket.brief().rules().minContrast();
    if (contrast > 0) {
      lines.add(
          new BriefLine(
              id(),
              BriefPath.of("rules", "min-contrast"),
              new Subject.Contrast(contrast),
              List.of(new Ground.Clash(pairs, YarnPairs.of(yarns, blanket.yarns()::sameBorder)))));
    }
    return lines;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int yarn = sequences.border(first);
      int other = sequences.border(second);
      boolean known = yarn != Sequences.OPEN && other != Sequences.OPEN;
      if (known
          && blanket.yarns().sameBorder(yarn, other)
          && !blanket.bordersMayMatch(first, second)) {
        faults.add(fault(first, second, yarn, other));
      }
    }
    return faults;
  }

  private Fault fault(int first, int second, int yarn, int other) {
    List<Integer> pieces = List.of(first, second);
    return yarn == other
        ? new Fault(id(), pieces, List.of(), List.of(yarn))
        : new Fault(id(), pieces, List.of(), List.of(yarn, other), new Fault.TooAlike());
  }
}
