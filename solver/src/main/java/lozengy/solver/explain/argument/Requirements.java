package lozengy.solver.explain.argument;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.check.BriefLine;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.Ground;
import lozengy.model.check.RoundPairs;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.check.YarnPairs;
import lozengy.model.input.BriefPath;
import lozengy.solver.constraint.YarnLoad;

/**
 * What a brief asks for, or what some of its lines ask for, as direct arguments look at it.
 *
 * @param blanket the blanket
 * @param direct what the lines leave each round by themselves
 * @param loads what the rounds may ask of each yarn, and what the lines leave of it
 * @param seams whether borders take what they do of their seams
 * @param clashes what rounds may not have together
 * @param lines the lines
 * @param rules the rules of which a line holds
 * @param paths where the lines stand
 */
public record Requirements(
    Blanket blanket,
    RoundYarns direct,
    List<YarnLoad> loads,
    boolean seams,
    ClashGraph clashes,
    List<BriefLine> lines,
    Set<RuleId> rules,
    Set<BriefPath> paths) {

  private static final BriefPath MIN_CONTRAST = BriefPath.of("rules", "min-contrast");

  /**
   * {@return all that a brief asks for}
   *
   * @param blanket the blanket
   */
  public static Requirements all(Blanket blanket) {
    return of(blanket, RuleBook.lines(blanket));
  }

  /**
   * What some lines ask for.
   *
   * @param blanket the blanket
   * @param lines some of {@link RuleBook#lines}
   * @return what they ask for
   */
  public static Requirements of(Blanket blanket, List<BriefLine> lines) {
    RoundYarns direct = RoundYarns.direct(blanket, lines);
    Set<RuleId> rules = EnumSet.noneOf(RuleId.class);
    Set<BriefPath> paths = new HashSet<>();
    for (BriefLine line : lines) {
      rules.add(line.rule());
      paths.add(line.path());
    }
    List<YarnLoad> loads = YarnLoad.of(blanket, direct, lines);
    ClashGraph clashes = ClashGraph.of(blanket, lines);
    boolean seams = YarnLoad.seams(lines);
    return new Requirements(
        blanket, direct, loads, seams, clashes, List.copyOf(lines), rules, paths);
  }

  /**
   * The rules of the lines by which rounds clash.
   *
   * @param within whether those of one piece are meant, or those of two
   */
  RuleId[] clashRules(boolean within) {
    return lines.stream()
        .filter(line -> line.grounds(Ground.Clash.class).anyMatch(clash -> within == within(clash)))
        .map(BriefLine::rule)
        .distinct()
        .toArray(RuleId[]::new);
  }

  private boolean within(Ground.Clash clash) {
    RoundPairs pairs = clash.pairs();
    RoundIndex index = blanket.index();
    return pairs.size() > 0 && index.piece(pairs.first()[0]) == index.piece(pairs.second()[0]);
  }

  /** What a round takes in a yarn, in mm. */
  long takenMillimetres(int piece, int round, int yarn) {
    return seams
        ? blanket.takenMillimetres(piece, round, yarn)
        : blanket.motifs().needMillimetres(blanket.kind(piece), round, yarn);
  }

  /** The yarns that the lines leave a round by themselves, by its number. */
  int[] yarnsOf(int number) {
    return direct.yarnsOf(blanket.index().piece(number), blanket.index().round(number));
  }

  /** Whether two rounds clash whatever they take; not if one may take nothing, told elsewhere. */
  boolean stuck(int number, int entry) {
    int[] yarns = yarnsOf(number);
    int[] others = yarnsOf(clashes.other(entry));
    YarnPairs barred = clashes.barred(entry);
    return yarns.length > 0
        && others.length > 0
        && IntStream.of(yarns)
            .allMatch(yarn -> IntStream.of(others).allMatch(other -> barred.bars(yarn, other)));
  }

  /** How many pieces may share a sequence, where that is limited. */
  OptionalInt copies() {
    return rules.contains(RuleId.COPIES) ? blanket.brief().rules().copies() : OptionalInt.empty();
  }

  /** {@return whether borders on a seam must differ} */
  public boolean bordersDiffer() {
    return rules.contains(RuleId.NEIGHBOUR_BORDERS);
  }

  /** Whether borders that look alike count as the same. */
  boolean contrast() {
    return paths.contains(MIN_CONTRAST);
  }

  /** What locks, finished pieces and given borders leave each round, tones and bans aside. */
  RoundYarns held() {
    return RoundYarns.ofPlaces(blanket, lines);
  }

  /** What the lines leave each round of a piece that is still to be worked. */
  RoundYarns worked() {
    return RoundYarns.toWork(blanket, lines);
  }

  /** The pile as the lines ask for it: of the stacks left out no piece has to lie anywhere. */
  List<Stack> stacks() {
    return blanket.pile().stacks().stream().filter(s -> paths.contains(s.path())).toList();
  }

  /**
   * {@return whether anything bounds what a yarn can give}
   *
   * @param yarn index of the yarn
   */
  public boolean bounded(int yarn) {
    return loads.get(yarn).capacity() < YarnLoad.ENDLESS / 2;
  }
}
