package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Pairs;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * Borders on a seam differ, unless both pieces are joined already or have the border that the look
 * gives all. A seam graph is bipartite and has no cliques beyond a pair, so the rule is stated seam
 * by seam: as an inequality, and where a contrast is asked for, as a table of the pairs that reach
 * it.
 */
final class NeighbourBordersPosting implements RulePosting {

  private static final BriefPath MIN_CONTRAST = BriefPath.of("rules", "min-contrast");

  @Override
  public RuleId rule() {
    return RuleId.NEIGHBOUR_BORDERS;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    if (blanket.layout().seams().size() > 0) {
      lines.add(
          new BriefLine(
              rule(),
              BriefPath.of("rules", "neighbour-borders"),
              new Subject.BordersDiffer(),
              new BriefLine.Content() {
                @Override
                public void post(ConstraintModel constraints) {
                  postDiffer(constraints.model(), constraints.borders(), open(blanket));
                }
              }));
      double contrast = blanket.brief().rules().minContrast();
      if (contrast > 0) {
        lines.add(
            new BriefLine(
                rule(),
                MIN_CONTRAST,
                new Subject.Contrast(contrast),
                new BriefLine.Content() {
                  @Override
                  public void post(ConstraintModel constraints) {
                    Tuples apart = apart(blanket);
                    postApart(constraints.model(), constraints.borders(), open(blanket), apart);
                  }
                }));
      }
    }
    return lines;
  }

  @Override
  public void strengthen(ConstraintModel model, List<BriefLine> active) {
    if (!active.isEmpty()) {
      boolean contrast = active.stream().anyMatch(line -> line.path().equals(MIN_CONTRAST));
      BorderLimits.post(model, open(model.blanket()), contrast);
    }
  }

  private static Tuples apart(Blanket blanket) {
    Tuples apart = new Tuples(true);
    for (int a = 0; a < blanket.yarnCount(); a++) {
      for (int b = 0; b < blanket.yarnCount(); b++) {
        if (!blanket.sameBorder(a, b)) {
          apart.add(a, b);
        }
      }
    }
    return apart;
  }

  /** The seams that the rule speaks of. */
  static Pairs open(Blanket blanket) {
    Pairs seams = blanket.layout().seams();
    int[] kept =
        IntStream.range(0, seams.size())
            .filter(i -> !blanket.bordersMayMatch(seams.first()[i], seams.second()[i]))
            .toArray();
    return new Pairs(
        IntStream.of(kept).map(i -> seams.first()[i]).toArray(),
        IntStream.of(kept).map(i -> seams.second()[i]).toArray());
  }

  /** Posts that the variables of each pair differ; the graph of the pairs may be any. */
  static void postDiffer(Model model, IntVar[] borders, Pairs pairs) {
    for (int i = 0; i < pairs.size(); i++) {
      model.arithm(borders[pairs.first()[i]], "!=", borders[pairs.second()[i]]).post();
    }
  }

  /** Posts that each pair takes one of the given pairs of values. */
  static void postApart(Model model, IntVar[] borders, Pairs pairs, Tuples apart) {
    for (int i = 0; i < pairs.size(); i++) {
      IntVar first = borders[pairs.first()[i]];
      IntVar second = borders[pairs.second()[i]];
      if (apart.nbTuples() == 0) {
        model.falseConstraint().post();
      } else {
        model.table(first, second, apart).post();
      }
    }
  }
}
