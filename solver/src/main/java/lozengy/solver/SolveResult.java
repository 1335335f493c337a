package lozengy.solver;

import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.check.Fault;
import lozengy.solver.explain.Conflict;
import lozengy.solver.explain.Refutation;

/** How a solve ended. */
public sealed interface SolveResult {

  /**
   * A valid arrangement was found.
   *
   * @param arrangement the best found, verified
   */
  record Found(Arrangement arrangement) implements SolveResult {}

  /**
   * It is proved that no arrangement fits.
   *
   * @param refutations why: direct arguments, each of which alone is a proof; none where a conflict
   *     is told
   * @param conflict lines of the brief that cannot hold together, where no direct argument is known
   */
  record Impossible(List<Refutation> refutations, Optional<Conflict> conflict)
      implements SolveResult {
    /**
     * Copies the refutations.
     *
     * @param refutations why: direct arguments, each of which alone is a proof
     * @param conflict lines of the brief that cannot hold together
     */
    public Impossible {
      refutations = List.copyOf(refutations);
    }
  }

  /**
   * The budget ended before a valid arrangement was found, and nothing is proved.
   *
   * @param inTheWay what the nearest attempt breaks
   */
  record Unfinished(List<Fault> inTheWay) implements SolveResult {
    /**
     * Copies the faults.
     *
     * @param inTheWay what the nearest attempt breaks
     */
    public Unfinished {
      inTheWay = List.copyOf(inTheWay);
    }
  }
}
