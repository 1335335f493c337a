package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.IntVar;

/** Rounds of a planned piece differ: neighbours, or all. */
final class WithinPiecePosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.WITHIN_PIECE;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    WithinPiece asked = blanket.brief().rules().withinPiece();
    if (asked == WithinPiece.FREE) {
      return List.of();
    }
    Subject subject = new Subject.Within(asked);
    return List.of(
        new BriefLine(rule(), BriefPath.of("rules", "within-piece"), subject, new Differ(asked)));
  }

  private record Differ(WithinPiece asked) implements BriefLine.Content {
    @Override
    public void post(ConstraintModel constraints) {
      Blanket blanket = constraints.blanket();
      Model model = constraints.model();
      for (int piece = 0; piece < blanket.pieceCount(); piece++) {
        if (blanket.state(piece) != PieceState.PLANNED) {
          continue;
        }
        IntVar[] rounds = constraints.rounds(piece);
        if (constraints.laid(piece) != null) {
          postUnlessLaid(model, constraints.laid(piece), rounds);
          continue;
        }
        if (asked == WithinPiece.ALL_DIFFER) {
          model.allDifferent(rounds, "AC").post();
          continue;
        }
        for (int round = 1; round < rounds.length; round++) {
          model.arithm(rounds[round - 1], "!=", rounds[round]).post();
        }
      }
    }

    /** A finished piece is a fact: only one that is still to be worked must keep the rule. */
    private void postUnlessLaid(Model model, IntVar laid, IntVar[] rounds) {
      for (int a = 0; a < rounds.length; a++) {
        int last = asked == WithinPiece.ALL_DIFFER ? rounds.length - 1 : a + 1;
        for (int b = a + 1; b <= last && b < rounds.length; b++) {
          model.ifThen(model.arithm(laid, "=", 0), model.arithm(rounds[a], "!=", rounds[b]));
        }
      }
    }
  }
}
