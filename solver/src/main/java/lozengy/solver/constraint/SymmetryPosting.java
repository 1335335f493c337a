package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import org.chocosolver.solver.variables.IntVar;

/** Pieces that are each other's images have the same yarns, round by round: one line. */
final class SymmetryPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.SYMMETRY;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    if (!blanket.orbits().any()) {
      return List.of();
    }
    Symmetry symmetry = blanket.brief().look().symmetry();
    Subject subject = new Subject.Images(symmetry);
    return List.of(new BriefLine(rule(), BriefPath.of("look", "symmetry"), subject, new Images()));
  }

  private record Images() implements BriefLine.Content {
    @Override
    public void post(ConstraintModel constraints) {
      Blanket blanket = constraints.blanket();
      for (int lead : blanket.orbits().leads()) {
        IntVar[] rounds = constraints.rounds(lead);
        boolean asks = blanket.state(lead) == PieceState.PLANNED;
        for (int piece : blanket.orbits().members(lead)) {
          for (int round = 0; asks && piece != lead && round < rounds.length; round++) {
            constraints.model().arithm(rounds[round], "=", constraints.rounds(piece)[round]).post();
          }
        }
      }
    }
  }
}
