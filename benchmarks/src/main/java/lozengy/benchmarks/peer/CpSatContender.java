package lozengy.benchmarks.peer;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** CP-SAT of OR-Tools on {@link CpSatModel}, with its own parallel portfolio. */
public final class CpSatContender implements Peer {

  private final int workers;

  /**
   * Loads the native library.
   *
   * @param workers CP-SAT's {@code num_workers}
   */
  public CpSatContender(int workers) {
    Loader.loadNativeLibraries();
    this.workers = workers;
  }

  @Override
  public String name() {
    return "cp-sat";
  }

  @Override
  public Run run(Blanket blanket, long seed, double limitSeconds) {
    return run(blanket, Optional.empty(), Optional.empty(), seed, limitSeconds);
  }

  @Override
  public Run from(Blanket blanket, Sequences start, long seed, double limitSeconds) {
    return run(blanket, Optional.empty(), Optional.of(start), seed, limitSeconds);
  }

  /**
   * Plans again.
   *
   * @param earlier sequences to stay close to
   * @param start a valid arrangement to begin with, given as a hint
   */
  public Run again(
      Blanket blanket, Sequences earlier, Sequences start, long seed, double limitSeconds) {
    return run(blanket, Optional.of(earlier), Optional.of(start), seed, limitSeconds);
  }

  private Run run(
      Blanket blanket,
      Optional<Sequences> earlier,
      Optional<Sequences> start,
      long seed,
      double limitSeconds) {
    Stopwatch watch = new Stopwatch();
    CpSatModel stated = new CpSatModel(blanket, earlier);
    start.ifPresent(stated::hint);
    double statedSeconds = watch.seconds();
    List<Incumbent> found = new ArrayList<>();
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setNumWorkers(workers)
        .setRandomSeed((int) seed)
        .setMaxTimeInSeconds(Math.max(0, limitSeconds - statedSeconds));
    CpSolverStatus status =
        solver.solve(
            stated.model(),
            new CpSolverSolutionCallback() {
              @Override
              public void onSolutionCallback() {
                double seconds = watch.seconds();
                found.add(
                    new Incumbent(
                        seconds,
                        stated.sequences(shown -> solutionBooleanValue(shown.getIndex()))));
              }
            });
    double seconds = watch.seconds();
    boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return new Run(
        statedSeconds,
        seconds,
        found,
        proof(status),
        any
            ? OptionalDouble.of(stated.losses().total(solver.bestObjectiveBound()))
            : OptionalDouble.empty());
  }

  /** What a status proves. */
  static Proof proof(CpSolverStatus status) {
    return switch (status) {
      case OPTIMAL -> Proof.OPTIMAL;
      case INFEASIBLE -> Proof.IMPOSSIBLE;
      case MODEL_INVALID -> throw new IllegalStateException("the model is not valid");
      default -> Proof.NONE;
    };
  }
}
