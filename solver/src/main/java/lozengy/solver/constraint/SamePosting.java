package lozengy.solver.constraint;

import lozengy.model.check.Ground;
import lozengy.model.check.RoundPairs;

/** Rounds that have the same yarn: an equality for each pair. */
final class SamePosting implements KindPosting<Ground.Same> {

  @Override
  public Class<Ground.Same> kind() {
    return Ground.Same.class;
  }

  @Override
  public void post(ConstraintModel model, Ground.Same same) {
    RoundPairs pairs = same.pairs();
    for (int i = 0; i < pairs.size(); i++) {
      model
          .model()
          .arithm(model.round(pairs.first()[i]), "=", model.round(pairs.second()[i]))
          .post();
    }
  }
}
