package lozengy.solver.constraint;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.chocosolver.solver.search.strategy.selectors.values.IntValueSelector;
import org.chocosolver.solver.variables.IntVar;

/**
 * Gives a round the yarn of which its class has most rounds left to place; any of its yarns where
 * the class is not counted.
 */
final class YarnValueSelector implements IntValueSelector {

  private final Map<IntVar, IntVar[]> counts = new HashMap<>();
  private final Random random;

  YarnValueSelector(ConstraintModel model, Random random) {
    this.random = random;
    List<RoundClass> classes = RoundClass.of(model.blanket());
    for (int c = 0; c < classes.size(); c++) {
      if (model.counted(c)) {
        for (int piece : classes.get(c).pieces()) {
          counts.put(model.rounds(piece)[classes.get(c).round()], model.counts(c));
        }
      }
    }
  }

  @Override
  public int selectValue(IntVar round) {
    IntVar[] byYarn = counts.get(round);
    int best = round.getLB();
    double bestLeft = -1;
    for (int yarn = round.getLB(); yarn != Integer.MAX_VALUE; yarn = round.nextValue(yarn)) {
      // the count's lower bound is what is placed already
      double left = byYarn == null ? 0 : byYarn[yarn].getUB() - byYarn[yarn].getLB();
      left += random.nextDouble();
      if (left > bestLeft) {
        bestLeft = left;
        best = yarn;
      }
    }
    return best;
  }
}
