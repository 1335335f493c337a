package lozengy.report;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.progress.LeastUpset;
import lozengy.model.progress.Upset;
import lozengy.model.score.Score;

/**
 * What planning again has come to, against the plan before.
 *
 * @param arrangement the arrangement now
 * @param before the pieces' yarns before; open where the layout has grown
 * @param upset what has changed
 * @param least how many rounds had to change at least
 * @param scoreBefore the score of the plan before, with keep counted as 100; empty where a round of
 *     it was open
 * @param afresh the same blanket solved without regard to the plan before, where asked for
 */
public record ReplanComparison(
    Arrangement arrangement,
    Sequences before,
    Upset upset,
    LeastUpset least,
    Optional<Score> scoreBefore,
    Optional<Afresh> afresh) {

  private static final double ALL_KEPT = 100;

  /**
   * Another arrangement of the same blanket, solved without regard to the plan before.
   *
   * @param upset what it would have changed
   * @param total its score
   */
  public record Afresh(Upset upset, double total) {}

  /**
   * Compares.
   *
   * @param arrangement the arrangement now
   * @param before the pieces' yarns before, of the same layout
   * @param least how many rounds had to change at least
   * @param stated the score of the plan before in its own size; empty where a round was open
   * @param afresh the same blanket solved afresh, where asked for
   */
  public static ReplanComparison of(
      Arrangement arrangement,
      Sequences before,
      LeastUpset least,
      Optional<Score> stated,
      Optional<Arrangement> afresh) {
    Blanket blanket = arrangement.blanket();
    return new ReplanComparison(
        arrangement,
        before,
        Upset.of(blanket, before, arrangement.sequences()),
        least,
        stated.map(score -> kept(score, blanket)),
        afresh.map(
            other ->
                new Afresh(Upset.of(blanket, before, other.sequences()), other.score().total())));
  }

  private static Score kept(Score score, Blanket blanket) {
    Map<Part, Double> parts = new EnumMap<>(score.parts());
    parts.put(Part.KEEP, ALL_KEPT);
    return Score.of(parts, blanket.brief().prefer());
  }

  /** What the move of a part of the total is worth in points of it. */
  double points(Part part) {
    double moved =
        arrangement.score().parts().get(part) - scoreBefore.orElseThrow().parts().get(part);
    return arrangement.blanket().brief().prefer().share(part) * moved;
  }
}
