package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.RuleId;
import org.chocosolver.solver.variables.IntVar;

/**
 * No yarn runs out: one line for each yarn. The rounds are counted by class and yarn, and the
 * weighted counts are held against what the yarn has left after joining and edging.
 */
final class YarnTotalsPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.YARN_TOTALS;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      String path = "yarns[" + yarn + "]";
      lines.add(new BriefLine(rule(), path, words(blanket, yarn), new Total(yarn)));
    }
    return lines;
  }

  private static String words(Blanket blanket, int yarn) {
    long kept = blanket.stockMillimetres(yarn) - blanket.usableMillimetres(yarn);
    long fixed = blanket.fixedUseMillimetres(yarn) + blanket.settledMillimetres(yarn);
    String words =
        Words.yarn(blanket, yarn) + " has " + Words.metres(blanket.stockMillimetres(yarn));
    if (kept > 0) {
      words += ", keeps back " + Words.metres(kept);
    }
    if (fixed > 0) {
      words += ", gives " + Words.metres(fixed) + " to joining and edging";
    }
    return words;
  }

  @Override
  public void strengthen(ConstraintModel model, List<BriefLine> active) {
    if (active.size() == model.blanket().yarnCount()) {
      SharedStock.post(model);
    }
  }

  private record Total(int yarn) implements BriefLine.Content {
    @Override
    public void post(ConstraintModel model) {
      YarnLoad load = model.loads().get(yarn);
      if (load.openCapacity() < 0) {
        model.model().falseConstraint().post();
      } else if (load.mostOpenUse() > load.openCapacity()) {
        postSum(model, load);
      }
    }
  }

  private static void postSum(ConstraintModel model, YarnLoad load) {
    List<YarnLoad.Term> terms =
        load.terms().stream().filter(term -> term.open() > 0 && term.length() > 0).toList();
    long unit = load.unit();
    long most = load.mostReachable() / unit;
    long all = load.mostOpenUse() / unit;
    for (YarnLoad.Term term : terms) {
      most += term.length() / unit * term.fixed();
      all += term.length() / unit * term.fixed();
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
