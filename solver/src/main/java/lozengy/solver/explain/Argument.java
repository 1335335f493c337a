package lozengy.solver.explain;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.Domains;

/** A cheap and exact argument that nothing fits. What it does not see, it does not claim. */
interface Argument {

  /**
   * Says why nothing fits.
   *
   * @param blanket the blanket
   * @param direct what the brief's lines leave each round by themselves
   * @return sentences, each of which alone is a proof; empty where the argument finds nothing
   */
  List<String> reasons(Blanket blanket, Domains direct);
}
