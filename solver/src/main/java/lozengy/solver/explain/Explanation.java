package lozengy.solver.explain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.constraint.Limits;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.explain.miss.MissSearch;
import lozengy.solver.explain.miss.NearestMiss;
import lozengy.solver.explain.remedy.Cause;
import lozengy.solver.explain.remedy.Remedies;
import lozengy.solver.explain.remedy.Remedy;

/** Whether a brief has an arrangement, and if it has none, why, and what would help. */
public sealed interface Explanation {

  /**
   * It has one.
   *
   * @param witness a valid arrangement, held against all rules
   */
  record Fits(Sequences witness) implements Explanation {}

  /**
   * It is proved to have none.
   *
   * @param causes why, at least one
   * @param beside further causes, which are left when those are mended; none where a single change
   *     mends all
   * @param remedies changes that make it fit, the least upsetting first
   * @param remediesComplete whether all changes that are known were tried to their end
   * @param nearest how near one can come without a change
   */
  record Impossible(
      List<Cause> causes,
      List<Cause> beside,
      List<Remedy> remedies,
      boolean remediesComplete,
      Optional<NearestMiss> nearest)
      implements Explanation {
    /**
     * Copies the lists.
     *
     * @param causes why, at least one
     * @param beside further causes, which are left when those are mended; none where a single
     *     change mends all
     * @param remedies changes that make it fit, the least upsetting first
     * @param remediesComplete whether all changes that are known were tried to their end
     * @param nearest how near one can come without a change
     */
    public Impossible {
      causes = List.copyOf(causes);
      beside = List.copyOf(beside);
      remedies = List.copyOf(remedies);
    }
  }

  /**
   * Nothing was found and nothing proved within the limits.
   *
   * @param nearest how near one can come
   */
  record Unsettled(Optional<NearestMiss> nearest) implements Explanation {}

  /**
   * {@return how near one can come, where nothing fits; empty where something fits, or none was
   * found}
   */
  default Optional<NearestMiss> nearest() {
    return Optional.empty();
  }

  /**
   * Explains a brief.
   *
   * @param blanket the brief made ready; its locks may break rules
   * @param options effort
   * @return the explanation
   */
  static Explanation of(Blanket blanket, ExplainOptions options) {
    Explanation explanation = withoutMiss(blanket, options);
    if (explanation instanceof Impossible impossible) {
      int fewest = MissSearch.fewest(blanket, Root.findings(Requirements.all(blanket)));
      return new Impossible(
          impossible.causes(),
          impossible.beside(),
          impossible.remedies(),
          impossible.remediesComplete(),
          MissSearch.of(blanket, fewest, options.seed(), options.stop()));
    }
    return explanation instanceof Unsettled
        ? new Unsettled(MissSearch.of(blanket, 0, options.seed(), options.stop()))
        : explanation;
  }

  private static Explanation withoutMiss(Blanket blanket, ExplainOptions options) {
    Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(blanket));
    ConsistencyOracle oracle = new ConsistencyOracle(options.seed(), options.each(blanket));
    if (!findings.isEmpty()) {
      return impossible(blanket, Cause.of(blanket, findings, oracle), oracle, options);
    }
    Limits whole = new Limits(options.nodes(), options.fails(), options.stop());
    ConsistencyOracle.Settled settled =
        new ConsistencyOracle(options.seed(), whole).settleUnargued(blanket);
    Optional<Sequences> witness = settled.witness();
    if (witness.isPresent()) {
      return new Fits(witness.get());
    }
    return settled.verdict() == ConsistencyOracle.Verdict.CONFLICTS
        ? impossible(blanket, List.of(Cause.ofRefuted(blanket, oracle)), oracle, options)
        : new Unsettled(Optional.empty());
  }

  private static Explanation impossible(
      Blanket blanket, List<Cause> causes, ConsistencyOracle oracle, ExplainOptions options) {
    Remedies.Outcome remedies = Remedies.of(blanket, causes, oracle, options);
    return new Impossible(
        causes, remedies.beside(), remedies.remedies(), remedies.complete(), Optional.empty());
  }
}
