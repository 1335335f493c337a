package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.BriefLine;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Limits;
import lozengy.solver.constraint.RulePostings;
import lozengy.solver.constraint.Start;

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

  /** Copies the lines. */
  public Conflict {
    lines = List.copyOf(lines);
  }

  /**
   * Finds a conflict.
   *
   * @param blanket a blanket
   * @param seed breaks ties in the searches
   * @param limits limits of each search
   * @return a conflict, or empty if the whole brief is not refuted within the limits
   */
  public static Optional<Conflict> find(Blanket blanket, long seed, Limits limits) {
    Finder finder = new Finder(blanket, seed, limits);
    return finder.refuted(RulePostings.lines(blanket))
        ? Optional.of(finder.find())
        : Optional.empty();
  }

  /**
   * Finds a conflict in a brief that is known to have no arrangement.
   *
   * @param blanket a blanket that is refuted as a whole
   * @param seed breaks ties in the searches
   * @param limits limits of each search
   */
  static Conflict ofRefuted(Blanket blanket, long seed, Limits limits) {
    return new Finder(blanket, seed, limits).find();
  }

  /** The conflict in sentences: one for what they have in common, and one for each line. */
  public List<String> words() {
    List<String> words = new ArrayList<>();
    if (lines.size() == 1) {
      words.add("One line of the brief cannot hold by itself:");
    } else {
      words.add(
          minimal
              ? "These lines of the brief cannot hold together; without any one of them the others"
                  + " could:"
              : "These lines of the brief cannot hold together; perhaps not all of them matter:");
    }
    lines.forEach(line -> words.add(line.path() + ": " + line.words()));
    return words;
  }

  private static final class Finder {

    private final Blanket blanket;
    private final long seed;
    private final Limits limits;
    private boolean certain = true;

    Finder(Blanket blanket, long seed, Limits limits) {
      this.blanket = blanket;
      this.seed = seed;
      this.limits = limits;
    }

    Conflict find() {
      List<BriefLine> all = RulePostings.lines(blanket);
      certain = true;
      List<BriefLine> found = conflict(List.of(), true, all);
      List<BriefLine> ordered = all.stream().filter(found::contains).toList();
      return new Conflict(ordered, certain);
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
      if (grown && refuted(background)) {
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

    private boolean refuted(List<BriefLine> lines) {
      ConstraintModel model = ConstraintModel.of(blanket, lines);
      Start.Outcome outcome = Start.find(model, seed, limits);
      certain &= outcome instanceof Start.None || outcome instanceof Start.Found && model.exact();
      return outcome instanceof Start.None;
    }
  }
}
