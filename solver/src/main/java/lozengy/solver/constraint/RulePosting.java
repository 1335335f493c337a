package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;

/** A rule's statement as constraints, line by line of the brief. */
public interface RulePosting {

  /** {@return the rule} */
  RuleId rule();

  /**
   * {@return the lines of the brief that ask for this rule; none where the brief asks nothing}
   *
   * @param blanket the blanket
   */
  List<BriefLine> lines(Blanket blanket);

  /**
   * Posts what follows from several lines of this rule together, which makes propagation stronger
   * and changes no solution.
   *
   * @param model the model, all lines posted
   * @param active the lines of this rule that the model holds
   */
  default void strengthen(ConstraintModel model, List<BriefLine> active) {}
}
