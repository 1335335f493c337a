package lozengy.model.making;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks for a short order of yarns that holds every sequence as a subsequence: a common
 * supersequence, by beam search. Each step tries every yarn that some sequence wants next and keeps
 * the orders after which the least is left to do. Deterministic; O(steps x width x yarns x
 * sequences) time with a width that shrinks as the product grows.
 */
final class PickUps {

  private static final int WIDEST = 200;

  /** Looks at sequences in one step; bounds the time on large blankets. */
  private static final int LOOKS = 2_000_000;

  private final int[][] sequences;
  private final int[] weights;
  private final int yarns;

  /** Where each sequence stands after an order of yarns, and how much is left to do. */
  private record Stand(Stand before, int yarn, int[] done, long left) {}

  /** A step that could be taken. */
  private record Step(Stand from, int yarn, long left) {}

  private PickUps(List<int[]> all, int yarns) {
    // Equal sequences move together: the search sees each once, weighted.
    Map<List<Integer>, Integer> counts = new LinkedHashMap<>();
    all.forEach(each -> counts.merge(merged(each), 1, Integer::sum));
    this.sequences =
        counts.keySet().stream()
            .map(each -> each.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    this.weights = counts.values().stream().mapToInt(Integer::intValue).toArray();
    this.yarns = yarns;
  }

  /** A sequence with repeats that follow each other drawn together: they are worked at once. */
  private static List<Integer> merged(int[] sequence) {
    List<Integer> merged = new ArrayList<>();
    for (int yarn : sequence) {
      if (merged.isEmpty() || merged.get(merged.size() - 1) != yarn) {
        merged.add(yarn);
      }
    }
    return merged;
  }

  /**
   * An order of yarns in which all sequences can be worked.
   *
   * @param all the sequences, yarns from 0 to {@code yarns} - 1
   * @param yarns how many yarns there are
   */
  static List<Integer> order(List<int[]> all, int yarns) {
    return new PickUps(all, yarns).search();
  }

  private List<Integer> search() {
    long left = 0;
    for (int i = 0; i < sequences.length; i++) {
      left += (long) weights[i] * sequences[i].length;
    }
    int width = Math.max(1, Math.min(WIDEST, LOOKS / Math.max(1, sequences.length * yarns)));
    List<Stand> stands = List.of(new Stand(null, -1, new int[sequences.length], left));
    while (stands.get(0).left > 0) {
      stands = next(stands, width);
    }
    List<Integer> order = new ArrayList<>();
    for (Stand stand = stands.get(0); stand.before != null; stand = stand.before) {
      order.add(0, stand.yarn);
    }
    return order;
  }

  private List<Stand> next(List<Stand> stands, int width) {
    List<Step> steps = new ArrayList<>();
    for (Stand stand : stands) {
      long[] ready = ready(stand);
      for (int yarn = 0; yarn < yarns; yarn++) {
        if (ready[yarn] > 0) {
          steps.add(new Step(stand, yarn, stand.left - ready[yarn]));
        }
      }
    }
    // A stable sort: equal ones stay in the order of their stands and yarns.
    steps.sort(Comparator.comparingLong(Step::left));
    Map<Integer, List<Stand>> byHash = new LinkedHashMap<>();
    List<Stand> kept = new ArrayList<>();
    for (Step step : steps) {
      Stand stand = taken(step);
      List<Stand> alike =
          byHash.computeIfAbsent(Arrays.hashCode(stand.done), h -> new ArrayList<>());
      if (alike.stream().noneMatch(other -> Arrays.equals(other.done, stand.done))) {
        alike.add(stand);
        kept.add(stand);
      }
      if (kept.size() == width) {
        break;
      }
    }
    return kept;
  }

  /** By yarn, how many rounds are ready for it. */
  private long[] ready(Stand stand) {
    long[] ready = new long[yarns];
    for (int i = 0; i < sequences.length; i++) {
      if (stand.done[i] < sequences[i].length) {
        ready[sequences[i][stand.done[i]]] += weights[i];
      }
    }
    return ready;
  }

  private Stand taken(Step step) {
    int[] done = step.from.done.clone();
    for (int i = 0; i < done.length; i++) {
      if (done[i] < sequences[i].length && sequences[i][done[i]] == step.yarn) {
        done[i]++;
      }
    }
    return new Stand(step.from, step.yarn, done, step.left);
  }
}
