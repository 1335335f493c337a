package lozengy.solver.constraint;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.PileFits;
import lozengy.model.check.RoundYarns;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * A variable for each place at which a piece of the pile can lie, which says what lies there, tied
 * to each of its rounds by a table: a finished piece shows its yarns, and a piece still to be
 * worked takes what the lines leave it.
 */
final class PileVariables {

  private final Blanket blanket;
  private final RoundYarns worked;
  private final PileFits pile;

  private PileVariables(Blanket blanket, RoundYarns worked, List<BriefLine> lines) {
    this.blanket = blanket;
    this.worked = worked;
    this.pile = new PileFits(blanket, lines);
  }

  /**
   * Posts the variables.
   *
   * @param worked what the lines leave rounds that are still to be worked
   * @param lines the lines of the model
   * @param rounds the rounds' variables by piece
   * @return the variables by piece; null where no piece of the pile can lie
   */
  static IntVar[] post(
      Model model, Blanket blanket, RoundYarns worked, List<BriefLine> lines, IntVar[][] rounds) {
    IntVar[] laid = new IntVar[blanket.pieceCount()];
    if (!blanket.pile().isEmpty()) {
      PileVariables variables = new PileVariables(blanket, worked, lines);
      for (int piece = 0; piece < laid.length; piece++) {
        if (blanket.domains().takesPile(piece)) {
          laid[piece] = variables.post(model, piece, rounds[piece]);
        }
      }
    }
    return laid;
  }

  private IntVar post(Model model, int piece, IntVar[] rounds) {
    int[] fitting = pile.fitting(piece);
    boolean workable =
        IntStream.range(0, rounds.length).allMatch(round -> worked.size(piece, round) > 0);
    IntStream stacks = IntStream.of(fitting).map(stack -> stack + 1);
    int[] values = (workable ? IntStream.concat(IntStream.of(0), stacks) : stacks).toArray();
    if (values.length == 0) {
      model.falseConstraint().post();
      return model.intVar(0);
    }
    IntVar laid = values.length == 1 ? model.intVar(values[0]) : model.intVar(values);
    for (int round = 0; round < rounds.length; round++) {
      Tuples together = new Tuples(true);
      for (int yarn : worked.yarnsOf(piece, round)) {
        together.add(0, yarn);
      }
      for (int stack : fitting) {
        together.add(stack + 1, blanket.pile().stacks().get(stack).yarns()[round]);
      }
      model.table(laid, rounds[round], together).post();
    }
    return laid;
  }
}
