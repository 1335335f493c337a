package lozengy.report.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.PieceKind;

/**
 * What holds a blanket together and goes around it, as drawn. Nobody measures how wide a seam or an
 * edging is; it is taken from the yarn: along a length it takes as much for a width as the border
 * of a square does.
 *
 * @param seamCm width of a seam in cm, as the joining lies over the borders
 * @param seamYarn the joining's yarn, or {@link Sequences#OPEN} where it is not in one yarn
 * @param edging the edging's bands, the innermost first; none where none is stated
 */
public record Trim(double seamCm, int seamYarn, List<Band> edging) {

  /**
   * Rounds of the edging in one yarn.
   *
   * @param yarn the yarn
   * @param reachCm how far from the outline they reach, in cm
   */
  public record Band(int yarn, double reachCm) {}

  /** Parts of a square's side between which a seam is drawn, and what an edging is at most. */
  private static final double NARROWEST_SEAM = 0.022;

  private static final double WIDEST_SEAM = 0.045;
  private static final double NARROWEST_EDGING = 0.05;
  private static final double WIDEST_EDGING = 0.5;

  /** Length in mm for which rates are asked. */
  private static final BigDecimal METRE = BigDecimal.valueOf(1000);

  /** The trim of a blanket. */
  static Trim of(Blanket blanket) {
    double side = blanket.measures().sideCm();
    Optional<YarnUse> joining = blanket.brief().joiningInOneYarn();
    double seam = joining.map(use -> widthCm(blanket, use)).orElse(0.0);
    return new Trim(
        Math.max(NARROWEST_SEAM * side, Math.min(WIDEST_SEAM * side, seam)),
        joining.map(use -> blanket.yarnIndex(use.yarn())).orElse(Sequences.OPEN),
        bands(blanket));
  }

  private static List<Band> bands(Blanket blanket) {
    double side = blanket.measures().sideCm();
    List<Band> bands = new ArrayList<>();
    double reach = 0;
    for (YarnUse use : blanket.brief().edging()) {
      double width = widthCm(blanket, use);
      if (width > 0) {
        reach += Math.max(NARROWEST_EDGING * side, Math.min(WIDEST_EDGING * side, width));
        bands.add(new Band(blanket.yarnIndex(use.yarn()), reach));
      }
    }
    double scale = reach > WIDEST_EDGING * side ? WIDEST_EDGING * side / reach : 1;
    return bands.stream().map(band -> new Band(band.yarn(), scale * band.reachCm())).toList();
  }

  /** Width of the whole edging in cm; 0 where none is stated. */
  double edgingCm() {
    return edging.isEmpty() ? 0 : edging.get(edging.size() - 1).reachCm();
  }

  private static double widthCm(Blanket blanket, YarnUse use) {
    int yarn = blanket.yarnIndex(use.yarn());
    double metresPerMetre =
        use.along(METRE, blanket.yarn(yarn).ball().orElse(null)).up() / METRE.doubleValue();
    double side = blanket.measures().sideCm();
    int rounds = blanket.motif(PieceKind.SQUARE).rounds().size();
    double band = side / 2 / rounds;
    double around = 4 * (side - band);
    double border =
        blanket.motifs().needMillimetres(PieceKind.SQUARE, rounds - 1, yarn) / 10.0 / around;
    return border > 0 ? band * metresPerMetre / border : 0;
  }
}
