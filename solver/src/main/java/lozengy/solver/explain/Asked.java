package lozengy.solver.explain;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.BriefLine;
import lozengy.solver.constraint.Domains;
import lozengy.solver.constraint.RulePostings;
import lozengy.solver.constraint.YarnLoad;

/**
 * What a brief asks for, or what some of its lines ask for, as direct arguments look at it.
 *
 * @param blanket the blanket
 * @param direct what the lines leave each round by themselves
 * @param loads what the rounds may ask of each yarn, and what the lines leave of it
 * @param rules the rules of which a line holds
 * @param counts where the lines of the look's counts stand that hold
 * @param contrast whether borders that look alike count as the same
 * @param whole whether all lines of the brief are asked for
 */
record Asked(
    Blanket blanket,
    Domains direct,
    List<YarnLoad> loads,
    Set<RuleId> rules,
    Set<String> counts,
    boolean contrast,
    boolean whole) {

  private static final String MIN_CONTRAST = "rules.min-contrast";

  /** All that a brief asks for. */
  static Asked all(Blanket blanket) {
    return of(blanket, RulePostings.lines(blanket), true);
  }

  /**
   * What some lines ask for.
   *
   * @param lines some of {@link RulePostings#lines}
   */
  static Asked of(Blanket blanket, List<BriefLine> lines) {
    return of(blanket, lines, false);
  }

  private static Asked of(Blanket blanket, List<BriefLine> lines, boolean whole) {
    Domains direct = Domains.direct(blanket, lines);
    Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
    Set<String> counts = new HashSet<>();
    boolean contrast = false;
    for (BriefLine line : lines) {
      rules.add(line.rule());
      if (line.rule() == RuleId.COUNTS) {
        counts.add(line.path());
      }
      contrast |= line.path().equals(MIN_CONTRAST);
    }
    return new Asked(
        blanket, direct, YarnLoad.of(blanket, direct, lines), rules, counts, contrast, whole);
  }

  /** Which rounds of a planned piece must differ. */
  WithinPiece withinPiece() {
    return rules.contains(RuleId.WITHIN_PIECE)
        ? blanket.brief().rules().withinPiece()
        : WithinPiece.FREE;
  }

  /** How many pieces may share a sequence, where that is limited. */
  OptionalInt copies() {
    return rules.contains(RuleId.COPIES) ? blanket.brief().rules().copies() : OptionalInt.empty();
  }

  /** Whether borders on a seam must differ. */
  boolean bordersDiffer() {
    return rules.contains(RuleId.NEIGHBOUR_BORDERS);
  }

  /** Whether two yarns may not meet as borders on a seam. */
  boolean bordersClash(int yarnA, int yarnB) {
    return bordersDiffer() && yarnA == yarnB
        || contrast && blanket.sameBorder(yarnA, yarnB)
        || rules.contains(RuleId.APART) && blanket.look().apart(yarnA, yarnB);
  }

  /** Whether anything bounds what a yarn can give. */
  boolean bounded(int yarn) {
    return loads.get(yarn).capacity() < YarnLoad.ENDLESS / 2;
  }
}
