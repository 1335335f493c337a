package lozengy.benchmarks.peer;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.Scorer;

/**
 * Yarn totals, and what leeway loses.
 *
 * <p>A share r of ample leeway is left of every yarn where its use is at most stock / (1 + 0.1 r).
 * That curve is replaced by chords over steps of r, one step being chosen for all yarns. A chord
 * lies above the curve by less than 6 millionths of the stock, so that the model takes the total
 * for higher than it is by less than a thousandth of a point, never for lower. A single chord over
 * all steps, which follows from the others, gives the linear relaxation a hold.
 */
final class CpSatStock {

  private static final int STEPS = 20;

  /** The least units that a millimetre must count for, so that rounding does not matter. */
  private static final double LEAST_PER_MILLIMETRE = 1000;

  private final CpSatModel stated;
  private final CpModel model;
  private final Blanket blanket;

  /** Units that leeway keeps, of all that it can lose. */
  private final LinearExpr kept;

  private final long whole;
  private final BoolVar[] inStep = new BoolVar[STEPS];

  CpSatStock(CpSatModel stated) {
    this.stated = stated;
    this.model = stated.model();
    this.blanket = stated.blanket();
    this.whole = stated.losses().noLeeway();
    IntVar lost = model.newIntVar(0, whole, "");
    stated.lose(lost, 1);
    this.kept = LinearExpr.affine(lost, -1, whole);
  }

  void post() {
    if (whole > 0) {
      for (int step = 0; step < STEPS; step++) {
        inStep[step] = model.newBoolVar("");
        long from = (long) Math.floor((double) whole * step / STEPS);
        long to = (long) Math.ceil((double) whole * (step + 1) / STEPS);
        model.addLinearConstraint(kept, from, to).onlyEnforceIf(inStep[step]);
      }
      model.addExactlyOne(inStep);
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      post(yarn);
    }
  }

  private void post(int yarn) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    sum.add(blanket.fixedUseMillimetres(yarn));
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < stated.rounds(piece); round++) {
        Literal shown = stated.shows(piece, round)[yarn];
        if (shown != null) {
          sum.addTerm(shown, blanket.needMillimetres(blanket.kind(piece), round, yarn));
        }
      }
    }
    IntVar used = model.newIntVar(0, blanket.usableMillimetres(yarn), "");
    model.addEquality(used, sum);
    if (whole > 0) {
      chord(used, blanket.stockMillimetres(yarn), 0, 1, null);
      for (int step = 0; step < STEPS; step++) {
        chord(
            used,
            blanket.stockMillimetres(yarn),
            (double) step / STEPS,
            (double) (step + 1) / STEPS,
            inStep[step]);
      }
    }
  }

  /** Holds the use below the chord between two shares of leeway kept. */
  private void chord(IntVar used, long stock, double from, double to, Literal onlyIf) {
    double mostFrom = stock / (1 + Scorer.AMPLE_LEEWAY * from);
    double mostTo = stock / (1 + Scorer.AMPLE_LEEWAY * to);
    if (mostFrom <= mostTo) {
      return;
    }
    double unitsPerMillimetre = (to - from) * whole / (mostFrom - mostTo);
    long scale = Math.max(1, (long) Math.ceil(LEAST_PER_MILLIMETRE / unitsPerMillimetre));
    long weight = Math.round(scale * unitsPerMillimetre);
    double most =
        Math.max(weight * mostFrom + scale * from * whole, weight * mostTo + scale * to * whole);
    LinearExprBuilder sum = LinearExpr.newBuilder().addTerm(used, weight).addTerm(kept, scale);
    var constraint = model.addLessOrEqual(sum, (long) Math.ceil(most));
    if (onlyIf != null) {
      constraint.onlyEnforceIf(onlyIf);
    }
  }
}
