package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import lozengy.solver.constraint.Domains;

/** Yarns of which finished pieces, with joining and edging, take more than there is. */
final class OverdrawnByPile implements WholeArgument {

  @Override
  public Set<RuleId> rules() {
    return EnumSet.of(RuleId.PILE, RuleId.YARN_TOTALS);
  }

  @Override
  public List<String> reasons(Blanket blanket, Domains direct) {
    if (blanket.pile().isEmpty()) {
      return List.of();
    }
    long[] onPile = new long[blanket.yarnCount()];
    for (Stack stack : blanket.pile().stacks()) {
      for (int round = 0; round < stack.yarns().length; round++) {
        int yarn = stack.yarns()[round];
        onPile[yarn] += blanket.needMillimetres(stack.kind(), round, yarn) * stack.count();
      }
    }
    long[] elsewhere = new long[onPile.length];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.state(piece) != PieceState.PLANNED) {
          int yarn = blanket.locked(piece, round);
          elsewhere[yarn] += blanket.needMillimetres(blanket.kind(piece), round, yarn);
        }
      }
    }
    List<String> reasons = new ArrayList<>();
    for (int yarn = 0; yarn < onPile.length; yarn++) {
      long used = onPile[yarn] + elsewhere[yarn] + blanket.fixedUseMillimetres(yarn);
      long usable = blanket.usableMillimetres(yarn);
      if (onPile[yarn] > 0 && used > usable) {
        reasons.add(
            "%s: %s are in the pile's pieces, with what else is worked, joining and edging %s;"
                    .formatted(
                        Words.yarn(blanket, yarn), Words.metres(onPile[yarn]), Words.metres(used))
                + " %s are there to use: %s short"
                    .formatted(Words.metres(usable), Words.metres(used - usable)));
      }
    }
    return reasons;
  }
}
