package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.Scorer;
import lozengy.solver.bound.PieceGroups.Group;

/**
 * Most leeway that stock allows. For any set S of yarns, the rounds that may take no yarn outside
 * it need at least d in all, joining, edging and certain pieces included; with leeway g each yarn
 * takes at most stock / (1 + 0.1 g), so d (1 + 0.1 g) &lt;= stock(S), which bounds g. Tried are the
 * sets that some round allows, their unions two by two, and all yarns.
 */
final class LeewayCap {

  /** Covers the rounding of a division. */
  private static final double MARGIN = 1e-9;

  /** Most sets that are paired. */
  private static final int MOST_SETS = 24;

  private record Demand(BitSet yarns, double millimetres) {}

  private LeewayCap() {}

  /** The cap, 0 to 1; 0 too where stock does not suffice at all. */
  static double of(Blanket blanket, PieceGroups groups) {
    List<Demand> demands = demands(blanket, groups);
    double cap = 1;
    for (BitSet yarns : sets(demands)) {
      double need = 0;
      for (Demand demand : demands) {
        BitSet outside = (BitSet) demand.yarns().clone();
        outside.andNot(yarns);
        need += outside.isEmpty() ? demand.millimetres() : 0;
      }
      double stock = yarns.stream().mapToDouble(blanket::stockMillimetres).sum();
      if (need > 0) {
        cap = Math.min(cap, (stock / need - 1) / Scorer.AMPLE_LEEWAY + MARGIN);
      }
    }
    return Math.max(0, cap);
  }

  private static List<Demand> demands(Blanket blanket, PieceGroups groups) {
    List<Demand> demands = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      demands.add(new Demand(single(yarn), blanket.fixedUseMillimetres(yarn)));
    }
    for (int piece : groups.fixed()) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = blanket.locked(piece, round);
        double need = blanket.needMillimetres(blanket.kind(piece), round, yarn);
        demands.add(new Demand(single(yarn), need));
      }
    }
    for (Group group : groups.groups()) {
      for (int round = 0; round < group.allowed().length; round++) {
        demands.add(demand(blanket, group, round));
      }
    }
    return demands;
  }

  private static BitSet single(int yarn) {
    BitSet set = new BitSet();
    set.set(yarn);
    return set;
  }

  private static Demand demand(Blanket blanket, Group group, int round) {
    BitSet yarns = new BitSet();
    double least = Double.POSITIVE_INFINITY;
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      if (group.allowed()[round][yarn]) {
        yarns.set(yarn);
        least = Math.min(least, blanket.needMillimetres(group.kind(), round, yarn));
      }
    }
    return new Demand(yarns, group.count() * least);
  }

  private static Set<BitSet> sets(List<Demand> demands) {
    Set<BitSet> distinct = new LinkedHashSet<>();
    BitSet all = new BitSet();
    for (Demand demand : demands) {
      all.or(demand.yarns());
      if (demand.yarns().cardinality() > 1 && distinct.size() < MOST_SETS) {
        distinct.add(demand.yarns());
      }
    }
    Set<BitSet> sets = new LinkedHashSet<>(distinct);
    for (BitSet one : distinct) {
      for (BitSet other : distinct) {
        BitSet union = (BitSet) one.clone();
        union.or(other);
        sets.add(union);
      }
    }
    sets.add(all);
    return sets;
  }
}
