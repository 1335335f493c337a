package lozengy.solver.explain.miss;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.Sequences;

/** How far a plan that leaves rounds open has come with the look's counts. */
final class PartialCounts {

  private final Blanket blanket;
  private final List<ReadyCount> counts;
  private final boolean[][] speaks;
  private final int[][] shown;
  private final int[][] open;
  private final int[] showing;
  private final int[] reachable;

  /** Starts with all rounds open. */
  PartialCounts(Blanket blanket) {
    this.blanket = blanket;
    this.counts = ReadyCount.of(blanket);
    this.speaks = new boolean[counts.size()][blanket.pieceCount()];
    this.shown = new int[counts.size()][blanket.pieceCount()];
    this.open = new int[counts.size()][blanket.pieceCount()];
    this.showing = new int[counts.size()];
    this.reachable = new int[counts.size()];
    for (int i = 0; i < counts.size(); i++) {
      for (int piece : counts.get(i).pieces()) {
        speaks[i][piece] = true;
        reachable[i]++;
        for (int round = 0; round < blanket.roundCount(piece); round++) {
          open[i][piece] += covers(i, piece, round) ? 1 : 0;
        }
      }
    }
  }

  private boolean covers(int count, int piece, int round) {
    return speaks[count][piece] && counts.get(count).covers(round, blanket.roundCount(piece));
  }

  /** Notes that a round has another yarn, or none. */
  void set(int piece, int round, int before, int now) {
    for (int i = 0; i < counts.size(); i++) {
      if (covers(i, piece, round)) {
        int yarn = counts.get(i).yarn();
        add(i, piece, -1);
        shown[i][piece] += (now == yarn ? 1 : 0) - (before == yarn ? 1 : 0);
        open[i][piece] += (now == Sequences.OPEN ? 1 : 0) - (before == Sequences.OPEN ? 1 : 0);
        add(i, piece, 1);
      }
    }
  }

  private void add(int count, int piece, int by) {
    showing[count] += shown[count][piece] > 0 ? by : 0;
    reachable[count] += shown[count][piece] + open[count][piece] > 0 ? by : 0;
  }

  /** Whether a count is against giving an open round a yarn. */
  boolean bar(int piece, int round, int yarn) {
    for (int i = 0; i < counts.size(); i++) {
      if (covers(i, piece, round) && shown[i][piece] == 0) {
        boolean shows = yarn == counts.get(i).yarn();
        boolean over = shows && showing[i] >= counts.get(i).atMost();
        boolean lost = !shows && open[i][piece] == 1 && reachable[i] <= counts.get(i).atLeast();
        if (over || lost) {
          return true;
        }
      }
    }
    return false;
  }
}
