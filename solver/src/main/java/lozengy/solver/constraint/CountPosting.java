package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.check.Ground;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** How many pieces show a yarn: a variable for each piece, and their sum. */
final class CountPosting implements KindPosting<Ground.Count> {

  @Override
  public Class<Ground.Count> kind() {
    return Ground.Count.class;
  }

  @Override
  public void post(ConstraintModel constraints, Ground.Count count) {
    Model model = constraints.model();
    BoolVar[] shows =
        Arrays.stream(count.rounds())
            .map(rounds -> shows(constraints, rounds, count.yarn()))
            .toArray(BoolVar[]::new);
    if (count.least() > 0) {
      model.sum(shows, ">=", count.least()).post();
      postByClass(constraints, count, ">=", count.least());
    }
    if (count.most() < shows.length) {
      model.sum(shows, "<=", count.most()).post();
      postByClass(constraints, count, "<=", count.most());
    }
  }

  private static BoolVar shows(ConstraintModel constraints, int[] rounds, int yarn) {
    Model model = constraints.model();
    BoolVar[] each =
        IntStream.of(rounds)
            .mapToObj(number -> model.arithm(constraints.round(number), "=", yarn).reify())
            .toArray(BoolVar[]::new);
    if (each.length == 1) {
      return each[0];
    }
    BoolVar any = model.boolVar();
    model.addClausesBoolOrArrayEqVar(each, any);
    return any;
  }

  /**
   * Where the count speaks of one round of all pieces of their kinds, the same on how often the
   * classes take the yarn, which stock and seams bound too.
   */
  private static void postByClass(
      ConstraintModel constraints, Ground.Count count, String sign, int pieces) {
    RoundIndex index = constraints.blanket().index();
    List<IntVar> counts = new ArrayList<>();
    int counted = 0;
    for (int c = 0; c < constraints.classes().size(); c++) {
      RoundClass of = constraints.classes().get(c);
      long here =
          Arrays.stream(count.rounds())
              .flatMapToInt(IntStream::of)
              .filter(number -> index.round(number) == of.round())
              .filter(number -> Arrays.binarySearch(of.pieces(), index.piece(number)) >= 0)
              .count();
      if (here > 0) {
        if (here < of.pieces().length) {
          return;
        }
        counted += of.pieces().length;
        IntVar ofYarn = constraints.counts(c)[count.yarn()];
        if (ofYarn != null) {
          counts.add(ofYarn);
        }
      }
    }
    // a piece with two such rounds may show the yarn in both
    if (counts.isEmpty() || counted > count.rounds().length && sign.equals("<=")) {
      return;
    }
    constraints.model().sum(counts.toArray(IntVar[]::new), sign, pieces).post();
  }
}
