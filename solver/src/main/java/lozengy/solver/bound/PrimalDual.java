package lozengy.solver.bound;

import java.util.function.BooleanSupplier;

/**
 * Looks for good multipliers of a linear program by the primal-dual hybrid gradient method (A.
 * Chambolle and T. Pock, Journal of Mathematical Imaging and Vision 40, 2011) with diagonal steps
 * (T. Pock and A. Chambolle, ICCV 2011) and restarts from averages (D. Applegate and others,
 * Practical large-scale linear programming using primal-dual hybrid gradient, NeurIPS 2021). Steps
 * are over-relaxed (L. Condat, Journal of Optimization Theory and Applications 158, 2013). Each is
 * O(entries). The method only proposes; {@link DualBound} proves.
 */
final class PrimalDual {

  /** Steps between two looks at the bound. */
  static final int ROUND = 40;

  /** Rounds that must prove so many points for further ones to be worth their effort. */
  private static final int PATIENCE = 40;

  private static final double WORTH = 0.002;

  /** How far to go along a step, 1 being the plain method and below 2 where it still converges. */
  private static final double RELAXED = 1.8;

  private final LinearProgram program;
  private final DualBound proof;
  private final double[] point;
  private final double[] ahead;
  private final double[] multipliers;
  private final double[] pull;
  private final double[] pointStep;
  private final double[] rowStep;
  private final double[] weighedPointStep;
  private final double[] weighedRowStep;
  private final double[] bending;
  private final double[] pointSum;
  private final double[] multiplierSum;
  private final double[] pointStart;
  private final double[] multiplierStart;
  private double weight = 1;
  private int since;
  private double startBound;
  private boolean looked;
  private double best = Double.POSITIVE_INFINITY;
  private final double[] bestPoint;
  private double[] bestMultipliers;

  /**
   * Starts at the middle of all ranges.
   *
   * @param warm multipliers to start from; as many as the program has rows, or empty
   */
  PrimalDual(LinearProgram program, double[] warm) {
    this.program = program;
    this.proof = new DualBound(program);
    int variables = program.variables();
    int rows = program.rows();
    point = new double[variables];
    ahead = new double[variables];
    pull = new double[variables];
    pointStep = new double[variables];
    weighedPointStep = new double[variables];
    bending = new double[variables];
    pointSum = new double[variables];
    pointStart = new double[variables];
    bestPoint = new double[variables];
    multipliers = warm.length == rows ? warm.clone() : new double[rows];
    rowStep = new double[rows];
    weighedRowStep = new double[rows];
    multiplierSum = new double[rows];
    multiplierStart = multipliers.clone();
    for (int row = 0; row < rows; row++) {
      double sum = 0;
      for (int entry = program.start(row); entry < program.start(row + 1); entry++) {
        double size = Math.abs(program.coefficient(entry));
        sum += size;
        pointStep[program.column(entry)] += size;
      }
      rowStep[row] = sum == 0 ? 0 : 1 / sum;
    }
    double gains = 0;
    for (int variable = 0; variable < variables; variable++) {
      pointStep[variable] = 1 / Math.max(pointStep[variable], 1e-6);
      gains += program.gain(variable) * program.gain(variable);
    }
    double rights = 0;
    for (int row = 0; row < rows; row++) {
      rights += program.right(row) * program.right(row);
    }
    if (gains > 0 && rights > 0) {
      weight = Math.sqrt(gains / rights);
    }
    weigh();
    startBound = proof.of(multipliers);
    best = startBound;
    bestMultipliers = multipliers.clone();
  }

  /** The least bound proved so far. */
  double best() {
    return best;
  }

  /** The value that a variable had where the least bound was found; a hint, nothing proved. */
  double hint(int variable) {
    return program.value(variable, bestPoint[variable]);
  }

  /** The multipliers that prove the least bound. */
  double[] bestMultipliers() {
    return bestMultipliers.clone();
  }

