package lozengy.solver.explain.conflict;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.check.RuleBook;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.Start;
import lozengy.solver.explain.argument.Refutation;

/** Whether a blanket has a valid arrangement at all. */
public final class Feasibility {

  /** Dead ends in each of the searches for a conflict. */
  private static final int CONFLICT_FAILS = 2_000;

  private Feasibility() {}

  /** What is known. */
  public sealed interface Answer {}

  /**
   * It has one.
   *
   * @param start a valid arrangement, held against all rules
   */
  public record Fits(Sequences start) implements Answer {}

  /**
   * It is proved to have none.
   *
   * @param refutations direct arguments, each of which alone is a proof; none where the constraint
   *     model has proved it
   * @param conflict lines of the brief that cannot hold together, where the constraint model has
   *     proved it
   */
  public record Impossible(List<Refutation> refutations, Optional<Conflict> conflict)
      implements Answer {

    /**
     * Copies the refutations.
     *
     * @param refutations direct arguments, each of which alone is a proof
     * @param conflict lines of the brief that cannot hold together
     */
    public Impossible {
      refutations = List.copyOf(refutations);
    }
  }

  /** Nothing was found and nothing proved within the limits, or the blanket is too big. */
  public record Unknown() implements Answer {}

  /**
   * Examines a blanket that no direct argument speaks against, by the constraint model alone.
   *
   * @param blanket a blanket
   * @param seed breaks ties; the same blanket, seed and limits give the same answer
   * @param limits limits of the search for an arrangement
   * @return what was found out
   */
  public static Answer search(Blanket blanket, long seed, Limits limits) {
    if (!ConstraintModel.fits(blanket)) {
      return new Unknown();
    }
    ConstraintModel model = ConstraintModel.of(blanket);
    Start.Outcome outcome = Start.find(model, seed, limits);
    if (outcome instanceof Start.Solution found) {
      return answer(blanket, model, found.sequences());
    }
    return outcome instanceof Start.None
            || MeetingLines.conflict(blanket, RuleBook.lines(blanket), seed, limits)
        ? new Impossible(List.of(), Optional.of(conflict(blanket, seed, limits)))
        : new Unknown();
  }

  private static Answer answer(Blanket blanket, ConstraintModel model, Sequences sequences) {
    if (Check.faults(blanket, sequences).isEmpty()) {
      return new Fits(sequences);
    }
    if (model.exact()) {
      throw new IllegalStateException(
          "The constraint model took an arrangement for valid that breaks a rule: "
              + Check.faults(blanket, sequences).get(0));
    }
    return new Unknown();
  }

  private static Conflict conflict(Blanket blanket, long seed, Limits limits) {
    Limits each =
        new Limits(limits.nodes(), Math.min(limits.fails(), CONFLICT_FAILS), limits.stop());
    return Conflict.ofRefuted(blanket, new ConsistencyOracle(seed, each));
  }
}
