package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.input.BriefPath;

/**
 * Pieces that the symmetry makes each other's images have the same yarns. Finds no fault between
 * pieces that are all worked. O(pieces x rounds).
 */
public final class SymmetryRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.SYMMETRY;
  }

  /** One line. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    if (!blanket.orbits().any()) {
      return List.of();
    }
    Symmetry symmetry = blanket.brief().look().symmetry();
    Ground same = new Ground.Same(images(blanket));
    return List.of(
        new BriefLine(
            id(), BriefPath.of("look", "symmetry"), new Subject.Images(symmetry), List.of(same)));
  }

  private static RoundPairs images(Blanket blanket) {
    IntStream.Builder first = IntStream.builder();
    IntStream.Builder second = IntStream.builder();
    for (int lead : blanket.orbits().leads()) {
      boolean asks = blanket.state(lead) == PieceState.PLANNED;
      for (int piece : blanket.orbits().members(lead)) {
        for (int round = 0; asks && piece != lead && round < blanket.roundCount(lead); round++) {
          first.add(blanket.index().number(lead, round));
          second.add(blanket.index().number(piece, round));
        }
      }
    }
    return new RoundPairs(first.build().toArray(), second.build().toArray());
  }

  @Override
  public String insteadOfLock() {
    return "Give both the same yarn, or change look.symmetry";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (int lead : blanket.orbits().leads()) {
      if (blanket.state(lead) != PieceState.PLANNED) {
        continue;
      }
      for (int round = 0; round < sequences.rounds(lead); round++) {
        int known = -1;
        for (int piece : blanket.orbits().members(lead)) {
          int yarn = sequences.yarn(piece, round);
          if (yarn == Sequences.OPEN) {
            continue;
          }
          if (known < 0) {
            known = piece;
          } else if (yarn != sequences.yarn(known, round)) {
            faults.add(
                new Fault(
                    id(),
                    List.of(known, piece),
                    List.of(round),
                    List.of(sequences.yarn(known, round), yarn)));
          }
        }
      }
    }
    return faults;
  }
}
