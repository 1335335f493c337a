package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import lozengy.model.brief.Round;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** How many pieces share each sequence, held against lists in a map. */
class SequenceCountsTest {

  private static final int YARNS = 3;

  /** 8 squares and 5 triangles of so few yarns that many are alike, of unlike lengths. */
  private static final Problem PROBLEM = problem();

  private static Problem problem() {
    BlanketBuilder builder = BlanketBuilder.filled(2, 2);
    for (PieceKind kind : PieceKind.values()) {
      boolean square = kind == PieceKind.SQUARE;
      builder.motif(
          kind,
          square
              ? new Round[] {
                BlanketBuilder.round(900), BlanketBuilder.round(1000), BlanketBuilder.round(1100)
              }
              : new Round[] {BlanketBuilder.round(900), BlanketBuilder.round(1000)});
    }
    builder.yarns(YARNS, Tone.DARK, 100_000).copies(2);
    return ProblemCompiler.compile(builder.build(), Optional.empty());
  }

  private final int[] yarn = new int[PROBLEM.slots().count()];
  private final SplittableRandom random = new SplittableRandom(1);

  /** So many changes that the table is rebuilt often. */
  @Test
  void countsAreThoseOfTheLists() {
    SequenceCounts counts = counts();
    for (int turn = 0; turn < 600; turn++) {
      change(counts, random.nextInt(PROBLEM.slots().orbits()));
      if (turn % 4 == 0) {
        assertCounts(counts, "turn " + turn);
      }
    }
    SequenceCounts again = new SequenceCounts(PROBLEM.slots(), YARNS, PROBLEM.copies());
    again.reset(PROBLEM.slots(), yarn);
    assertCounts(again, "again");
    counts.reset(PROBLEM.slots(), yarn);
    assertCounts(counts, "afresh");
  }

  @Test
  void partsCountByThemselvesUntilTheWholeTakesThemOver() {
    SequenceCounts whole = counts();
    int half = PROBLEM.slots().orbits() / 2;
    for (int turn = 0; turn < 30; turn++) {
      Map<List<Integer>, Integer> before = lists();
      SequenceCounts one = new SequenceCounts(whole, half);
      SequenceCounts other = new SequenceCounts(whole, PROBLEM.slots().orbits() - half);
      int[] was = yarn.clone();
      int distinct = whole.distinct();
      for (int move = 0; move < 20; move++) {
        change(one, random.nextInt(half));
        assertCounts(one, "part, turn " + turn);
      }
      // the other knows nothing of what the one has changed
      int[] now = yarn.clone();
      System.arraycopy(was, 0, yarn, 0, was.length);
      assertEquals(before, lists());
      for (int move = 0; move < 20; move++) {
        change(other, half + random.nextInt(PROBLEM.slots().orbits() - half));
        // where the one's pieces have come to is not for the other to know
        assertCounts(other, half, "other, turn " + turn);
      }
      int start = PROBLEM.slots().orbitStart()[half];
      System.arraycopy(now, 0, yarn, 0, start);
      assertEquals(distinct, whole.distinct());
      whole.settle(one);
      whole.settle(other);
      assertCounts(whole, "settled, turn " + turn);
    }
  }

  private SequenceCounts counts() {
    Arrays.setAll(yarn, slot -> random.nextInt(YARNS));
    SequenceCounts counts = new SequenceCounts(PROBLEM.slots(), YARNS, PROBLEM.copies());
    counts.reset(PROBLEM.slots(), yarn);
    assertCounts(counts, "at first");
    return counts;
  }

  private void change(SequenceCounts counts, int orbit) {
    int round = random.nextInt(PROBLEM.slots().rounds(orbit));
    int slot = PROBLEM.slots().orbitStart()[orbit] + round;
    int to = random.nextInt(YARNS);
    long code = counts.code(orbit) + counts.change(round, yarn[slot], to);
    int shared = lists().getOrDefault(list(orbit, round, to), 0);
    assertEquals(shared, counts.count(code), "before the move");
    counts.move(orbit, code);
    assertEquals(code, counts.code(orbit));
    yarn[slot] = to;
  }

  private List<Integer> list(int orbit, int round, int to) {
    int[] sequence =
        Arrays.copyOfRange(
            yarn, PROBLEM.slots().orbitStart()[orbit], PROBLEM.slots().orbitStart()[orbit + 1]);
    sequence[round] = to;
    return Arrays.stream(sequence).boxed().toList();
  }

  private Map<List<Integer>, Integer> lists() {
    Map<List<Integer>, Integer> lists = new HashMap<>();
    for (int orbit = 0; orbit < PROBLEM.slots().orbits(); orbit++) {
      lists.merge(list(orbit, 0, yarn[PROBLEM.slots().orbitStart()[orbit]]), 1, Integer::sum);
    }
    return lists;
  }

  private void assertCounts(SequenceCounts counts, String where) {
    assertCounts(counts, 0, where);
  }

  private void assertCounts(SequenceCounts counts, int first, String where) {
    Map<List<Integer>, Integer> lists = lists();
    assertEquals(lists.size(), counts.distinct(), where);
    int surplus = lists.values().stream().mapToInt(n -> Math.max(0, n - PROBLEM.copies())).sum();
    assertEquals(surplus, counts.surplus(), where);
    for (int orbit = first; orbit < PROBLEM.slots().orbits(); orbit++) {
      int shared = lists.get(list(orbit, 0, yarn[PROBLEM.slots().orbitStart()[orbit]]));
      assertEquals(shared, counts.countOf(orbit), where + ", piece " + orbit);
    }
    assertTrue(counts.distinct() > 3, where);
  }
}
