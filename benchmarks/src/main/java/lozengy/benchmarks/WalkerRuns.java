package lozengy.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Assertions;
import lozengy.solver.search.Budget;
import lozengy.solver.search.Search;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * What walkers gain: the same brief by 1 to 16 of them, each with as many moves, and all with as
 * many moves between them. Moves are counted and the processor's time is told, so that a busy
 * machine changes no score and hardly a time.
 */
@Command(
    name = "walkers",
    mixinStandardHelpOptions = true,
    description = "Scores of 1 to 16 walkers, at equal moves each and at equal moves in all.")
final class WalkerRuns implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of(
          "brief", "pieces", "moves", "shared", "walkers", "of_seed", "valid", "score", "cpu_s",
          "seconds");

  @Option(names = "--briefs", split = ",", description = "Names of briefs: ${DEFAULT-VALUE}.")
  private List<String> briefs =
      List.of("cushion-tight", "baby", "reference", "double-bed", "growth-1000", "growth-10000");

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L);

  @Option(names = "--walkers", split = ",", description = "How many: ${DEFAULT-VALUE}.")
  private List<Integer> walkers = List.of(1, 2, 4, 8, 16);

  @Option(names = "--each", description = "Moves of each walker: ${DEFAULT-VALUE}.")
  private long each = 2_000_000;

  @Option(names = "--all", description = "Moves of all between them: ${DEFAULT-VALUE}.")
  private long all = 16_000_000;

  @Mixin private Output output;

  @Override
  public Integer call() {
    List<List<String>> done =
        output.rowsBefore().stream()
            .map(
                row ->
                    key(
                        row.get("brief"),
                        row.get("shared"),
                        row.get("walkers"),
                        row.get("of_seed")))
            .toList();
    try (Results.Writer writer = output.open(COLUMNS)) {
      for (String name : briefs) {
        Blanket blanket = PlantedBrief.of(BriefSet.named(name)).blanket();
        Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
        for (long seed : seeds) {
          for (boolean shared : new boolean[] {false, true}) {
            for (int count : walkers) {
              List<String> key =
                  key(name, shared ? "yes" : "no", Integer.toString(count), Long.toString(seed));
              if (!done.contains(key)) {
                run(writer, key, problem, shared ? all : count * each, count, seed);
              }
            }
          }
        }
      }
    }
    return 0;
  }

  private static List<String> key(String brief, String shared, String walkers, String seed) {
    return List.of(brief, shared, walkers, seed);
  }

  private void run(
      Results.Writer writer, List<String> key, Problem problem, long moves, int count, long seed) {
    int threads = Runtime.getRuntime().availableProcessors();
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    long before = system.getProcessCpuTime();
    Stopwatch watch = new Stopwatch();
    int[] best;
    try (Search search =
        new Search(
            problem,
            seed,
            count,
            threads,
            budget,
            () -> Long.MIN_VALUE,
            () -> {},
            Assertions.OFF)) {
      if (search.start() || search.startAgain()) {
        search.improve();
      }
      best = search.best();
    }
    double seconds = watch.seconds();
    double busy = (system.getProcessCpuTime() - before) / 1e9;
    Blanket blanket = problem.blanket();
    boolean valid = best != null && Check.faults(blanket, problem.sequences(best)).isEmpty();
    List<String> cells = new ArrayList<>();
    cells.add(key.get(0));
    cells.add(Integer.toString(blanket.pieceCount()));
    cells.add(Long.toString(moves));
    cells.addAll(key.subList(1, key.size()));
    cells.add(valid ? "yes" : "no");
    cells.add(
        valid
            ? Output.points(
                Scorer.score(blanket, problem.sequences(best), Optional.empty()).total())
            : "");
    cells.add(Output.seconds(busy));
    cells.add(Output.seconds(seconds));
    writer.row(cells);
    System.out.println(String.join(" ", cells));
  }
}
