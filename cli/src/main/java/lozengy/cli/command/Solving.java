package lozengy.cli.command;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;

/** What the command solve hands its work to. */
@FunctionalInterface
public interface Solving {

  /** Solves a blanket, see {@link lozengy.solver.Solver#solve}. */
  SolveResult solve(Blanket blanket, Optional<Sequences> earlier, SolveOptions options);
}
