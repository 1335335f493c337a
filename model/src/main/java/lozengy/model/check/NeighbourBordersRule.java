package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.blanket.Words;
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
    List<BriefLine> lines = new ArrayList<>();
    if (blanket.layout().seams().size() == 0) {
      return lines;
    }
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
              List.of(new Ground.Clash(pairs, YarnPairs.of(yarns, blanket::sameBorder)))));
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
      if (known && blanket.sameBorder(yarn, other) && !blanket.bordersMayMatch(first, second)) {
        faults.add(fault(blanket, first, second, yarn, other));
      }
    }
    return faults;
  }

  private Fault fault(Blanket blanket, int first, int second, int yarn, int other) {
    String start =
        "%s and %s are joined along a side and "
            .formatted(Words.piece(blanket, first), Words.piece(blanket, second));
    if (yarn == other) {
      String words = start + "both have the border " + Words.yarn(blanket, yarn);
      return new Fault(id(), List.of(first, second), List.of(yarn), words);
    }
    String words =
        "%stheir borders %s and %s differ by %s, less than the %s asked for"
            .formatted(
                start,
                Words.yarn(blanket, yarn),
                Words.yarn(blanket, other),
                Words.difference(blanket.difference(yarn, other)),
                Words.number(blanket.brief().rules().minContrast()));
    return new Fault(id(), List.of(first, second), List.of(yarn, other), words);
  }
}
