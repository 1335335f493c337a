package lozengy.solver.explain.conflict;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleBook;
import lozengy.solver.constraint.Limits;
import lozengy.solver.explain.argument.Refutation;

/** Asks all that can say whether a blanket has an arrangement, one after the other. */
public final class Examining {

  private Examining() {}

  /** Direct arguments first, then the constraint model. */
  public static Feasibility.Answer of(Blanket blanket, long seed, Limits limits) {
    List<Refutation> refutations = Root.arguments(blanket);
    return refutations.isEmpty()
        ? Feasibility.search(blanket, seed, limits)
        : new Feasibility.Impossible(refutations, Optional.empty());
  }

  /** Lines that cannot hold together; none where the whole brief is not refuted. */
  static Optional<Conflict> conflict(Blanket blanket, long seed, Limits limits) {
    ConsistencyOracle oracle = new ConsistencyOracle(seed, limits);
    return oracle.settle(blanket, RuleBook.lines(blanket)) == ConsistencyOracle.Verdict.CONFLICTS
        ? Optional.of(Conflict.ofRefuted(blanket, oracle))
        : Optional.empty();
  }
}
