package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.Domains;

/**
 * A set of rounds that only some yarns may serve, and that take more than these yarns can give: a
 * condition in the manner of Hall (1935), found as a minimum cut between rounds and yarns.
 *
 * <p>The cut only proposes a set; that it is short of yarn is added up again in whole numbers, so
 * that a "no" never hangs on floating point. The sets that are told can spare no yarn without
 * ceasing to be short.
 */
enum Capacity implements Argument {
  /** Held against the stock as it is. */
  STOCK {
    @Override
    Supply supply(Demand demand) {
      return Supply.stock(demand);
    }
  },
  /** Held against what whole rounds can use of the stock. */
  WHOLE_ROUNDS {
    @Override
    Supply supply(Demand demand) {
      return Supply.wholeRounds(demand);
    }
  },
  /** The same, and no yarn gives more border than pieces that share no seam can show. */
  BORDER_LIMITS {
    @Override
    Supply supply(Demand demand) {
      return Supply.withBorderLimits(demand);
    }
  };

  abstract Supply supply(Demand demand);

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    if (this == BORDER_LIMITS && !ConstraintModel.fits(blanket)) {
      return List.of();
    }
    Demand demand = Demand.of(blanket, direct);
    Supply supply = supply(demand);
    List<String> reasons = new ArrayList<>();
    // finds short sets one after the other; the yarns of one that is told count as endless then
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
