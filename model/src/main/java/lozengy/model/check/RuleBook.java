package lozengy.model.check;

import java.util.Comparator;
import java.util.List;
import lozengy.model.blanket.Blanket;

/** All rules: the one place where a rule is registered. */
public final class RuleBook {

  /** Those that a maker will hardly give up first: conflicts are told in lines of the later. */
  private static final List<Rule> BY_WEIGHT =
      List.of(
          new CompleteRule(),
          new PileRule(),
          new WithinPieceRule(),
          new NeighbourBordersRule(),
          new NeighbourCentresRule(),
          new TonesRule(),
          new LocksRule(),
          new BordersRule(),
          new ZonesRule(),
          new ApartRule(),
          new LotsRule(),
          new BansRule(),
          new SymmetryRule(),
          new CountsRule(),
          new CopiesRule(),
          new YarnTotalsRule());

  private static final List<Rule> BY_ID =
      BY_WEIGHT.stream().sorted(Comparator.comparing(Rule::id)).toList();

  private RuleBook() {}

  /** {@return all rules, in the order of their ids, in which faults are told} */
  public static List<Rule> rules() {
    return BY_ID;
  }

  /**
   * {@return a rule}
   *
   * @param id its id
   */
  public static Rule rule(RuleId id) {
    return BY_ID.get(id.ordinal());
  }

  /**
   * {@return all lines of a brief, those of the rules that a maker will hardly give up first}
   *
   * @param blanket the blanket
   */
  public static List<BriefLine> lines(Blanket blanket) {
    return BY_WEIGHT.stream().flatMap(rule -> rule.lines(blanket).stream()).toList();
  }
}
