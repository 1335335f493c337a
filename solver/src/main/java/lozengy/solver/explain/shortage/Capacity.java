package lozengy.solver.explain.shortage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.argument.Shortfall;

/**
 * A set of rounds that only some yarns may serve, and that take more than these yarns can give: a
 * condition in the manner of Hall (1935), found as a minimum cut between rounds and yarns.
 *
 * <p>The cut only proposes a set; that it is short of yarn is added up again in whole numbers, so
 * that a "no" never hangs on floating point. The sets that are told can spare no yarn without
 * ceasing to be short.
 */
public enum Capacity implements Argument {
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
  public int fewestOpen(Blanket blanket, Finding finding) {
    // in parts of a yarn's whole the missing amount is no length
    boolean inMillimetres = Demand.of(Requirements.all(blanket)).inMillimetres();
    return this == STOCK && inMillimetres ? Shortfall.fewestOpen(blanket, finding) : 0;
  }

  @Override
  public List<Finding> findings(Requirements asked) {
    boolean borders = asked.bordersDiffer() && ConstraintModel.fits(asked.blanket());
    boolean bounded =
        IntStream.range(0, asked.blanket().yarnCount()).anyMatch(yarn -> asked.bounded(yarn));
    if (this == BORDER_LIMITS && !borders || this != BORDER_LIMITS && !bounded) {
      return List.of();
    }
    Demand demand = Demand.of(asked);
    Supply supply = supply(demand);
    List<Finding> findings = new ArrayList<>();
    // finds short sets one after the other; the yarns of one that is told count as endless then
    BitSet told = new BitSet();
    for (int turn = 0; turn < demand.yarns(); turn++) {
      Shortage shortage = new Cut(demand, supply, told).find();
      if (shortage == null) {
        return findings;
      }
      findings.add(shortage.finding(this == BORDER_LIMITS));
      told.or(shortage.yarns());
      told.or(shortage.bordersOnly());
    }
    return findings;
  }
}
