package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Pairs;

/**
 * Yarns that are kept apart do not meet as borders on a seam. Finds no fault between two joined
 * pieces. O(pieces x rounds + seams).
 */
public final class ApartRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.APART;
  }

  /** One line for each pair of yarns. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<Look.Pair> asked = blanket.brief().look().apart();
    RoundPairs pairs =
        asked.isEmpty()
            ? null
            : RoundPairs.borders(
                blanket, (first, second) -> RoundPairs.bothJoined(blanket, first, second));
    for (int i = 0; i < asked.size(); i++) {
      Look.Pair pair = asked.get(i);
      int first = blanket.yarnIndex(pair.first());
      int second = blanket.yarnIndex(pair.second());
      YarnPairs barred =
          YarnPairs.of(blanket.yarnCount(), (yarn, other) -> yarn == first && other == second);
      lines.add(
          new BriefLine(
              id(),
              BriefPath.of("look", "apart").item(i),
              pair.first() + " and " + pair.second() + " meet on no seam",
              List.of(new Ground.Clash(pairs, barred))));
    }
    return lines;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    if (blanket.brief().look().apart().isEmpty()) {
      return faults;
    }
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int yarn = sequences.border(first);
      int other = sequences.border(second);
      boolean known = yarn != Sequences.OPEN && other != Sequences.OPEN;
      boolean joined =
          blanket.state(first) == PieceState.JOINED && blanket.state(second) == PieceState.JOINED;
      if (known && !joined && blanket.look().apart(yarn, other)) {
        String words =
            "%s and %s are joined along a side, and their borders %s and %s are to be kept apart"
                .formatted(
                    Words.piece(blanket, first),
                    Words.piece(blanket, second),
                    Words.yarn(blanket, yarn),
                    Words.yarn(blanket, other));
        faults.add(new Fault(id(), List.of(first, second), List.of(yarn, other), words));
      }
    }
    return faults;
  }
}
