package lozengy.solver.explain;

import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.Domains;

/**
 * An argument that looks at a brief as a whole. It says nothing of some of a brief's lines, so the
 * lines that it rests on are told by their rules, and not as a smallest set.
 */
interface WholeArgument extends Argument {

  /**
   * Says why nothing fits.
   *
   * @param blanket the blanket
   * @param direct what the brief's lines leave each round by themselves
   * @return sentences, each of which alone is a proof; empty where the argument finds nothing
   */
  List<String> reasons(Blanket blanket, Domains direct);

  /** The rules that it uses. */
  Set<RuleId> rules();

  @Override
  default List<Finding> findings(Asked asked) {
    if (!asked.whole()) {
      return List.of();
    }
    RuleId[] rules = rules().toArray(RuleId[]::new);
    return reasons(asked.blanket(), asked.direct()).stream()
        .map(words -> Finding.of(words, List.of(), rules))
        .toList();
  }
}
