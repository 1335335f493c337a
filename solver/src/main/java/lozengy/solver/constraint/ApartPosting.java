package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Pairs;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/** Yarns that are kept apart meet on no seam: one line for each pair, a table for each seam. */
final class ApartPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.APART;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<Look.Pair> pairs = blanket.brief().look().apart();
    for (int i = 0; i < pairs.size(); i++) {
      Look.Pair pair = pairs.get(i);
      Subject subject = new Subject.Apart(pair.first(), pair.second());
      int first = blanket.yarnIndex(pair.first());
      int second = blanket.yarnIndex(pair.second());
      lines.add(
          new BriefLine(
              rule(), BriefPath.of("look", "apart").item(i), subject, new Apart(first, second)));
    }
    return lines;
  }

  private record Apart(int first, int second) implements BriefLine.Content {
    @Override
    public void post(ConstraintModel constraints) {
      Blanket blanket = constraints.blanket();
      Pairs seams = blanket.layout().seams();
      IntVar[] borders = constraints.borders();
      Tuples meeting = new Tuples(false);
      meeting.add(first, second);
      meeting.add(second, first);
      for (int i = 0; i < seams.size(); i++) {
        int one = seams.first()[i];
        int other = seams.second()[i];
        boolean joined =
            blanket.state(one) == PieceState.JOINED && blanket.state(other) == PieceState.JOINED;
        if (!joined) {
          constraints.model().table(borders[one], borders[other], meeting).post();
        }
      }
    }
  }
}
