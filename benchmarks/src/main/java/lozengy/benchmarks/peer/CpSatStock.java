package lozengy.benchmarks.peer;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.LeewayMeasure;

/**
 * Yarn totals, and what leeway loses.
 *
 * <p>What a yarn loses is the square of its tightness, which is linear in its use. That curve is
 * replaced by tangents, below it by less than 1 / 4 of the square of their distance, so that the
 * model takes the total for higher than it is by less than a thousandth of a point, never for
 * lower.
 */
final class CpSatStock {

  private static final int TANGENTS = 64;

  /** The least units that a millimetre must count for, so that rounding does not matter. */
  private static final double LEAST_PER_MILLIMETRE = 1000;

  private final CpSatModel stated;
  private final CpModel model;
  private final Blanket blanket;

  /** Units that a yarn loses with nothing left. */
  private final long whole;

  CpSatStock(CpSatModel stated) {
    this.stated = stated;
    this.model = stated.model();
    this.blanket = stated.blanket();
    this.whole = stated.losses().noLeeway();
  }

  void post() {
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      post(yarn);
    }
  }

  private void post(int yarn) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    sum.add(blanket.fixedUse().millimetres(yarn));
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < stated.rounds(piece); round++) {
        Literal shown = stated.shows(piece, round)[yarn];
        if (shown != null) {
          sum.addTerm(shown, blanket.takenMillimetres(piece, round, yarn));
        }
      }
    }
    IntVar used = model.newIntVar(0, blanket.yarns().usableMillimetres(yarn), "");
    model.addEquality(used, sum);
    if (whole > 0) {
      IntVar lost = model.newIntVar(0, whole, "");
      stated.lose(lost, 1);
      for (int tangent = 1; tangent <= TANGENTS; tangent++) {
        hold(used, lost, blanket.yarn(yarn).stockMillimetres(), (double) tangent / TANGENTS);
      }
    }
  }

  /** Holds the loss above the tangent at a tightness. */
  private void hold(IntVar used, IntVar lost, long stock, double tightness) {
    if (stock == 0) {
      return;
    }
    double unitsPerMillimetre = whole * 2 * tightness * LeewayMeasure.tightens(stock);
    long scale = Math.max(1, (long) Math.ceil(LEAST_PER_MILLIMETRE / unitsPerMillimetre));
    long weight = Math.round(scale * unitsPerMillimetre);
    double touched =
        weight * LeewayMeasure.used(stock, tightness) - scale * whole * tightness * tightness;
    LinearExprBuilder above = LinearExpr.newBuilder().addTerm(used, weight).addTerm(lost, -scale);
    model.addLessOrEqual(above, (long) Math.ceil(touched));
  }
}
