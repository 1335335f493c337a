package lozengy.solver.explain;

import java.util.List;

/** A cheap and exact argument that nothing fits. What it does not see, it does not claim. */
interface Argument {

  /**
   * Says why nothing fits.
   *
   * @param asked what is asked for
   * @return findings, each of which alone is a proof; empty where the argument finds nothing
   */
  List<Finding> findings(Asked asked);
}
