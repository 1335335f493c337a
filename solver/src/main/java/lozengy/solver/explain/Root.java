package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Domains;
import org.chocosolver.solver.exception.ContradictionException;

/** What is certain of a blanket before any search. */
public final class Root {

  /**
   * Arguments in turns. All of the first turn are told, of which the later may be a consequence; of
   * the others only the first that finds something.
   */
  private static final List<List<Argument>> TURNS =
      List.of(
          List.of(
              new EmptyRounds(),
              new PileLocks(),
              new PileBorders(),
              new OverdrawnByPile(),
              new StuckPieces(),
              new StuckSeams(),
              new StuckImages(),
              new OverdrawnYarns(),
              new LongRounds(),
              new FewSequences()),
          List.of(Capacity.STOCK),
          List.of(Capacity.WHOLE_ROUNDS),
          List.of(Capacity.BORDER_LIMITS));

  private Root() {}

  /** What the root shows. */
  public sealed interface Result {}

  /**
   * Nothing forbids an arrangement so far.
   *
   * @param domains what each round may take at most: what is left out is in no valid arrangement
   */
  public record Open(Domains domains) implements Result {}

  /**
   * No arrangement fits.
   *
   * @param reasons sentences, each a proof by itself; empty if propagation found it and no sentence
   *     is known
   */
  public record Closed(List<String> reasons) implements Result {}

  /**
   * Direct arguments against a blanket, in words; for blankets of any size.
   *
   * @return sentences, each a proof by itself; empty where none is found
   */
  public static List<String> arguments(Blanket blanket) {
    Domains direct = Domains.direct(blanket);
    for (List<Argument> turn : TURNS) {
      List<String> reasons = new ArrayList<>();
      for (Argument argument : turn) {
        argument.reasons(blanket, direct).forEach(reason -> reasons.add(Tell.sentence(reason)));
      }
      if (!reasons.isEmpty()) {
        return reasons;
      }
    }
    return List.of();
  }

  /**
   * Filters what each round may take: direct arguments, then, for blankets that are small enough
   * (see {@link ConstraintModel#fits}), propagation of all rules.
   */
  public static Result filter(Blanket blanket) {
    List<String> reasons = arguments(blanket);
    if (!reasons.isEmpty()) {
      return new Closed(reasons);
    }
    Domains domains = Domains.direct(blanket);
    LongRounds.filter(blanket, domains);
    if (!ConstraintModel.fits(blanket)) {
      return new Open(domains);
    }
    ConstraintModel model = ConstraintModel.of(blanket);
    try {
      model.model().getSolver().propagate();
    } catch (ContradictionException e) {
      return new Closed(List.of());
    }
    return new Open(model.domains());
  }
}