  /** Takes so many rounds of steps, fewer if stopped or where many prove next to nothing. */
  void improve(int rounds, BooleanSupplier stop) {
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < rounds && !stop.getAsBoolean(); round++) {
      if (round % PATIENCE == 0) {
        if (before - best < WORTH) {
          return;
        }
        before = best;
      }
      for (int step = 0; step < ROUND; step++) {
        step();
      }
      look();
    }
  }

  /** Works out once what the steps share until the weight changes: they would divide too often. */
  private void weigh() {
    for (int variable = 0; variable < point.length; variable++) {
      weighedPointStep[variable] = pointStep[variable] / weight;
      bending[variable] = 1 + 2 * weighedPointStep[variable] * program.bend(variable);
    }
    for (int row = 0; row < multipliers.length; row++) {
      weighedRowStep[row] = rowStep[row] * weight;
    }
  }

  private void step() {
    java.util.Arrays.fill(pull, 0);
    for (int row = 0; row < multipliers.length; row++) {
      double times = multipliers[row];
      if (times != 0) {
        for (int entry = program.start(row); entry < program.start(row + 1); entry++) {
          pull[program.column(entry)] += times * program.coefficient(entry);
        }
      }
    }
    for (int variable = 0; variable < point.length; variable++) {
      double moved =
          point[variable] + weighedPointStep[variable] * (program.gain(variable) - pull[variable]);
      if (bending[variable] != 1) {
        moved /= bending[variable];
      }
      moved = Math.max(0, Math.min(1, moved));
      ahead[variable] = 2 * moved - point[variable];
      point[variable] += RELAXED * (moved - point[variable]);
      pointSum[variable] += moved;
    }
    for (int row = 0; row < multipliers.length; row++) {
      double over = -program.right(row);
      for (int entry = program.start(row); entry < program.start(row + 1); entry++) {
        over += program.coefficient(entry) * ahead[program.column(entry)];
      }
      double moved = multipliers[row] + weighedRowStep[row] * over;
      moved = program.equal(row) ? moved : Math.max(0, moved);
      multipliers[row] += RELAXED * (moved - multipliers[row]);
      multiplierSum[row] += moved;
    }
    since++;
  }

  private void look() {
    double[] mean = new double[multipliers.length];
    for (int row = 0; row < mean.length; row++) {
      mean[row] = multiplierSum[row] / since;
    }
    double meanBound = proof.of(mean);
    double bound = proof.of(multipliers);
    boolean least = Math.min(meanBound, bound) < best;
    if (least) {
      best = Math.min(meanBound, bound);
      bestMultipliers = meanBound < bound ? mean.clone() : multipliers.clone();
    }
    if (least || !looked) {
      looked = true;
      for (int variable = 0; variable < point.length; variable++) {
        bestPoint[variable] = pointSum[variable] / since;
      }
    }
    boolean enough = since >= 10 * ROUND;
    boolean better = Math.min(meanBound, bound) < startBound;
    if (since >= 4 * ROUND && better || enough) {
      restart(meanBound < bound, mean);
      startBound = Math.min(meanBound, bound);
    }
  }

  private void restart(boolean fromMean, double[] mean) {
    double pointMoved = 0;
    double multipliersMoved = 0;
    for (int variable = 0; variable < point.length; variable++) {
      if (fromMean) {
        point[variable] = pointSum[variable] / since;
      }
      double moved = point[variable] - pointStart[variable];
      pointMoved += moved * moved;
      pointStart[variable] = point[variable];
      pointSum[variable] = 0;
    }
    for (int row = 0; row < multipliers.length; row++) {
      if (fromMean) {
        multipliers[row] = mean[row];
      }
      double moved = multipliers[row] - multiplierStart[row];
      multipliersMoved += moved * moved;
      multiplierStart[row] = multipliers[row];
      multiplierSum[row] = 0;
    }
    if (pointMoved > 1e-12 && multipliersMoved > 1e-12) {
      weight =
          StrictMath.exp(
              0.5 * StrictMath.log(Math.sqrt(multipliersMoved / pointMoved))
                  + 0.5 * StrictMath.log(weight));
      weigh();
    }
    since = 0;
  }
}
