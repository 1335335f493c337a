package lozengy.solver.explain.conflict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;
import lozengy.model.input.BriefPath;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.conflict.ConsistencyOracle.Verdict;

/**
 * Lines of a brief that cannot hold together.
 *
 * <p>Found by QuickXPlain (Junker 2004) on fresh models, each searched within the limits. A model
 * that is not refuted within them counts as one that holds, which leaves more lines in the
 * conflict, but never makes a conflict of what is none.
 *
 * @param lines the lines, in the order of the rules
 * @param minimal whether it is proved that without any one of them the others hold together
 */
public record Conflict(List<BriefLine> lines, boolean minimal) {

  /**
   * Copies the lines.
   *
   * @param lines the lines, in the order of the rules
   * @param minimal whether it is proved that without any one of them the others hold together
   */
  public Conflict {
    lines = List.copyOf(lines);
  }

  /**
   * Finds a conflict in a brief that is known to have no arrangement.
   *
   * @param blanket a blanket that is refuted as a whole
   * @param oracle settles smaller sets of lines
   * @return the conflict
   */
  public static Conflict ofRefuted(Blanket blanket, ConsistencyOracle oracle) {
    Predicate<List<BriefLine>> refuted =
        lines -> oracle.settle(blanket, lines) == Verdict.CONFLICTS;
    return new Finder(blanket, refuted, oracle).find(RuleBook.lines(blanket));
  }

  /**
   * The lines that an argument's finding rests on.
   *
   * @param blanket the blanket
   * @param argument the argument
   * @param candidates lines which the argument speaks against already
   * @param oracle settles whether each of them matters
   * @return the conflict
   */
  public static Conflict of(
      Blanket blanket, Argument argument, List<BriefLine> candidates, ConsistencyOracle oracle) {
    Predicate<List<BriefLine>> refuted =
        lines -> !argument.findings(Requirements.of(blanket, lines)).isEmpty();
    // where the candidates leave a line out that the argument needs, all lines are looked through
    boolean enough = refuted.test(candidates);
    List<BriefLine> from = enough ? candidates : RuleBook.lines(blanket);
    return new Finder(blanket, refuted, oracle).find(from).inOrder(blanket);
  }

  /** The same with its lines in the order of the rules. */
  private Conflict inOrder(Blanket blanket) {
    List<BriefPath> order = RuleBook.lines(blanket).stream().map(BriefLine::path).toList();
    return new Conflict(
        lines.stream().sorted(Comparator.comparing(line -> order.indexOf(line.path()))).toList(),
        minimal);
  }

  private static final class Finder {

    private final Blanket blanket;
    private final Predicate<List<BriefLine>> refuted;
    private final ConsistencyOracle oracle;

    Finder(Blanket blanket, Predicate<List<BriefLine>> refuted, ConsistencyOracle oracle) {
      this.blanket = blanket;
      this.refuted = refuted;
      this.oracle = oracle;
    }

    /** A conflict among lines that are refuted together. */
    Conflict find(List<BriefLine> all) {
      List<BriefLine> found = conflict(List.of(), true, all);
      List<BriefLine> ordered = new ArrayList<>(all.stream().filter(found::contains).toList());
      return smallest(ordered);
    }

    /** Leaves out what the others conflict without, and looks whether each of the rest matters. */
    private Conflict smallest(List<BriefLine> lines) {
      boolean minimal = true;
      for (BriefLine line : List.copyOf(lines)) {
        List<BriefLine> others = lines.stream().filter(other -> other != line).toList();
        Verdict verdict = oracle.settle(blanket, others);
        if (verdict == Verdict.CONFLICTS) {
          lines.remove(line);
        }
        minimal &= verdict != Verdict.OPEN;
      }
      return new Conflict(lines, minimal);
    }

    /**
     * The lines that conflict with a background, which together with all of them is refuted.
     *
     * @param background lines that are held
     * @param grown whether the background may be refuted by itself
     * @param lines at least one
     */
    private List<BriefLine> conflict(
        List<BriefLine> background, boolean grown, List<BriefLine> lines) {
      if (grown && refuted.test(background)) {
        return List.of();
      }
      if (lines.size() == 1) {
        return lines;
      }
      List<BriefLine> firstHalf = lines.subList(0, lines.size() / 2);
      List<BriefLine> secondHalf = lines.subList(lines.size() / 2, lines.size());
      List<BriefLine> second = conflict(joined(background, firstHalf), true, secondHalf);
      List<BriefLine> first = conflict(joined(background, second), !second.isEmpty(), firstHalf);
      return joined(first, second);
    }

    private static List<BriefLine> joined(List<BriefLine> first, List<BriefLine> second) {
      List<BriefLine> joined = new ArrayList<>(first);
      joined.addAll(second);
      return joined;
    }
  }
}
