package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;

/** Yarns of which finished pieces, with joining and edging, take more than there is. */
final class OverdrawnByPile implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    if (asked.stacks().isEmpty()) {
      return List.of();
    }
    long[] onPile = onPile(asked);
    long[] placed = placed(asked);
    List<Finding> findings = new ArrayList<>();
    for (int yarn = 0; yarn < onPile.length; yarn++) {
      long left = asked.loads().get(yarn).capacity();
      if (onPile[yarn] > 0 && onPile[yarn] + placed[yarn] > left) {
        BitSet yarns = new BitSet();
        yarns.set(yarn);
        Reason reason =
            new PileReason.PileOverdrawn(
                yarn,
                onPile[yarn],
                blanket.fixedUse().pileBeyondMillimetres(yarn),
                placed[yarn],
                blanket.fixedUseMillimetres(yarn) + blanket.fixedUse().pileBeyondMillimetres(yarn),
                blanket.usableMillimetres(yarn));
        findings.add(Finding.of(reason, List.of(), RuleId.PILE, RuleId.LOCKS).withYarns(yarns));
      }
    }
    return findings;
  }

  private static long[] onPile(Requirements asked) {
    long[] onPile = new long[asked.blanket().yarnCount()];
    for (Stack stack : asked.stacks()) {
      for (int round = 0; round < stack.yarns().length; round++) {
        int yarn = stack.yarns()[round];
        onPile[yarn] += asked.blanket().needMillimetres(stack.kind(), round, yarn) * stack.count();
      }
    }
    return onPile;
  }

  /** What worked rounds take that have their place. */
  private static long[] placed(Requirements asked) {
    Blanket blanket = asked.blanket();
    RoundYarns held = asked.held();
    long[] placed = new long[blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = held.only(piece, round);
        if (blanket.worked(piece, round) && yarn >= 0) {
          placed[yarn] += blanket.takenMillimetres(piece, round, yarn);
        }
      }
    }
    return placed;
  }
}
