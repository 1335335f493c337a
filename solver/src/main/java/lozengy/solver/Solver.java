package lozengy.solver;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Solves briefs. */
public final class Solver {

  private Solver() {}

  /**
   * Solves a blanket.
   *
   * @param blanket the blanket
   * @param earlier sequences to stay close to (part keep), of the same layout, where re-solving
   * @param options seed, limits, listener
   */
  public static SolveResult solve(
      Blanket blanket, Optional<Sequences> earlier, SolveOptions options) {
    throw new UnsupportedOperationException("not written yet");
  }
}
