package lozengy.solver.explain;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.brief.Look;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
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
 * @param lines the lines
 * @param rules the rules of which a line holds
 * @param paths where the lines stand
 */
record Asked(
    Blanket blanket,
    Domains direct,
    List<YarnLoad> loads,
    List<BriefLine> lines,
    Set<RuleId> rules,
    Set<BriefPath> paths) {

  private static final BriefPath MIN_CONTRAST = BriefPath.of("rules", "min-contrast");

  /** All that a brief asks for. */
  static Asked all(Blanket blanket) {
    return of(blanket, RulePostings.lines(blanket));
  }

  /**
   * What some lines ask for.
   *
   * @param lines some of {@link RulePostings#lines}
   */
  static Asked of(Blanket blanket, List<BriefLine> lines) {
    Domains direct = Domains.direct(blanket, lines);
    Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
    Set<BriefPath> paths = new HashSet<>();
    for (BriefLine line : lines) {
      rules.add(line.rule());
      paths.add(line.path());
    }
    List<YarnLoad> loads = YarnLoad.of(blanket, direct, lines);
    return new Asked(blanket, direct, loads, List.copyOf(lines), rules, paths);
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
        || contrast() && blanket.sameBorder(yarnA, yarnB)
        || apart(yarnA, yarnB);
  }

  /** Whether borders that look alike count as the same. */
  boolean contrast() {
    return paths.contains(MIN_CONTRAST);
  }

  /** Whether two yarns are to be kept apart. */
  boolean apart(int yarnA, int yarnB) {
    List<Look.Pair> pairs = blanket.brief().look().apart();
    for (int i = 0; i < pairs.size() && rules.contains(RuleId.APART); i++) {
      int first = blanket.yarnIndex(pairs.get(i).first());
      int second = blanket.yarnIndex(pairs.get(i).second());
      boolean meant = first == yarnA && second == yarnB || first == yarnB && second == yarnA;
      if (meant && paths.contains(BriefPath.of("look", "apart").item(i))) {
        return true;
      }
    }
    return false;
  }

  /** What locks, finished pieces and given borders leave each round, tones and bans aside. */
  Domains held() {
    Domains held = Domains.all(blanket);
    for (BriefLine line : lines) {
      if (line.rule() == RuleId.LOCKS || line.rule() == RuleId.BORDERS) {
        line.content().restrict(held);
      }
    }
    return held;
  }

  /** What the lines leave each round of a piece that is still to be worked. */
  Domains worked() {
    Domains worked = Domains.all(blanket);
    lines.forEach(line -> line.content().restrict(worked));
    return worked;
  }

  /** The pile as the lines ask for it: of the stacks left out no piece has to lie anywhere. */
  List<Stack> stacks() {
    return blanket.pile().stacks().stream().filter(s -> paths.contains(s.path())).toList();
  }

  /** Whether anything bounds what a yarn can give. */
  boolean bounded(int yarn) {
    return loads.get(yarn).capacity() < YarnLoad.ENDLESS / 2;
  }
}
