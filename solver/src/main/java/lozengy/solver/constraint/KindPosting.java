package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.check.Ground;

/**
 * How one kind of {@link Ground} is stated as constraints, whichever rule it comes from.
 *
 * @param <G> the kind
 */
interface KindPosting<G extends Ground> {

  /** The kind. */
  Class<G> kind();

  /** Posts what it asks for. */
  void post(ConstraintModel model, G ground);

  /**
   * Posts what follows from all of the kind together, which makes propagation stronger.
   *
   * @param model the model, all else posted
   * @param active all of the kind that the model holds; none where it was left out
   */
  default void strengthen(ConstraintModel model, List<G> active) {}
}
