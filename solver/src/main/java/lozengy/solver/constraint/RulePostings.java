package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.blanket.Blanket;

/** The postings of all rules. */
public final class RulePostings {

  private static final List<RulePosting> ALL =
      List.of(
          new CompletePosting(),
          new PilePosting(),
          new WithinPiecePosting(),
          new NeighbourBordersPosting(),
          new TonesPosting(),
          new LocksPosting(),
          new BordersPosting(),
          new ZonesPosting(),
          new ApartPosting(),
          new BansPosting(),
          new SymmetryPosting(),
          new CountsPosting(),
          new CopiesPosting(),
          new YarnTotalsPosting());

  private RulePostings() {}

  /** {@return one posting for each rule, those that a maker will hardly give up first} */
  public static List<RulePosting> all() {
    return ALL;
  }

  /**
   * {@return all lines of a brief, in the order of the postings}
   *
   * @param blanket the blanket
   */
  public static List<BriefLine> lines(Blanket blanket) {
    return ALL.stream().flatMap(posting -> posting.lines(blanket).stream()).toList();
  }
}
