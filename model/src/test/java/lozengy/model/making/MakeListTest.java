package lozengy.model.making;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MakeListTest {

  private static final int YARNS = 4;

  /** The fewest pick-ups by breadth-first search over all standings. */
  private static int fewest(List<int[]> sequences) {
    Set<List<Integer>> standings = Set.of(sequences.stream().map(each -> 0).toList());
    List<Integer> end = sequences.stream().map(each -> each.length).toList();
    int steps = 0;
    while (!standings.contains(end)) {
      Set<List<Integer>> next = new HashSet<>();
      for (List<Integer> current : standings) {
        for (int yarn = 0; yarn < YARNS; yarn++) {
          next.add(after(sequences, current, yarn));
        }
      }
      standings = next;
      steps++;
    }
    return steps;
  }

  private static List<Integer> after(List<int[]> sequences, List<Integer> current, int yarn) {
    List<Integer> next = new ArrayList<>();
    for (int i = 0; i < sequences.size(); i++) {
      int done = current.get(i);
      while (done < sequences.get(i).length && sequences.get(i)[done] == yarn) {
        done++;
      }
      next.add(done);
    }
    return next;
  }

  @Property(tries = 300, seed = "11")
  void everyPieceCanBeWorkedInTheOrderWithTheFewestPickUpsOnSmallOnes(
      @ForAll @Size(min = 1, max = 4)
          List<@Size(min = 1, max = 4) List<@IntRange(min = 0, max = YARNS - 1) Integer>> lists) {
    List<int[]> sequences =
        lists.stream().map(l -> l.stream().mapToInt(Integer::intValue).toArray()).toList();
    List<Integer> order = PickUps.order(sequences, YARNS);
    List<Integer> current = sequences.stream().map(each -> 0).toList();
    for (int yarn : order) {
      List<Integer> next = after(sequences, current, yarn);
      assertTrue(!next.equals(current), "a yarn is picked up for nothing");
      current = next;
    }
    assertEquals(sequences.stream().map(each -> each.length).toList(), current);
    assertEquals(fewest(sequences), order.size());
  }

  @Test
  void sequencesThatShareAnOrderNeedItOnce() {
    List<int[]> sequences = List.of(new int[] {0, 1, 2}, new int[] {0, 2}, new int[] {1, 2});
    assertEquals(List.of(0, 1, 2), PickUps.order(sequences, YARNS));
  }

  @Test
  void nothingToWorkNeedsNoYarn() {
    assertEquals(List.of(), PickUps.order(List.of(), YARNS));
    assertEquals(List.of(), PickUps.order(Arrays.asList(new int[0], new int[0]), YARNS));
  }
}
