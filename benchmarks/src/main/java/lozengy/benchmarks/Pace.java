package lozengy.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Assertions;
import lozengy.solver.search.Budget;
import lozengy.solver.search.Search;
import lozengy.solver.search.WalkerHarness;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Moves a second of the whole search, deals and meetings included, with one thread and with two in
 * turns; and the bytes that a walker's moves allocate. The short form of what the kernels measure.
 */
@Command(
    name = "pace",
    mixinStandardHelpOptions = true,
    description = "Moves a second with one thread and two, in turns; bytes a move.")
final class Pace implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of("brief", "pieces", "round", "threads", "moves", "seconds", "moves_per_s", "bytes");

  private static final int MOST_THREADS = 2;
  private static final long WALKED_FOR_BYTES = 4_000_000;

  @Option(names = "--briefs", split = ",", description = "Names of briefs: ${DEFAULT-VALUE}.")
  private List<String> briefs = List.of("reference", "growth-10000");

  @Option(names = "--rounds", description = "Rounds, after one that warms up: ${DEFAULT-VALUE}.")
  private int rounds = 7;

  @Option(names = "--moves", description = "Moves of each run: ${DEFAULT-VALUE}.")
  private long moves = 20_000_000;

  @Mixin private Output output;

  @Override
  public Integer call() {
    try (Results.Writer writer = output.open(COLUMNS)) {
      for (String name : briefs) {
        Problem problem =
            ProblemCompiler.compile(
                PlantedBrief.of(BriefSet.named(name)).blanket(), Optional.empty());
        long bytes = bytes(problem);
        for (int round = 0; round <= rounds; round++) {
          for (int threads = 1; threads <= MOST_THREADS; threads++) {
            double seconds = run(problem, round, threads);
            if (round > 0) {
              row(writer, name, problem, round, threads, seconds, bytes);
            }
          }
        }
      }
    }
    return 0;
  }

  private double run(Problem problem, long seed, int threads) {
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    try (Search search =
        new Search(
            problem,
            seed,
            Search.usualWalkers(problem.blanket()),
            threads,
            budget,
            () -> Long.MIN_VALUE,
            () -> {},
            Assertions.OFF)) {
      Stopwatch watch = new Stopwatch();
      search.start();
      search.improve();
      return watch.seconds();
    }
  }

  /** Bytes that so many moves of one walker allocate in all, compiled code assumed. */
  private static long bytes(Problem problem) {
    WalkerHarness walker = new WalkerHarness(problem, 1);
    walker.hold(1, WALKED_FOR_BYTES);
    walker.walk(WALKED_FOR_BYTES);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    walker.walk(WALKED_FOR_BYTES);
    return threads.getCurrentThreadAllocatedBytes() - before;
  }

  private void row(
      Results.Writer writer,
      String name,
      Problem problem,
      int round,
      int threads,
      double seconds,
      long bytes) {
    List<String> cells =
        List.of(
            name,
            Integer.toString(problem.slots().orbits()),
            Integer.toString(round),
            Integer.toString(threads),
            Long.toString(moves),
            Output.seconds(seconds),
            String.format(Locale.ROOT, "%.0f", moves / seconds),
            Long.toString(bytes));
    writer.row(cells);
    System.out.println(String.join(" ", cells));
  }
}
