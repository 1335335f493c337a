package lozengy.solver.explain.shortage;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Pairs;
import lozengy.solver.constraint.IndependentSets;
import lozengy.solver.constraint.YarnLoad;

/**
 * What each yarn can give to rounds, in the unit of a {@link Demand}.
 *
 * @param yarns most that it can give to all rounds
 * @param borders most that it can give to borders
 * @param lengths most that it can give to all rounds, in mm
 * @param whole whether it is counted that rounds are whole
 */
record Supply(long[] yarns, long[] borders, long[] lengths, boolean whole) {

  /** The usable stock after joining and edging. */
  static Supply stock(Demand demand) {
    long[] lengths = demand.loads().stream().mapToLong(YarnLoad::capacity).toArray();
    return of(demand, lengths, false);
  }

  /** What whole rounds can use of it. */
  static Supply wholeRounds(Demand demand) {
    long[] lengths =
        demand.loads().stream().mapToLong(l -> l.fixedUse() + l.mostReachable()).toArray();
    return of(demand, lengths, true);
  }

  private static Supply of(Demand demand, long[] lengths, boolean whole) {
    long[] yarns =
        IntStream.range(0, lengths.length).mapToLong(y -> demand.up(lengths[y], y)).toArray();
    long[] endless = new long[lengths.length];
    Arrays.fill(endless, demand.total());
    return new Supply(yarns, endless, lengths, whole);
  }

  /** The same, and of each yarn no more border than pieces that share no seam can show. */
  static Supply withBorderLimits(Demand demand) {
    Supply supply = wholeRounds(demand);
    Blanket blanket = demand.blanket();
    Pairs seams = blanket.layout().seams().without(blanket::bordersMayMatch);
    Map<List<Long>, Long> known = new HashMap<>();
    for (int yarn = 0; yarn < supply.borders.length; yarn++) {
      long[] weights = demand.borderWeights(yarn);
      // seams join two sides, and the heavier side alone is at least half
      if (2 * supply.yarns[yarn] > LongStream.of(weights).sum()) {
        supply.borders[yarn] =
            known.computeIfAbsent(
                LongStream.of(weights).boxed().toList(),
                w -> IndependentSets.heaviest(seams, weights));
      }
    }
    return supply;
  }
}
