package lozengy.benchmarks.peer;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.solver.ProgressListener;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;

/** Lozengy itself, by its facade. What it hands out by the limit is what it found. */
public final class LozengyContender implements Contender {

  private final int threads;
  private final boolean firstOnly;

  /**
   * Makes it.
   *
   * @param threads threads to use
   * @param firstOnly whether to stop as soon as a valid arrangement is told of
   */
  public LozengyContender(int threads, boolean firstOnly) {
    this.threads = threads;
    this.firstOnly = firstOnly;
  }

  @Override
  public String name() {
    return firstOnly ? "lozengy-first" : "lozengy";
  }

  @Override
  public Run run(Blanket blanket, long seed, double limitSeconds) {
    Stopwatch watch = new Stopwatch();
    AtomicBoolean valid = new AtomicBoolean();
    BooleanSupplier stop = () -> firstOnly && valid.get();
    ProgressListener listener = progress -> valid.compareAndSet(false, progress.score() >= 0);
    SolveResult result =
        Solver.solve(
            blanket,
            Optional.empty(),
            SolveOptions.defaults()
                .withSeed(seed)
                .withSeconds(limitSeconds)
                .withThreads(threads)
                .withStop(stop)
                .withListener(listener));
    double seconds = watch.seconds();
    if (result instanceof SolveResult.Found found) {
      Arrangement arrangement = found.arrangement();
      boolean optimal = arrangement.solved().orElseThrow().proof().equals("optimal");
      return new Run(
          0,
          seconds,
          List.of(new Incumbent(seconds, arrangement.sequences())),
          optimal ? Proof.OPTIMAL : Proof.NONE,
          arrangement.bound().stream().mapToDouble(Arrangement.Bound::total).findFirst());
    }
    boolean impossible = result instanceof SolveResult.Impossible;
    return new Run(
        0, seconds, List.of(), impossible ? Proof.IMPOSSIBLE : Proof.NONE, OptionalDouble.empty());
  }
}
