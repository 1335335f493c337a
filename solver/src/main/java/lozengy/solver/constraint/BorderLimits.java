package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Pairs;
import org.chocosolver.solver.variables.IntVar;

/**
 * How often a yarn can be a border at all: the pieces that show it are no two on a seam, so they
 * are at most a largest independent set of the seam graph. The same for yarns that look alike to
 * each other, together. Posted only where the rounds are counted anyway, because yarn is short.
 */
final class BorderLimits {

  private final ConstraintModel model;
  private final Pairs seams;
  private final List<Integer> borderClasses = new ArrayList<>();
  private final Map<List<Integer>, Long> most = new HashMap<>();

  private BorderLimits(ConstraintModel model, Pairs seams) {
    this.model = model;
    this.seams = seams;
    for (int c = 0; c < model.classes().size(); c++) {
      RoundClass rounds = model.classes().get(c);
      if (rounds.round() == model.blanket().motif(rounds.kind()).rounds().size() - 1) {
        borderClasses.add(c);
      }
    }
  }

  /**
   * Posts the limits.
   *
   * @param model the model, all lines posted
   * @param seams the seams on which borders must differ
   * @param contrast whether borders that look alike count as the same
   */
  static void post(ConstraintModel model, Pairs seams, boolean contrast) {
    BorderLimits limits = new BorderLimits(model, seams);
    if (!limits.borderClasses.stream().allMatch(model::counted)) {
      return;
    }
    for (int yarn = 0; yarn < model.blanket().yarnCount(); yarn++) {
      limits.post(List.of(yarn));
      List<Integer> alike = contrast ? alike(model.blanket(), yarn) : List.of(yarn);
      if (alike.size() > 1) {
        limits.post(alike);
      }
    }
  }

  /** A yarn and others that all look alike to each other. */
  static List<Integer> alike(Blanket blanket, int yarn) {
    List<Integer> alike = new ArrayList<>(List.of(yarn));
    for (int other = 0; other < blanket.yarnCount(); other++) {
      int candidate = other;
      if (other != yarn && alike.stream().allMatch(y -> blanket.sameBorder(y, candidate))) {
        alike.add(other);
      }
    }
    return alike;
  }

  private void post(List<Integer> yarns) {
    int[] pieces =
        IntStream.range(0, model.blanket().pieceCount())
            .filter(piece -> yarns.stream().anyMatch(yarn -> mayBorder(piece, yarn)))
            .toArray();
    long[] weights = new long[model.blanket().pieceCount()];
    IntStream.of(pieces).forEach(piece -> weights[piece] = 1);
    List<Integer> key = IntStream.of(pieces).boxed().toList();
    long limit = most.computeIfAbsent(key, k -> IndependentSets.heaviest(seams, weights));
    if (limit < pieces.length) {
      List<IntVar> counts = new ArrayList<>();
      for (int index : borderClasses) {
        for (int yarn : yarns) {
          if (model.counts(index)[yarn] != null) {
            counts.add(model.counts(index)[yarn]);
          }
        }
      }
      model.model().sum(counts.toArray(IntVar[]::new), "<=", (int) limit).post();
    }
  }

  private boolean mayBorder(int piece, int yarn) {
    return model.direct().allows(piece, model.blanket().roundCount(piece) - 1, yarn);
  }
}
