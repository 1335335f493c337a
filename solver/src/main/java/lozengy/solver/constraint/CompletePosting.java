package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;

/** Every round has a yarn: so it is by the variables themselves, without any line to leave out. */
final class CompletePosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.COMPLETE;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    return List.of();
  }
}
