package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.check.Ground;
import org.chocosolver.solver.variables.IntVar;

/**
 * What a yarn has for its rounds: the rounds are counted by class and yarn, and the weighted counts
 * are held against what the yarn has left after all that is taken off it.
 */
final class StockPosting implements KindPosting<Ground.Stock> {

  @Override
  public Class<Ground.Stock> kind() {
    return Ground.Stock.class;
  }

  @Override
  public void post(ConstraintModel model, Ground.Stock stock) {
    YarnLoad load = model.loads().get(stock.yarn());
    if (load.openCapacity() < 0) {
      model.model().falseConstraint().post();
    } else if (load.mostOpenUse() > load.openCapacity()) {
      postSum(model, load);
    }
  }

  @Override
  public void strengthen(ConstraintModel model, List<Ground.Stock> active) {
    if (!active.isEmpty()) {
      SharedStock.post(model);
    }
  }

  private static void postSum(ConstraintModel model, YarnLoad load) {
    List<YarnLoad.Term> terms =
        load.terms().stream().filter(term -> term.open() > 0 && term.length() > 0).toList();
    long unit = load.unit();
    long most = load.mostReachable() / unit;
    long all = load.mostUnits();
    for (YarnLoad.Term term : terms) {
      most += term.length() / unit * term.fixed();
    }
    long shrink = 1;
    if (all > IntVar.MAX_INT_BOUND) {
      // lengths rounded down ask for less than the rule: what this refutes is refuted indeed
      shrink = all / IntVar.MAX_INT_BOUND + 1;
      model.relaxed();
    }
    IntVar[] counts = new IntVar[terms.size()];
    int[] lengths = new int[terms.size()];
    for (int i = 0; i < counts.length; i++) {
      counts[i] = model.counts(terms.get(i).index())[load.yarn()];
      lengths[i] = (int) (terms.get(i).length() / unit / shrink);
    }
    model.model().scalar(counts, lengths, "<=", (int) (most / shrink)).post();
  }
}
