package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;

/**
 * Yarns of which finished pieces, with joining and edging, take more than there is; of seams in the
 * borders' yarns at least what the place takes that has the fewest.
 */
final class OverdrawnByPile implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    if (asked.stacks().isEmpty()) {
      return List.of();
    }
    long[] onPile = onPile(asked);
    long[] seams = seams(asked);
    long[] placed = placed(asked);
    List<Finding> findings = new ArrayList<>();
    for (int yarn = 0; yarn < onPile.length; yarn++) {
      long left = asked.loads().get(yarn).capacity();
      if (onPile[yarn] > 0 && onPile[yarn] + seams[yarn] + placed[yarn] > left) {
        BitSet yarns = new BitSet();
        yarns.set(yarn);
        Reason reason =
            new PileReason.PileOverdrawn(
                yarn,
                onPile[yarn],
                blanket.fixedUse().pileBeyondMillimetres(yarn),
                seams[yarn],
                placed[yarn],
                blanket.fixedUse().millimetres(yarn)
                    + blanket.fixedUse().pileBeyondMillimetres(yarn),
                blanket.yarns().usableMillimetres(yarn));
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
        onPile[yarn] +=
            asked.blanket().motifs().needMillimetres(stack.kind(), round, yarn) * stack.count();
      }
    }
    return onPile;
  }

  private static long[] seams(Requirements asked) {
    Blanket blanket = asked.blanket();
    long[] seams = new long[blanket.yarnCount()];
    for (Stack stack : asked.stacks()) {
      int border = stack.yarns().length - 1;
      int yarn = stack.border();
      long fewest =
          IntStream.range(0, blanket.pieceCount())
              .filter(piece -> blanket.kind(piece) == stack.kind() && !blanket.worked(piece, 0))
              .mapToLong(piece -> asked.takenMillimetres(piece, border, yarn))
              .min()
              .orElse(0);
      long own = blanket.motifs().needMillimetres(stack.kind(), border, yarn);
      seams[yarn] += Math.max(0, fewest - own) * stack.count();
    }
    return seams;
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
          placed[yarn] += asked.takenMillimetres(piece, round, yarn);
        }
      }
    }
    return placed;
  }
}
