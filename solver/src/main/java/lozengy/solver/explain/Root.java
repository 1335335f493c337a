package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;

/** What is certain of a blanket before any search. */
public final class Root {

  /**
   * Arguments in turns. All of the first turn are told, of which the later may be a consequence; of
   * the others only the first that finds something.
   */
  private static final List<List<Argument>> TURNS =
      List.of(
          List.of(new KeptBack()),
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
              new FewSequences(),
              new StuckCounts()),
          List.of(Capacity.STOCK),
          List.of(Capacity.WHOLE_ROUNDS),
          List.of(Capacity.BORDER_LIMITS));

  private Root() {}

  /**
   * Direct arguments against a blanket; for blankets of any size.
   *
   * @param blanket the blanket
   * @return reasons, each a proof by itself; empty where none is found
   */
  public static List<Refutation> arguments(Blanket blanket) {
    List<Refutation> refutations = new ArrayList<>();
    findings(Asked.all(blanket))
        .forEach(
            (argument, findings) ->
                refutations.addAll(
                    Refutation.few(
                        Refutation.of(argument, findings.stream().map(Finding::reason).toList()))));
    return refutations;
  }

  /**
   * Direct arguments against what is asked for, those of the first turn that finds something.
   *
   * @return by argument, in their order, what it found; empty where none is found
   */
  static Map<Argument, List<Finding>> findings(Asked asked) {
    for (List<Argument> turn : TURNS) {
      Map<Argument, List<Finding>> found = new LinkedHashMap<>();
      for (Argument argument : turn) {
        List<Finding> findings = argument.findings(asked);
        if (!findings.isEmpty()) {
          found.put(argument, findings);
        }
      }
      if (!found.isEmpty()) {
        return found;
      }
    }
    return Map.of();
  }
}
