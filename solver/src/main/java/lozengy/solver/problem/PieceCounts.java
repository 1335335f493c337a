package lozengy.solver.problem;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;

/**
 * How many pieces are to show a yarn, as the look asks, frozen to ints. Immutable by convention.
 *
 * @param ofYarn by yarn, the numbers of the counts that ask for it
 * @param covers by count and slot, whether the count looks at the slot
 * @param weight by count and piece, how many of the blanket's pieces it counts there
 * @param atLeast by count, the least number of pieces
 * @param atMost by count, the largest number of pieces
 */
public record PieceCounts(
    int[][] ofYarn, boolean[][] covers, int[][] weight, int[] atLeast, int[] atMost) {

  /** The counts of a blanket's look, or null where it has none. */
  static PieceCounts of(Blanket blanket, Slots slots) {
    List<ReadyCount> counts = ReadyCount.of(blanket);
    if (counts.isEmpty()) {
      return null;
    }
    boolean[][] covers = new boolean[counts.size()][slots.count()];
    int[][] weight = new int[counts.size()][slots.orbits()];
    for (int i = 0; i < weight.length; i++) {
      ReadyCount count = counts.get(i);
      boolean[] counted = new boolean[blanket.pieceCount()];
      for (int piece : count.pieces()) {
        counted[piece] = true;
      }
      for (int piece = 0; piece < slots.orbits(); piece++) {
        for (int member : slots.members()[piece]) {
          weight[i][piece] += counted[member] ? 1 : 0;
        }
        int start = slots.orbitStart()[piece];
        for (int round = 0; weight[i][piece] > 0 && round < slots.rounds(piece); round++) {
          covers[i][start + round] = count.covers(round, slots.rounds(piece));
        }
      }
    }
    int[][] ofYarn = new int[blanket.yarnCount()][];
    for (int yarn = 0; yarn < ofYarn.length; yarn++) {
      int wanted = yarn;
      ofYarn[yarn] =
          IntStream.range(0, weight.length).filter(i -> counts.get(i).yarn() == wanted).toArray();
    }
    return new PieceCounts(
        ofYarn,
        covers,
        weight,
        counts.stream().mapToInt(ReadyCount::atLeast).toArray(),
        counts.stream().mapToInt(ReadyCount::atMost).toArray());
  }

  /** {@return how many counts} */
  public int size() {
    return atLeast.length;
  }

  /**
   * How many pieces too many or too few a number is.
   *
   * @param count number of the count
   * @param pieces how many pieces show its yarn
   * @return 0 where it holds
   */
  public int off(int count, int pieces) {
    return Math.max(0, atLeast[count] - pieces) + Math.max(0, pieces - atMost[count]);
  }
}
