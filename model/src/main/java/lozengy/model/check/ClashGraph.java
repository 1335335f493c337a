package lozengy.model.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.RoundIndex;

/**
 * All clashes of some lines together, as a graph of rounds: for each round those that it may clash
 * with, ascending, and with each the pairs of yarns that they may not have. Two rounds that several
 * lines speak of are listed once. O(rounds + clashes) memory.
 */
public final class ClashGraph {

  private final RoundIndex index;
  private final int[] start;
  private final int[] other;
  private final int[] relation;
  private final List<YarnPairs> relations = new ArrayList<>();
  private final Map<YarnPairs, Integer> numbers = new HashMap<>();
  private final Map<Long, Integer> unions = new HashMap<>();

  private ClashGraph(Blanket blanket, Collection<BriefLine> lines) {
    this.index = blanket.index();
    Map<RoundPairs, YarnPairs> groups = groups(lines);
    int[] from = new int[index.count() + 1];
    groups.keySet().forEach(pairs -> count(pairs, from));
    for (int number = 0; number < index.count(); number++) {
      from[number + 1] += from[number];
    }
    int[] others = new int[from[index.count()]];
    int[] barred = new int[others.length];
    int[] next = from.clone();
    groups.forEach((pairs, yarns) -> fill(pairs, number(yarns), next, others, barred));
    this.start = new int[index.count() + 1];
    this.other = others;
    this.relation = barred;
    merge(from);
  }

  /**
   * The clashes of some lines.
   *
   * @param blanket the blanket
   * @param lines some of its lines
   * @return the graph
   */
  public static ClashGraph of(Blanket blanket, Collection<BriefLine> lines) {
    return new ClashGraph(blanket, lines);
  }

  /** Lines that speak of the very same pairs, by their arrays, taken together. */
  private static Map<RoundPairs, YarnPairs> groups(Collection<BriefLine> lines) {
    Map<RoundPairs, YarnPairs> groups = new LinkedHashMap<>();
    lines.stream()
        .flatMap(line -> line.grounds(Ground.Clash.class))
        .forEach(clash -> groups.merge(clash.pairs(), clash.barred(), YarnPairs::and));
    return groups;
  }

  private static void count(RoundPairs pairs, int[] counts) {
    for (int i = 0; i < pairs.size(); i++) {
      counts[pairs.first()[i] + 1]++;
      counts[pairs.second()[i] + 1]++;
    }
  }

  private static void fill(RoundPairs pairs, int barred, int[] next, int[] others, int[] of) {
    for (int i = 0; i < pairs.size(); i++) {
      int first = pairs.first()[i];
      int second = pairs.second()[i];
      of[next[first]] = barred;
      others[next[first]++] = second;
      of[next[second]] = barred;
      others[next[second]++] = first;
    }
  }

  private int number(YarnPairs pairs) {
    return numbers.computeIfAbsent(
        pairs,
        each -> {
          relations.add(each);
          return relations.size() - 1;
        });
  }

  private int union(int one, int two) {
    long key = (long) Math.min(one, two) << 32 | Math.max(one, two);
    Integer known = unions.get(key);
    if (known == null) {
      known = number(relations.get(one).and(relations.get(two)));
      unions.put(key, known);
    }
    return known;
  }

  /** Sorts each round's entries, and makes one of several with the same round. */
  private void merge(int[] from) {
    int kept = 0;
    for (int number = 0; number < index.count(); number++) {
      start[number] = kept;
      int end = from[number + 1];
      sort(from[number], end);
      for (int i = from[number]; i < end; i++) {
        if (kept > start[number] && other[kept - 1] == other[i]) {
          relation[kept - 1] = union(relation[kept - 1], relation[i]);
        } else {
          other[kept] = other[i];
          relation[kept++] = relation[i];
        }
      }
    }
    start[index.count()] = kept;
  }

  /** By insertion: a round has few entries. */
  private void sort(int from, int to) {
    for (int i = from + 1; i < to; i++) {
      int number = other[i];
      int barred = relation[i];
      int at = i;
      for (; at > from && other[at - 1] > number; at--) {
        other[at] = other[at - 1];
        relation[at] = relation[at - 1];
      }
      other[at] = number;
      relation[at] = barred;
    }
  }

  /**
   * {@return the first entry of a round}
   *
   * @param number the round's number
   */
  public int from(int number) {
    return start[number];
  }

  /**
   * {@return the entry after a round's last}
   *
   * @param number the round's number
   */
  public int to(int number) {
    return start[number + 1];
  }

  /**
   * {@return the number of the round that an entry names}
   *
   * @param entry the entry
   */
  public int other(int entry) {
    return other[entry];
  }

  /**
   * {@return which of {@link #relations()} an entry's two rounds may not have}
   *
   * @param entry the entry
   */
  public int relation(int entry) {
    return relation[entry];
  }

  /**
   * {@return the pairs of yarns that an entry's two rounds may not have}
   *
   * @param entry the entry
   */
  public YarnPairs barred(int entry) {
    return relations.get(relation[entry]);
  }

  /** {@return all different pairs of yarns} */
  public List<YarnPairs> relations() {
    return List.copyOf(relations);
  }

  /**
   * {@return whether two rounds may not have two yarns}
   *
   * @param number the one round's number
   * @param yarn its yarn
   * @param otherNumber the other round's number
   * @param otherYarn its yarn
   */
  public boolean bars(int number, int yarn, int otherNumber, int otherYarn) {
    for (int entry = start[number]; entry < start[number + 1]; entry++) {
      if (other[entry] == otherNumber) {
        return barred(entry).bars(yarn, otherYarn);
      }
    }
    return false;
  }
}
