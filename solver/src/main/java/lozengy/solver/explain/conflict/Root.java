package lozengy.solver.explain.conflict;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Arguments;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.shortage.Capacity;

/** What is certain of a blanket before any search. */
public final class Root {

  /** What is worked out from sums of many rounds, where no simpler argument finds anything. */
  private static final List<List<Argument>> SUMS =
      List.of(
          List.of(Capacity.STOCK), List.of(Capacity.WHOLE_ROUNDS), List.of(Capacity.BORDER_LIMITS));

  private static final List<List<Argument>> TURNS =
      Stream.of(Arguments.TURNS, SUMS).flatMap(List::stream).toList();

  private Root() {}

  /**
   * Direct arguments against a blanket; for blankets of any size.
   *
   * @param blanket the blanket
   * @return reasons, each a proof by itself; empty where none is found
   */
  public static List<Refutation> arguments(Blanket blanket) {
    List<Refutation> refutations = new ArrayList<>();
    findings(Requirements.all(blanket))
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
   * @param asked what is asked for
   * @return by argument, in their order, what it found; empty where none is found
   */
  public static Map<Argument, List<Finding>> findings(Requirements asked) {
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
