package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Brief;
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
    return totals(blanket);
  }

  /** One line for each yarn, and what is taken off all of them: joining, edging, keep-back. */
  static List<BriefLine> totals(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      lines.add(
          new BriefLine(
              RuleId.YARN_TOTALS, "yarns[" + yarn + "]", words(blanket, yarn), new Total(yarn)));
    }
    Brief brief = blanket.brief();
    brief
        .joining()
        .ifPresent(
            use -> lines.add(taken(blanket, "joining", use.yarn(), blanket.joiningMillimetres())));
    brief
        .edging()
        .ifPresent(
            use -> lines.add(taken(blanket, "edging", use.yarn(), blanket.edgingMillimetres())));
    if (brief.rules().keepBackPercent() > 0) {
      String words = Words.number(brief.rules().keepBackPercent()) + " % of each yarn is kept back";
      lines.add(
          new BriefLine(
              RuleId.YARN_TOTALS,
              "rules.keep-back",
              words,
              taken(yarn -> blanket.stockMillimetres(yarn) - blanket.usableMillimetres(yarn))));
    }
    return lines;
  }

  private static BriefLine taken(Blanket blanket, String what, String code, long millimetres) {
    int from = blanket.yarnIndex(code);
    String words =
        "%s takes %s of %s".formatted(what, Words.metres(millimetres), Words.yarn(blanket, from));
    return new BriefLine(
        RuleId.YARN_TOTALS, what, words, taken(yarn -> yarn == from ? millimetres : 0));
  }

  private static BriefLine.Content taken(IntToLongFunction millimetres) {
    return new BriefLine.Content() {
      @Override
      public long reliefMillimetres(int yarn) {
        return millimetres.applyAsLong(yarn);
      }
    };
  }

  private static String words(Blanket blanket, int yarn) {
    long settled = blanket.settledMillimetres(yarn);
    String words =
        Words.yarn(blanket, yarn) + " has " + Words.metres(blanket.stockMillimetres(yarn));
    return settled > 0
        ? words + ", and had " + Words.metres(settled) + " worked when it was counted"
        : words;
  }

  @Override
  public void strengthen(ConstraintModel model, List<BriefLine> active) {
    if (!active.isEmpty()) {
      SharedStock.post(model);
    }
  }

  private record Total(int yarn) implements BriefLine.Content {
    @Override
    public long reliefMillimetres(int other) {
      return other == yarn ? YarnLoad.ENDLESS : 0;
    }

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
