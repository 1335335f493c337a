package lozengy.solver.problem;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.YarnPairs;

/**
 * The pairs of slots that may not have some pairs of yarns together, whichever rules say so. Pairs
 * of two slots that cannot change are facts and left out.
 *
 * @param start start of each slot's entries, and the end
 * @param slot the other slot of each entry, ascending for each slot
 * @param times how many pairs of the blanket's rounds an entry stands for
 * @param relation which of the relations holds of an entry
 * @param bars by relation and yarn x yarns + yarn, whether the two may not meet; symmetric
 * @param against by relation and yarn, the yarns that may not meet it
 */
public record Clashes(
    int[] start, int[] slot, int[] times, int[] relation, boolean[][] bars, int[][][] against) {

  /** Freezes a graph of clashes. O(slots + clashes). */
  static Clashes of(Blanket blanket, ClashGraph graph, Slots slots) {
    RoundIndex index = blanket.index();
    int[] slotOf = slots.numbers(index);
    int[] start = new int[slots.count() + 1];
    int most = graph.to(index.count() - 1);
    int[] other = new int[most];
    int[] times = new int[most];
    int[] relation = new int[most];
    int count = 0;
    for (int piece = 0; piece < slots.orbits(); piece++) {
      for (int each = slots.orbitStart()[piece]; each < slots.orbitStart()[piece + 1]; each++) {
        start[each] = count;
        TreeMap<Long, Integer> found = new TreeMap<>();
        for (int member : slots.members()[piece]) {
          int number = index.number(member, each - slots.orbitStart()[piece]);
          for (int entry = graph.from(number); entry < graph.to(number); entry++) {
            int with = slotOf[graph.other(entry)];
            boolean fixed = fixed(slots, each) && fixed(slots, with);
            if (with != each && !fixed) {
              found.merge((long) with << 32 | graph.relation(entry), 1, Integer::sum);
            }
          }
        }
        for (Map.Entry<Long, Integer> entry : found.entrySet()) {
          other[count] = (int) (entry.getKey() >> 32);
          relation[count] = entry.getKey().intValue();
          times[count++] = entry.getValue();
        }
      }
    }
    start[slots.count()] = count;
    List<YarnPairs> relations = graph.relations();
    boolean[][] bars = new boolean[relations.size()][];
    int[][][] against = new int[bars.length][][];
    for (int i = 0; i < bars.length; i++) {
      YarnPairs barred = relations.get(i);
      int yarns = barred.yarns();
      bars[i] = new boolean[yarns * yarns];
      against[i] = new int[yarns][];
      for (int yarn = 0; yarn < yarns; yarn++) {
        against[i][yarn] = barred.against(yarn);
        for (int with : against[i][yarn]) {
          bars[i][yarn * yarns + with] = true;
        }
      }
    }
    return new Clashes(
        start,
        Arrays.copyOf(other, count),
        Arrays.copyOf(times, count),
        Arrays.copyOf(relation, count),
        bars,
        against);
  }

  private static boolean fixed(Slots slots, int slot) {
    return slots.fixedYarn()[slot] != Sequences.OPEN;
  }

  /**
   * {@return whether the two slots of an entry may not have two yarns}
   *
   * @param entry the entry
   * @param yarn the one yarn's index, from 0
   * @param other the other yarn's index, from 0
   */
  public boolean bars(int entry, int yarn, int other) {
    int[][] of = against[relation[entry]];
    return bars[relation[entry]][yarn * of.length + other];
  }
}
