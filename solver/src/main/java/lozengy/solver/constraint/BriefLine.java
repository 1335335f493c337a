package lozengy.solver.constraint;

import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;

/**
 * A line of a brief that asks for something, and what it posts. Lines can be left out of a
 * constraint model one by one, so that those that cannot hold together can be found.
 *
 * @param rule the rule that it belongs to
 * @param path where it stands in the brief, such as {@code yarns[3]} or {@code pieces[2] r3c2};
 *     lines of one rule have different ones
 * @param subject what it speaks of
 * @param content what it does to a model
 */
public record BriefLine(RuleId rule, BriefPath path, Subject subject, Content content) {

  /** What a line does to a model: it restricts single rounds, or posts constraints, or both. */
  public interface Content {

    /**
     * Takes out of the domains what the line forbids single rounds.
     *
     * @param domains what each round may take; narrowed
     */
    default void restrict(Domains domains) {}

    /**
     * Posts what the line asks of several rounds together.
     *
     * @param model the model to post to
     */
    default void post(ConstraintModel model) {}

    /**
     * How much more of a yarn there would be for rounds without the line.
     *
     * @param yarn index of the yarn
     * @return millimetres, 0 where the line takes none of it; {@link YarnLoad#ENDLESS} where
     *     nothing else would bound the yarn
     */
    default long reliefMillimetres(int yarn) {
      return 0;
    }
  }
}
