package lozengy.solver.constraint;

import lozengy.model.check.Ground;
import org.chocosolver.solver.constraints.Constraint;

/** How often a sequence may come; made and joined pieces among themselves may share any. */
final class CopiesPosting implements KindPosting<Ground.Copies> {

  @Override
  public Class<Ground.Copies> kind() {
    return Ground.Copies.class;
  }

  @Override
  public void post(ConstraintModel constraints, Ground.Copies copies) {
    CopiesPropagator propagator = new CopiesPropagator(constraints, copies);
    new Constraint("copies", propagator).post();
    // with a pile, what is worked and what is planned is only known once it is laid
    if (copies.most() == 1 && constraints.blanket().pile().isEmpty()) {
      ScarceSequences.post(constraints, copies);
    }
  }
}
