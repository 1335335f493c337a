package lozengy.solver.constraint;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.check.Ground;
import lozengy.model.layout.PieceKind;
import org.chocosolver.solver.variables.IntVar;

/**
 * Every finished piece of a stack lies somewhere. What it asks of each place is part of the model
 * ({@link PileVariables}); how many lie is posted for all stacks together.
 */
final class LayPosting implements KindPosting<Ground.Lay> {

  @Override
  public Class<Ground.Lay> kind() {
    return Ground.Lay.class;
  }

  @Override
  public void post(ConstraintModel model, Ground.Lay lay) {}

  @Override
  public void strengthen(ConstraintModel model, List<Ground.Lay> active) {
    Blanket blanket = model.blanket();
    List<Stack> stacks = blanket.pile().stacks();
    for (PieceKind kind : PieceKind.values()) {
      if (blanket.pile().count(kind) > 0) {
        count(model, kind, stacks, active);
      }
    }
    boolean all = active.size() == stacks.size();
    for (int c = 0; all && c < model.classes().size(); c++) {
      RoundClass rounds = model.classes().get(c);
      boolean border = rounds.round() == blanket.motif(rounds.kind()).rounds().size() - 1;
      // how many pieces of a stack come to lie within a part of the kind is not certain
      if (!stacks.isEmpty() && (border || model.counted(c)) && rounds.wholeKind(blanket)) {
        bound(model, c, rounds);
      }
    }
  }

  /** As many places hold a piece of each stack as the stack has, or at most, where left out. */
  private static void count(
      ConstraintModel model, PieceKind kind, List<Stack> stacks, List<Ground.Lay> active) {
    IntVar[] laid =
        IntStream.range(0, model.blanket().pieceCount())
            .filter(piece -> model.blanket().kind(piece) == kind && model.laid(piece) != null)
            .mapToObj(model::laid)
            .toArray(IntVar[]::new);
    int[] ofKind =
        IntStream.range(0, stacks.size()).filter(s -> stacks.get(s).kind() == kind).toArray();
    int[] values = IntStream.of(ofKind).map(s -> s + 1).toArray();
    IntVar[] counts = new IntVar[ofKind.length];
    for (int i = 0; i < counts.length; i++) {
      Stack stack = stacks.get(ofKind[i]);
      boolean held = active.contains(new Ground.Lay(ofKind[i]));
      counts[i] = model.model().intVar(held ? stack.count() : 0, stack.count());
    }
    if (laid.length > 0) {
      model.model().globalCardinality(laid, values, counts, false).post();
    } else if (!active.isEmpty()) {
      model.model().falseConstraint().post();
    }
  }

  /**
   * What is worked and the pile alone say how often each yarn serves a class at least and at most.
   */
  private static void bound(ConstraintModel model, int index, RoundClass rounds) {
    Blanket blanket = model.blanket();
    int[] certain = new int[blanket.yarnCount()];
    int open = 0;
    for (int piece : rounds.pieces()) {
      if (blanket.worked(piece, rounds.round())) {
        certain[blanket.locked(piece, rounds.round())]++;
      } else {
        open++;
      }
    }
    for (Stack stack : blanket.pile().stacks()) {
      if (stack.kind() == rounds.kind()) {
        certain[stack.yarns()[rounds.round()]] += stack.count();
        open -= stack.count();
      }
    }
    IntVar[] counts = model.counts(index);
    for (int yarn = 0; yarn < certain.length; yarn++) {
      if (counts[yarn] != null) {
        model.model().arithm(counts[yarn], ">=", certain[yarn]).post();
        model.model().arithm(counts[yarn], "<=", certain[yarn] + Math.max(0, open)).post();
      } else if (certain[yarn] > 0) {
        model.model().falseConstraint().post();
      }
    }
  }
}
