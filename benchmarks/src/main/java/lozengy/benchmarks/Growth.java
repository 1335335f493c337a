package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Contender;
import lozengy.benchmarks.peer.LozengyContender;
import lozengy.benchmarks.record.Results;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * How time grows with the number of pieces: every stage from the brief's file to the arrangement's
 * and the reports, and the least time limit with which a blanket's score comes as near as asked to
 * what the smallest reaches.
 *
 * <p>The limit is found by doubling it until the score is reached and then halving the ratio to the
 * last that failed, twice: it is known within a factor of 2^(1/4). It begins with what the next
 * smaller blanket needed.
 */
@Command(
    name = "growth",
    mixinStandardHelpOptions = true,
    description = "Growth with the number of pieces, within 1 GB of heap.")
public final class Growth implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of("brief", "pieces", "run", "stage", "limit_s", "seconds", "valid", "score", "target");

  private static final int HALVINGS = 2;
  private static final int WARM_UPS = 3;

  /** Pieces up to which stages are repeated. */
  private static final int MOST_TO_REPEAT = 50_000;

  @Option(names = "--briefs", split = ",", description = "Names of briefs, smallest first.")
  private List<String> briefs = BriefSet.growth().stream().map(BriefSpec::name).toList();

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L);

  @Option(
      names = "--repeats",
      description = "How often each stage, once above 50,000 pieces: ${DEFAULT-VALUE}.")
  private int repeats = 3;

  @Option(names = "--stages-only", description = "Leave the search out.")
  private boolean stagesOnly;

  @Option(
      names = "--reference-limit",
      description = "Seconds for the smallest's score: ${DEFAULT-VALUE}.")
  private double referenceLimit = 10;

  @Option(names = "--within", description = "Points below that score: ${DEFAULT-VALUE}.")
  private double within = 2;

  @Option(names = "--shortest", description = "First limit in seconds: ${DEFAULT-VALUE}.")
  private double shortest = 0.1;

  @Option(names = "--longest", description = "Last limit in seconds: ${DEFAULT-VALUE}.")
  private double longest = 60;

  @Option(names = "--threads", description = "Threads: ${DEFAULT-VALUE}.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Mixin private Output output;

  private Results.Writer results;
  private Path folder;

  @Override
  public Integer call() throws IOException {
    folder = Files.createTempDirectory("lozengy-growth");
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      warmUp();
      for (String name : briefs) {
        stages(PlantedBrief.of(BriefSet.named(name)));
      }
      for (long seed : stagesOnly ? List.<Long>of() : seeds) {
        search(seed);
      }
    } finally {
      Files.delete(folder);
    }
    return 0;
  }

  /** All stages of the smallest, so that compiling the program counts for none. */
  private void warmUp() throws IOException {
    PlantedBrief smallest = PlantedBrief.of(BriefSet.named(briefs.get(0)));
    for (int i = 0; i < WARM_UPS; i++) {
      new Stages(folder, false, (stage, seconds) -> {}).run(smallest);
    }
  }

  private void stages(PlantedBrief made) throws IOException {
    int often = made.blanket().pieceCount() > MOST_TO_REPEAT ? 1 : repeats;
    for (int repeat = 1; repeat <= often; repeat++) {
      Size size = new Size(made.spec(), made.blanket(), repeat);
      new Stages(
              folder,
              repeat == 1,
              (stage, seconds) ->
                  write(
                      size,
                      stage,
                      List.of("", String.format(Locale.ROOT, "%.6f", seconds), "", "", "")))
          .run(made);
    }
  }

  /** The first valid arrangement and the climb, of each size. */
  private void search(long seed) {
    double target = Double.NaN;
    double from = shortest;
    for (String name : briefs) {
      BriefSpec spec = BriefSet.named(name);
      Size size = new Size(spec, PlantedBrief.of(spec).blanket(), seed);
      attempt(size, "first", new LozengyContender(threads, true), longest, Double.NaN);
      Contender lozengy = new LozengyContender(threads, false);
      if (Double.isNaN(target)) {
        target = attempt(size, "reference", lozengy, referenceLimit, Double.NaN).score() - within;
      }
      from = climb(size, lozengy, target, from);
    }
  }

  /** A blanket, and which seed or which repetition of it. */
  private record Size(BriefSpec spec, Blanket blanket, long run) {}

  /** A solve and what came of it; the score is NaN where nothing valid did. */
  private record Attempt(double seconds, double score, Optional<Sequences> sequences) {}

  /** The shortest limit found that reaches the target, or the last that was tried. */
  private double climb(Size size, Contender lozengy, double target, double from) {
    double failed = 0;
    double limit = from;
    Attempt attempt = attempt(size, "climb", lozengy, limit, target);
    while (!(attempt.score() >= target) && limit * 2 <= longest) {
      failed = limit;
      limit *= 2;
      attempt = attempt(size, "climb", lozengy, limit, target);
    }
    boolean reached = attempt.score() >= target;
    for (int i = 0; reached && failed > 0 && i < HALVINGS; i++) {
      double between = Math.sqrt(failed * limit);
      Attempt shorter = attempt(size, "climb", lozengy, between, target);
      if (shorter.score() >= target) {
        limit = between;
        attempt = shorter;
      } else {
        failed = between;
      }
    }
    row(size, reached ? "reached" : "not-reached", limit, attempt, target);
    return limit;
  }

  private Attempt attempt(
      Size size, String stage, Contender contender, double limit, double target) {
    System.gc();
    Contender.Run run = contender.run(size.blanket(), size.run(), limit);
    Optional<Sequences> found =
        run.found().stream()
            .map(Contender.Incumbent::sequences)
            .filter(sequences -> Check.faults(size.blanket(), sequences).isEmpty())
            .findFirst();
    double score =
        found
            .map(sequences -> Scorer.score(size.blanket(), sequences, Optional.empty()).total())
            .orElse(Double.NaN);
    Attempt attempt = new Attempt(run.seconds(), score, found);
    row(size, stage, limit, attempt, target);
    return attempt;
  }

  private void row(Size size, String stage, double limit, Attempt attempt, double target) {
    boolean valid = attempt.sequences().isPresent();
    write(
        size,
        stage,
        List.of(
            Output.seconds(limit),
            Output.seconds(attempt.seconds()),
            valid ? "yes" : "no",
            valid ? Output.points(attempt.score()) : "",
            Double.isNaN(target) ? "" : Output.points(target)));
  }

  private void write(Size size, String stage, List<String> end) {
    List<String> cells = new ArrayList<>();
    cells.add(size.spec().name());
    cells.add(Integer.toString(size.blanket().pieceCount()));
    cells.add(Long.toString(size.run()));
    cells.add(stage);
    cells.addAll(end);
    results.row(cells);
    System.out.printf(Locale.ROOT, "%s%n", String.join(" ", cells));
  }
}
