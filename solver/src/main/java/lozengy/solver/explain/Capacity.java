package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Domains;

/**
 * A set of rounds that only some yarns may serve, and that take more than these yarns hold: a
 * condition in the manner of Hall (1935), found as a minimum cut between rounds and yarns.
 *
 * <p>Looks first at the stock as it is, then at what whole rounds can use of it, then at how much
 * border one yarn can give when borders on a seam differ. The cut only proposes a set; that it is
 * short of yarn is added up again in whole numbers, so that a "no" never hangs on floating point.
 * The sets that are told can spare no yarn without ceasing to be short.
 */
final class Capacity implements Argument {

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    Demand demand = Demand.of(blanket, direct);
    List<String> reasons = shortages(demand, Supply.stock(demand));
    if (reasons.isEmpty()) {
      reasons = shortages(demand, Supply.wholeRounds(demand));
    }
    if (reasons.isEmpty() && ConstraintModel.fits(blanket)) {
      reasons = shortages(demand, Supply.withBorderLimits(demand));
    }
    return reasons;
  }

  /** Finds short sets one after the other; the yarns of one that is told count as endless then. */
  private static List<String> shortages(Demand demand, Supply supply) {
    List<String> reasons = new ArrayList<>();
    BitSet told = new BitSet();
    for (int turn = 0; turn < demand.yarns(); turn++) {
      Shortage shortage = new Cut(demand, supply, told).find();
      if (shortage == null) {
        return reasons;
      }
      reasons.add(shortage.words());
      told.or(shortage.yarns());
      told.or(shortage.bordersOnly());
    }
    return reasons;
  }
}
