package lozengy.benchmarks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import lozengy.benchmarks.record.Results;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs the kernels by JMH, with the bytes that each operation allocates. */
@Command(
    name = "kernels",
    mixinStandardHelpOptions = true,
    description = "Kernels by JMH: moves a second, bytes a move; read, compile, check, score.")
public final class Kernels implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of("benchmark", "brief", "temperature", "threads", "score", "error", "unit", "bytes");

  private static final String BYTES = "gc.alloc.rate.norm";

  @Parameters(
      arity = "0..*",
      description = "Which: parts of names such as MovesBenchmark; by default all.")
  private List<String> include = List.of("lozengy.benchmarks.kernel");

  @Option(names = "--briefs", split = ",", description = "Names of briefs.")
  private List<String> briefs = List.of();

  @Option(names = "--forks", description = "Forks, if not as the kernels say.")
  private Integer forks;

  @Option(names = "--seconds", description = "Seconds an iteration, if not as the kernels say.")
  private Double seconds;

  @Mixin private Output output;

  @Override
  public Integer call() throws RunnerException {
    ChainedOptionsBuilder options = new OptionsBuilder().addProfiler(GCProfiler.class);
    include.forEach(options::include);
    if (!briefs.isEmpty()) {
      options.param("brief", briefs.toArray(String[]::new));
    }
    if (forks != null) {
      options.forks(forks);
    }
    if (seconds != null) {
      TimeValue time = TimeValue.milliseconds(Math.round(seconds * 1000));
      options.warmupTime(time).measurementTime(time);
    }
    try (Results.Writer results = output.open(COLUMNS)) {
      Collection<RunResult> runs = new Runner(options.build()).run();
      runs.forEach(run -> results.row(cells(run)));
    }
    return 0;
  }

  private static List<String> cells(RunResult run) {
    String name = run.getParams().getBenchmark();
    Result<?> primary = run.getPrimaryResult();
    List<String> cells = new ArrayList<>();
    cells.add(name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1));
    cells.add(run.getParams().getParam("brief"));
    String temperature = run.getParams().getParam("temperature");
    cells.add(temperature == null ? "" : temperature);
    cells.add(Integer.toString(run.getParams().getThreads()));
    cells.add(number(primary.getScore()));
    cells.add(number(primary.getScoreError()));
    cells.add(primary.getScoreUnit());
    Result<?> bytes = run.getSecondaryResults().get(BYTES);
    cells.add(bytes == null ? "" : number(bytes.getScore()));
    return cells;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.6g", value);
  }
}
