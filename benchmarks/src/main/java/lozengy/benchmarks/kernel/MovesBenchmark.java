package lozengy.benchmarks.kernel;

import java.util.concurrent.TimeUnit;
import lozengy.solver.search.WalkerHarness;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Moves of the search a second, at a temperature of the beginning and of the end of a walk, with
 * one thread and with two, each with a walker of its own. An operation is one move.
 */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class MovesBenchmark {

  private static final int MOVES = 1 << 16;

  /** A walker at one temperature. */
  @State(Scope.Thread)
  public static class Walk {

    /** Temperature in steps of the lightest repeat. */
    @Param({"1.0", "0.1"})
    public double temperature;

    private WalkerHarness walker;

    /** Deals a start, and walks until the state fits the temperature. */
    @Setup(Level.Trial)
    public void settle(Briefs briefs) {
      walker = new WalkerHarness(briefs.problem, 1);
      long settling = 200L * briefs.problem.slots().count();
      walker.hold(temperature, settling);
      walker.walk(settling);
      walker.hold(temperature, Long.MAX_VALUE);
    }
  }

  /** One walker on one thread. */
  @Benchmark
  @OperationsPerInvocation(MOVES)
  @Threads(1)
  public long oneThread(Walk walk) {
    walk.walker.walk(MOVES);
    return walk.walker.bestCost();
  }

  /** Two walkers on two threads; the moves of both are counted. */
  @Benchmark
  @OperationsPerInvocation(MOVES)
  @Threads(2)
  public long twoThreads(Walk walk) {
    walk.walker.walk(MOVES);
    return walk.walker.bestCost();
  }
}
