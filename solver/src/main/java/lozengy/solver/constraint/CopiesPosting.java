package lozengy.solver.constraint;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import org.chocosolver.solver.constraints.Constraint;

/** No more pieces share a sequence than allowed; made and joined pieces among themselves may. */
final class CopiesPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.COPIES;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    OptionalInt copies = blanket.brief().rules().copies();
    if (copies.isEmpty() || copies.getAsInt() >= blanket.pieceCount()) {
      return List.of();
    }
    int allowed = copies.getAsInt();
    return List.of(
        new BriefLine(
            rule(),
            BriefPath.of("rules", "copies"),
            new Subject.Copies(allowed),
            new Copies(allowed)));
  }

  private record Copies(int allowed) implements BriefLine.Content {
    @Override
    public void post(ConstraintModel constraints) {
      CopiesPropagator propagator = new CopiesPropagator(constraints, allowed);
      new Constraint("copies", propagator).post();
      // with a pile, what is worked and what is planned is only known once it is laid
      if (allowed == 1 && constraints.blanket().pile().isEmpty()) {
        ScarceSequences.post(constraints);
      }
    }
  }
}
