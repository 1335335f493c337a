package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lozengy.solver.constraint.YarnLoad.Term;
import org.chocosolver.solver.search.strategy.selectors.values.IntValueSelector;
import org.chocosolver.solver.search.strategy.selectors.variables.VariableSelector;
import org.chocosolver.solver.variables.IntVar;

/**
 * Decides how many rounds of each class take each yarn: yarn by yarn, long rounds first, each count
 * as near as can be to the yarn's even part of the work.
 */
final class CountSelector implements VariableSelector<IntVar>, IntValueSelector {

  private final IntVar[] variables;
  private final Map<IntVar, Double> aims = new HashMap<>();
  private final Random random;

  CountSelector(ConstraintModel model, Random random) {
    this.random = random;
    double[][] parts = EvenParts.of(model.blanket(), model.loads());
    List<YarnLoad> yarns = new ArrayList<>(model.loads());
    Collections.shuffle(yarns, random);
    List<IntVar> ordered = new ArrayList<>();
    for (YarnLoad load : yarns) {
      List<Term> terms = new ArrayList<>(load.terms());
      terms.sort((a, b) -> Long.compare(b.length(), a.length()));
      for (Term term : terms) {
        if (model.counted(term.index())) {
          IntVar count = model.counts(term.index())[load.yarn()];
          aims.put(count, parts[term.index()][load.yarn()]);
          ordered.add(count);
        }
      }
    }
    this.variables = ordered.toArray(IntVar[]::new);
  }

  boolean isEmpty() {
    return variables.length == 0;
  }

  IntVar[] variables() {
    return variables;
  }

  @Override
  public IntVar getVariable(IntVar[] all) {
    for (IntVar count : all) {
      if (!count.isInstantiated()) {
        return count;
      }
    }
    return null;
  }

  @Override
  public int selectValue(IntVar count) {
    double aim = aims.get(count) + random.nextGaussian() / 2;
    int below = count.previousValue((int) Math.floor(aim) + 1);
    int above = count.nextValue((int) Math.floor(aim));
    if (below == Integer.MIN_VALUE) {
      return above;
    }
    return above == Integer.MAX_VALUE || aim - below < above - aim ? below : above;
  }
}
