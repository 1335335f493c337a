package lozengy.solver.explain;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.Words;
import lozengy.model.layout.PieceKind;

/** Phrases for pieces of the pile. */
final class TellPile {

  private TellPile() {}

  /** A stack by its count and yarns: {@code 2 squares in SND, REE, MUD}. */
  static String stack(Blanket blanket, int index) {
    Stack stack = blanket.pile().stacks().get(index);
    String yarns =
        String.join(
            ", ", Arrays.stream(stack.yarns()).mapToObj(y -> blanket.yarn(y).code()).toList());
    return count(stack.kind(), stack.count()) + " in " + yarns;
  }

  /** Counts by kind: {@code 62 squares and 8 triangles}. */
  static String counts(Map<PieceKind, Integer> counts) {
    return Words.list(
        new TreeMap<>(counts)
            .entrySet().stream().map(each -> count(each.getKey(), each.getValue())).toList());
  }

  private static String count(PieceKind kind, int count) {
    return count + " " + kind.word() + (count == 1 ? "" : "s");
  }
}
