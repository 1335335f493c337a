package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.conflict.Conflict;
import lozengy.solver.explain.conflict.ConsistencyOracle;

/**
 * One reason why nothing fits.
 *
 * @param reason the direct argument, which alone is a proof; empty where there is none and the
 *     constraint model proved it
 * @param first the first reason of those that it puts together, or itself; which alone is a proof
 *     too; empty where there is no direct argument
 * @param more how many findings of the same sort there are beside this one that are not told
 * @param conflict the lines of the brief that cannot hold together
 */
public record Cause(Optional<Reason> reason, Optional<Reason> first, int more, Conflict conflict) {

  /** The yarns whose stock it rests on. */
  BitSet stocks() {
    BitSet stocks = new BitSet();
    conflict.lines().stream()
        .filter(line -> line.path().inItem("yarns"))
        .forEach(line -> stocks.set(Relaxing.index(line)));
    return stocks;
  }

  /** Findings of one sort that are looked into; the others are counted. */
  private static final int MOST_OF_A_SORT = 4;

  /**
   * {@return why a brief that direct arguments speak against cannot hold}
   *
   * @param blanket the brief made ready
   * @param found what the arguments found
   * @param oracle settles smaller sets of lines
   */
  public static List<Cause> of(
      Blanket blanket, Map<Argument, List<Finding>> found, ConsistencyOracle oracle) {
    List<BriefLine> lines = RuleBook.lines(blanket);
    RoundYarns unrestricted = RoundYarns.all(blanket);
    List<Cause> causes = new ArrayList<>();
    found.forEach(
        (argument, findings) -> {
          List<Refutation> all =
              Refutation.of(argument, findings.stream().map(Finding::reason).toList());
          List<Refutation> some = all.subList(0, Math.min(all.size(), MOST_OF_A_SORT));
          int untold = findings.size() - some.stream().mapToInt(each -> 1 + each.merged()).sum();
          for (Refutation proof : some) {
            Finding finding =
                findings.stream()
                    .filter(each -> each.reason().equals(proof.first()))
                    .findFirst()
                    .orElseThrow();
            Conflict conflict =
                Conflict.of(blanket, argument, finding.lines(unrestricted, lines), oracle);
            boolean last = proof.equals(some.get(some.size() - 1));
            add(
                causes,
                new Cause(
                    Optional.of(proof.reason()),
                    Optional.of(proof.first()),
                    proof.merged() + (last ? untold : 0),
                    conflict));
          }
        });
    return causes;
  }

  /** Adds a cause; one that rests on the lines of another is only counted. */
  private static void add(List<Cause> causes, Cause cause) {
    for (int i = 0; i < causes.size(); i++) {
      if (causes.get(i).conflict().lines().equals(cause.conflict().lines())) {
        Cause known = causes.get(i);
        int more = known.more() + 1 + cause.more();
        causes.set(i, new Cause(known.reason(), known.first(), more, known.conflict()));
        return;
      }
    }
    causes.add(cause);
  }

  /**
   * {@return why a brief that the constraint model has refuted cannot hold}
   *
   * @param blanket the brief made ready
   * @param oracle settles smaller sets of lines
   */
  public static Cause ofRefuted(Blanket blanket, ConsistencyOracle oracle) {
    return new Cause(Optional.empty(), Optional.empty(), 0, Conflict.ofRefuted(blanket, oracle));
  }
}
