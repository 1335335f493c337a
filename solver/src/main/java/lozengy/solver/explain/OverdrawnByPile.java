package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;

/** Yarns of which finished pieces, with joining and edging, take more than there is. */
final class OverdrawnByPile implements Argument {

  @Override
  public List<Finding> findings(Asked asked) {
    Blanket blanket = asked.blanket();
    if (asked.stacks().isEmpty()) {
      return List.of();
    }
    long[] onPile = onPile(asked);
    long[] placed = placed(asked);
    List<Finding> findings = new ArrayList<>();
    for (int yarn = 0; yarn < onPile.length; yarn++) {
      long left = asked.loads().get(yarn).capacity();
      if (onPile[yarn] > 0 && asked.bounded(yarn) && onPile[yarn] + placed[yarn] > left) {
        BitSet yarns = new BitSet();
        yarns.set(yarn);
        String words = words(blanket, yarn, onPile[yarn], placed[yarn]);
        findings.add(Finding.of(words, List.of(), RuleId.PILE, RuleId.LOCKS).withYarns(yarns));
      }
    }
    return findings;
  }

  private static long[] onPile(Asked asked) {
    long[] onPile = new long[asked.blanket().yarnCount()];
    for (Stack stack : asked.stacks()) {
      for (int round = 0; round < stack.yarns().length; round++) {
        int yarn = stack.yarns()[round];
        onPile[yarn] += asked.blanket().needMillimetres(stack.kind(), round, yarn) * stack.count();
      }
    }
    return onPile;
  }

  /** What finished pieces take that have their place. */
  private static long[] placed(Asked asked) {
    Blanket blanket = asked.blanket();
    RoundYarns held = asked.held();
    long[] placed = new long[blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = held.only(piece, round);
        if (blanket.state(piece) != PieceState.PLANNED && yarn >= 0) {
          placed[yarn] += blanket.needMillimetres(blanket.kind(piece), round, yarn);
        }
      }
    }
    return placed;
  }

  private static String words(Blanket blanket, int yarn, long onPile, long placed) {
    long fixed = blanket.fixedUseMillimetres(yarn);
    long usable = blanket.usableMillimetres(yarn);
    List<String> uses = new ArrayList<>();
    uses.add("the pile's pieces hold " + Words.metres(onPile));
    if (placed > 0) {
      uses.add("other finished pieces hold " + Words.metres(placed));
    }
    if (fixed > 0) {
      uses.add(Tell.fixedUse(blanket, yarn) + " " + Words.metres(fixed));
    }
    String told =
        "%s: %s; %s are there, what finished pieces hold included: %s short, unless they were"
            + " counted since (counted in a brief, mark --left in an arrangement)";
    return told.formatted(
        Words.yarn(blanket, yarn),
        Words.list(uses),
        Words.metres(usable),
        Words.metres(onPile + placed + fixed - usable));
  }
}
