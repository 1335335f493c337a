package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;

/** Whether a plan can be mended with few changes, by the constraint model. */
public final class FewChanges {

  private FewChanges() {}

  /**
   * Looks for a valid arrangement that keeps most of a plan.
   *
   * @param blanket a blanket small enough for the model
   * @param before the plan; rounds may be open
   * @param most how many of the rounds that are free to change and had a yarn may have another, 0
   *     or more
   * @param seed breaks ties
   * @param limits when to stop
   * @return an arrangement, which is valid where the model is exact; that there is none, which is
   *     proved; or that neither was settled
   */
  public static Start.Outcome find(
      Blanket blanket, Sequences before, int most, long seed, Limits limits) {
    ConstraintModel stated = ConstraintModel.of(blanket);
    Model model = stated.model();
    List<BoolVar> kept = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int yarn = before.yarn(piece, round);
        if (yarn != Sequences.OPEN && blanket.free(piece, round)) {
          kept.add(model.isEq(stated.rounds(piece)[round], yarn));
        }
      }
    }
    model.sum(kept.toArray(BoolVar[]::new), ">=", kept.size() - most).post();
    return Start.find(stated, seed, limits);
  }
}
