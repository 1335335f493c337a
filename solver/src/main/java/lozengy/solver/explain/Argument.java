package lozengy.solver.explain;

import java.util.List;
import lozengy.model.blanket.Blanket;

/** A cheap and exact argument that nothing fits. What it does not see, it does not claim. */
interface Argument {

  /**
   * Says why nothing fits.
   *
   * @param asked what is asked for
   * @return findings, each of which alone is a proof; empty where the argument finds nothing
   */
  List<Finding> findings(Asked asked);

  /**
   * What several findings of one sort say together.
   *
   * @param findings those that say the same of other pieces, in the argument's words
   * @return a sentence
   */
  default String together(Blanket blanket, List<Finding> findings) {
    return findings.get(0).words();
  }

  /**
   * How many of a finding's rounds must be open at the least, so that the finding no longer holds,
   * whatever else is open.
   */
  default int fewestOpen(Blanket blanket, Finding finding) {
    return 0;
  }
}
