package lozengy.benchmarks.peer;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.yarn.ShadeNeed;
import lozengy.model.yarn.ShadeTaken;

/**
 * The choice of a pack for CP-SAT: whole balls of each shade, as few as can be, and an arrangement
 * from them that keeps borders, pieces and the limits of shares. Copies, dye lots and the score are
 * left out, so its optimum is one that no pack under all of them goes below.
 */
public final class CpSatPack {

  private static final double HUNDRED = 100;

  private CpSatPack() {}

  /**
   * How it ended.
   *
   * @param balls the fewest that were found; empty where no pack was
   * @param bound no pack has fewer balls
   * @param proof whether the fewest are proved, or that there is no pack
   * @param seconds from the statement of the model to the end
   */
  public record Answer(OptionalLong balls, long bound, Contender.Proof proof, double seconds) {}

  /**
   * The fewest balls.
   *
   * @param brief the brief made ready; every yarn has a put-up
   * @param bendPercent by how much shares may bend, to the next round
   * @param most balls in all that it may take; a pack is looked for within that
   * @param start an arrangement to begin with, given as a hint
   */
  public static Answer fewest(
      Blanket brief,
      double bendPercent,
      OptionalLong most,
      Optional<Sequences> start,
      int workers,
      double limitSeconds) {
    Loader.loadNativeLibraries();
    Stopwatch watch = new Stopwatch();
    Blanket blanket = Blanket.ofUnjudged(ShadeTaken.atNothing(brief.brief()));
    CpSatModel stated = CpSatModel.ofRules(blanket);
    LinearExprBuilder all = LinearExpr.newBuilder();
    List<ShadeNeed> needs = ShadeNeed.of(blanket);
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      all.add(balls(stated, yarn, needs.get(yarn).millimetres(), bendPercent / HUNDRED));
    }
    most.ifPresent(limit -> stated.model().addLessOrEqual(all, limit));
    stated.model().minimize(all);
    start.ifPresent(stated::hint);
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(workers).setMaxTimeInSeconds(limitSeconds);
    CpSolverStatus status = solver.solve(stated.model());
    boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return new Answer(
        any ? OptionalLong.of(Math.round(solver.objectiveValue())) : OptionalLong.empty(),
        (long) Math.ceil(solver.bestObjectiveBound() - 1e-6),
        CpSatContender.proof(status),
        watch.seconds());
  }

  /** The balls of a yarn, which hold what the rounds use of it. */
  private static IntVar balls(CpSatModel stated, int yarn, long share, double bend) {
    Blanket blanket = stated.blanket();
    CpModel model = stated.model();
    LinearExprBuilder use = LinearExpr.newBuilder();
    use.add(blanket.fixedUse().millimetres(yarn));
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < stated.rounds(piece); round++) {
        Literal shown = stated.shows(piece, round)[yarn];
        if (shown != null) {
          use.addTerm(shown, blanket.takenMillimetres(piece, round, yarn));
        }
      }
    }
    long round = longest(blanket, yarn);
    long lowest = Math.max(0, (long) Math.ceil(share * (1 - bend)) - round);
    long highest = (long) (share * (1 + bend)) + round;
    IntVar used = model.newIntVar(lowest, Math.max(lowest, highest), "");
    model.addEquality(used, use);
    double ball = blanket.yarn(yarn).ball().orElseThrow().millimetres().doubleValue();
    double usable = ball * (1 - blanket.brief().rules().keepBackPercent() / HUNDRED);
    IntVar balls = model.newIntVar(0, (long) Math.ceil(highest / usable) + 1, "");
    // a ball is counted a millimetre longer, so that rounding makes no pack too large
    model.addLessOrEqual(used, LinearExpr.term(balls, (long) Math.ceil(usable) + 1));
    return balls;
  }

  private static long longest(Blanket blanket, int yarn) {
    long longest = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)) {
          longest = Math.max(longest, blanket.takenMillimetres(piece, round, yarn));
        }
      }
    }
    return longest;
  }
}
