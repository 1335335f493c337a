package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** As many pieces show a yarn as the look asks for: a line for each least and largest number. */
final class CountsPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.COUNTS;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (ReadyCount count : ReadyCount.of(blanket)) {
      if (count.asksAtLeast()) {
        lines.add(
            new BriefLine(
                rule(),
                count.atLeastPath(),
                new Subject.Count(count.asked(), true),
                new Limit(blanket, count, ">=", count.atLeast())));
      }
      if (count.asksAtMost()) {
        lines.add(
            new BriefLine(
                rule(),
                count.atMostPath(),
                new Subject.Count(count.asked(), false),
                new Limit(blanket, count, "<=", count.atMost())));
      }
    }
    return lines;
  }

  private record Limit(Blanket blanket, ReadyCount count, String sign, int pieces)
      implements BriefLine.Content {

    /** None at all is a ban. */
    @Override
    public void restrict(Domains domains) {
      for (int piece : pieces == 0 && sign.equals("<=") ? count.pieces() : new int[0]) {
        int rounds = domains.rounds(piece);
        for (int round = 0; round < rounds; round++) {
          if (blanket.state(piece) == PieceState.PLANNED && count.covers(round, rounds)) {
            domains.remove(piece, round, count.yarn());
          }
        }
      }
    }

    @Override
    public void post(ConstraintModel constraints) {
      Model model = constraints.model();
      List<BoolVar> shows = new ArrayList<>();
      for (int piece : count.pieces()) {
        IntVar[] rounds = constraints.rounds(piece);
        BoolVar[] here =
            IntStream.range(0, rounds.length)
                .filter(round -> count.covers(round, rounds.length))
                .mapToObj(round -> model.arithm(rounds[round], "=", count.yarn()).reify())
                .toArray(BoolVar[]::new);
        BoolVar any = here[0];
        if (here.length > 1) {
          any = model.boolVar();
          model.addClausesBoolOrArrayEqVar(here, any);
        }
        shows.add(any);
      }
      model.sum(shows.toArray(BoolVar[]::new), sign, pieces).post();
      postByClass(constraints);
    }

    /**
     * Where the count speaks of one round of all pieces of their kinds, the same on how often the
     * classes take the yarn, which stock and seams bound too.
     */
    private void postByClass(ConstraintModel constraints) {
      List<IntVar> counts = new ArrayList<>();
      int counted = 0;
      for (int index = 0; index < constraints.classes().size(); index++) {
        RoundClass rounds = constraints.classes().get(index);
        int roundCount = blanket.motif(rounds.kind()).rounds().size();
        long here =
            IntStream.of(count.pieces()).filter(p -> blanket.kind(p) == rounds.kind()).count();
        if (here > 0 && count.covers(rounds.round(), roundCount)) {
          if (here < rounds.pieces().length) {
            return;
          }
          counted += rounds.pieces().length;
          IntVar ofYarn = constraints.counts(index)[count.yarn()];
          if (ofYarn != null) {
            counts.add(ofYarn);
          }
        }
      }
      // a piece with two such rounds may show the yarn in both
      if (counts.isEmpty() || counted > count.pieces().length && sign.equals("<=")) {
        return;
      }
      constraints.model().sum(counts.toArray(IntVar[]::new), sign, pieces).post();
    }
  }
}
