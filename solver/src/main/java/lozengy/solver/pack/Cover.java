package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * Yarns that rounds have to themselves: a pack must have so much of them together (the condition of
 * Hall, for yarn that can be divided at will).
 *
 * @param yarns the yarns
 * @param millimetres what the rounds that may take no other take at the least, in mm
 */
record Cover(BitSet yarns, long millimetres) {

  /** Sets of yarns up to which all unions of them are looked at. */
  private static final int FEW = 6;

  private static final int MOST_GROUPS = 400;

  /** The covers of a brief; none where finished pieces may lie anywhere. O(rounds x yarns). */
  static List<Cover> of(Shades shades) {
    Blanket blanket = shades.bare();
    if (!blanket.pile().isEmpty()) {
      return List.of();
    }
    Map<BitSet, Long> needs = needs(blanket);
    List<Cover> covers = new ArrayList<>();
    for (BitSet union : unions(needs.keySet())) {
      long sum = union.stream().mapToLong(shades::held).sum();
      for (Map.Entry<BitSet, Long> each : needs.entrySet()) {
        BitSet others = (BitSet) each.getKey().clone();
        others.andNot(union);
        sum += others.isEmpty() ? each.getValue() : 0;
      }
      covers.add(new Cover(union, sum));
    }
    return covers;
  }

  /** What open rounds take at the least in all, by the yarns that they may take. */
  private static Map<BitSet, Long> needs(Blanket blanket) {
    Map<BitSet, Long> needs = new LinkedHashMap<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int rounds = blanket.roundCount(piece);
      int open = blanket.look().givesBorders() ? rounds - 1 : rounds;
      for (int round = 0; round < open; round++) {
        if (blanket.locked(piece, round) == Sequences.OPEN) {
          BitSet yarns = new BitSet();
          long least = Long.MAX_VALUE;
          for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
            if (!blanket.yarn(yarn).gone() && blanket.domains().mayTake(piece, round, yarn)) {
              yarns.set(yarn);
              least = Math.min(least, blanket.takenMillimetres(piece, round, yarn));
            }
          }
          if (!yarns.isEmpty() && (needs.containsKey(yarns) || needs.size() < MOST_GROUPS)) {
            needs.merge(yarns, least, Long::sum);
          }
        }
      }
    }
    return needs;
  }

  private static Collection<BitSet> unions(Collection<BitSet> sets) {
    Set<BitSet> unions = new LinkedHashSet<>();
    BitSet all = new BitSet();
    for (BitSet set : sets) {
      all.or(set);
      if (sets.size() <= FEW) {
        for (BitSet union : List.copyOf(unions)) {
          BitSet both = (BitSet) union.clone();
          both.or(set);
          unions.add(both);
        }
      }
      unions.add(set);
    }
    if (!all.isEmpty()) {
      unions.add(all);
    }
    return unions;
  }
}
