package lozengy.solver.constraint;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.solver.constraint.YarnLoad.Term;

/**
 * Each yarn's even part of each class of rounds, in rounds and parts of rounds: the table is scaled
 * by turns so that every class is dealt out and no yarn takes more than its part of the stock
 * (iterative proportional fitting, Deming and Stephan 1940). Only a guide for the search.
 */
final class EvenParts {

  private static final int TURNS = 100;

  private EvenParts() {}

  /** Parts by class of rounds and yarn. */
  static double[][] of(Blanket blanket, List<YarnLoad> loads) {
    List<RoundClass> classes = RoundClass.of(blanket);
    double[][] parts = new double[classes.size()][loads.size()];
    for (YarnLoad load : loads) {
      for (Term term : load.terms()) {
        parts[term.index()][load.yarn()] = term.possible();
      }
    }
    for (int turn = 0; turn < TURNS; turn++) {
      for (YarnLoad load : loads) {
        double use = 0;
        for (Term term : load.terms()) {
          use += term.length() * parts[term.index()][load.yarn()];
        }
        double scale = use == 0 ? 1 : Math.max(0, load.capacity()) / use;
        for (Term term : load.terms()) {
          parts[term.index()][load.yarn()] *= scale;
        }
      }
      for (int c = 0; c < parts.length; c++) {
        deal(parts[c], classes.get(c).pieces().length);
      }
    }
    return parts;
  }

  private static void deal(double[] parts, int rounds) {
    double sum = 0;
    for (double part : parts) {
      sum += part;
    }
    for (int yarn = 0; yarn < parts.length && sum > 0; yarn++) {
      parts[yarn] *= rounds / sum;
    }
  }
}
