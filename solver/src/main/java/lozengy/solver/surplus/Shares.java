package lozengy.solver.surplus;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.score.Targets;

/**
 * How far the pieces that are laid go beyond what borders leave room for, and beyond the yarns'
 * shares: rounds above the share of their yarn in their layer, and pieces above the room of their
 * borders, which weigh more than all rounds.
 */
final class Shares {

  private final List<Stack> stacks;
  private final BorderRoom borders;
  private final int[][] above;
  private final int[] laidOf;
  private final long pieceWeight;

  Shares(Blanket blanket, BorderRoom borders, int[] out) {
    this.stacks = blanket.pile().stacks();
    this.borders = borders;
    this.laidOf = new int[borders.groups()];
    this.above = new int[blanket.layerCount()][blanket.yarnCount()];
    int[][] targets = Targets.of(blanket).counts();
    for (int layer = 0; layer < above.length; layer++) {
      for (int yarn = 0; yarn < above[layer].length; yarn++) {
        above[layer][yarn] = -targets[layer][yarn];
      }
    }
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundsWorked(piece); round++) {
        above[blanket.roundCount(piece) - 1 - round][blanket.locked(piece, round)]++;
      }
    }
    this.pieceWeight = 1 + blanket.layerCount();
    for (int stack = 0; stack < out.length; stack++) {
      leaveOut(stack, out[stack] - stacks.get(stack).count());
    }
  }

  /** Leaves pieces of a stack out; below 0, lays them. */
  void leaveOut(int stack, int pieces) {
    int[] yarns = stacks.get(stack).yarns();
    for (int round = 0; round < yarns.length; round++) {
      above[yarns.length - 1 - round][yarns[round]] -= pieces;
    }
    laidOf[borders.group(stack)] -= pieces;
  }

  /** By how much one piece of a stack left out (1) or laid (-1) changes the excess. */
  long change(int stack, int step) {
    int[] yarns = stacks.get(stack).yarns();
    long change = 0;
    for (int round = 0; round < yarns.length; round++) {
      int now = above[yarns.length - 1 - round][yarns[round]];
      change += Math.max(0, now - step) - Math.max(0, now);
    }
    int group = borders.group(stack);
    int beyond = laidOf[group] - borders.mostOf(group);
    return change + pieceWeight * (Math.max(0, beyond - step) - Math.max(0, beyond));
  }
}
