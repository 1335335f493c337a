package lozengy.solver;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** What solves a blanket: {@link Solver#solve}, or what a program puts in its place. */
@FunctionalInterface
public interface Solving {

  /**
   * Solves a blanket, see {@link Solver#solve}.
   *
   * @param blanket the blanket
   * @param earlier the yarns that keep goes by, where there is an earlier plan
   * @param options how long to search, and what to tell meanwhile
   * @return what came of it
   */
  SolveResult solve(Blanket blanket, Optional<Sequences> earlier, SolveOptions options);
}
