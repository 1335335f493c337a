package lozengy.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * How far seeds disagree: solves briefs with several seeds, each with the moves that a solve makes
 * where nothing is said. No clock decides anything, so that a seed's score is the same on every
 * machine.
 */
@Command(
    name = "seeds",
    mixinStandardHelpOptions = true,
    description = "Worst seed against best seed at default moves; by default the few borders.")
final class SeedRuns implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of(
          "brief",
          "pieces",
          "border_yarns",
          "slack_percent",
          "of_seed",
          "moves",
          "valid",
          "score",
          "balance",
          "spread",
          "contrast",
          "leeway",
          "bound",
          "seconds");

  private static final List<Part> PARTS =
      List.of(Part.BALANCE, Part.SPREAD, Part.CONTRAST, Part.LEEWAY);

  @Option(names = "--briefs", split = ",", description = "Names of briefs.")
  private List<String> briefs = BriefSet.few().stream().map(BriefSpec::name).toList();

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L, 4L, 5L);

  @Option(names = "--moves", description = "Moves of each solve; by default those of solve.")
  private Long moves;

  @Option(names = "--threads", description = "Threads; they change no score.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Mixin private Output output;

  private Results.Writer results;

  @Override
  public Integer call() {
    List<List<String>> done =
        output.rowsBefore().stream()
            .map(row -> List.of(row.get("brief"), row.get("of_seed")))
            .toList();
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      for (String name : briefs) {
        PlantedBrief made = PlantedBrief.of(BriefSet.named(name));
        for (long seed : seeds) {
          if (!done.contains(List.of(name, Long.toString(seed)))) {
            run(made, seed);
          }
        }
      }
    }
    return 0;
  }

  private void run(PlantedBrief made, long seed) {
    long limit = moves == null ? SolveOptions.defaultMoves(made.blanket()) : moves;
    SolveOptions options =
        SolveOptions.defaults().withSeed(seed).withMoves(limit).withThreads(threads);
    Stopwatch watch = new Stopwatch();
    SolveResult result = Solver.solve(made.blanket(), Optional.empty(), options);
    Optional<Arrangement> found =
        result instanceof SolveResult.Found f ? Optional.of(f.arrangement()) : Optional.empty();
    boolean valid =
        found.isPresent() && Check.faults(made.blanket(), found.get().sequences()).isEmpty();
    List<String> cells =
        new ArrayList<>(
            List.of(
                made.spec().name(),
                Integer.toString(made.blanket().pieceCount()),
                Integer.toString(made.spec().borderYarns()),
                Double.toString(made.spec().slackPercent()),
                Long.toString(seed),
                Long.toString(limit),
                valid ? "yes" : "no",
                found.map(a -> Output.points(a.score().total())).orElse("")));
    for (Part part : PARTS) {
      cells.add(found.map(a -> Output.points(a.score().parts().get(part))).orElse(""));
    }
    cells.add(
        found.flatMap(Arrangement::bound).map(bound -> Output.points(bound.total())).orElse(""));
    cells.add(Output.seconds(watch.seconds()));
    results.row(cells);
    System.out.println(String.join(" ", cells));
  }
}
