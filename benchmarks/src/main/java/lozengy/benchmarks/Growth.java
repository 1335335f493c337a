package lozengy.benchmarks;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Contender;
import lozengy.benchmarks.peer.LozengyContender;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefReader;
import lozengy.model.check.Check;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * How time grows with the number of pieces: every stage from the brief's file to the arrangement's,
 * and the least time limit with which a blanket's score comes as near as asked to what the smallest
 * reaches.
 *
 * <p>The limit is found by doubling it until the score is reached and then halving the ratio to the
 * last that failed, twice: it is known within a factor of 2^(1/4).
 */
@Command(
    name = "growth",
    mixinStandardHelpOptions = true,
    description = "Growth with the number of pieces, within 1 GB of heap.")
public final class Growth implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of("brief", "pieces", "seed", "stage", "limit_s", "seconds", "valid", "score", "target");

  private static final int HALVINGS = 2;

  @Option(names = "--briefs", split = ",", description = "Names of briefs, smallest first.")
  private List<String> briefs = BriefSet.growth().stream().map(BriefSpec::name).toList();

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L);

  @Option(
      names = "--reference-limit",
      description = "Seconds for the smallest's score: ${DEFAULT-VALUE}.")
  private double referenceLimit = 10;

  @Option(names = "--within", description = "Points below that score: ${DEFAULT-VALUE}.")
  private double within = 2;

  @Option(names = "--shortest", description = "First limit in seconds: ${DEFAULT-VALUE}.")
  private double shortest = 0.1;

  @Option(names = "--longest", description = "Last limit in seconds: ${DEFAULT-VALUE}.")
  private double longest = 300;

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
      for (long seed : seeds) {
        OptionalDouble target = OptionalDouble.empty();
        for (String name : briefs) {
          target = OptionalDouble.of(measure(BriefSet.named(name), seed, target));
        }
      }
    } finally {
      Files.delete(folder);
    }
    return 0;
  }

  /** Measures a size; returns the score to reach, which the first size sets. */
  private double measure(BriefSpec spec, long seed, OptionalDouble given) throws IOException {
    Path file = DumpBriefs.write(folder, PlantedBrief.of(spec));
    Stopwatch reading = new Stopwatch();
    Brief brief = BriefReader.read(file);
    double readSeconds = reading.seconds();
    Files.delete(file);
    Stopwatch making = new Stopwatch();
    Blanket blanket = Blanket.of(brief);
    Size size = new Size(spec, blanket, seed);
    stage(size, "read", readSeconds);
    stage(size, "make-ready", making.seconds());
    attempt(size, "first", new LozengyContender(threads, true), longest, Double.NaN);
    Contender lozengy = new LozengyContender(threads, false);
    double target =
        given.isPresent()
            ? given.getAsDouble()
            : attempt(size, "reference", lozengy, referenceLimit, Double.NaN).score() - within;
    Attempt reached = climb(size, lozengy, target);
    if (reached.sequences().isPresent()) {
      afterwards(size, reached.sequences().get());
    }
    return target;
  }

  private record Size(BriefSpec spec, Blanket blanket, long seed) {}

  /** A solve and what came of it; the score is NaN where nothing valid did. */
  private record Attempt(double seconds, double score, Optional<Sequences> sequences) {}

  /** The shortest solve found that reaches the target, or the last that was tried. */
  private Attempt climb(Size size, Contender lozengy, double target) {
    double failed = 0;
    double limit = shortest;
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
    return attempt;
  }

  private Attempt attempt(
      Size size, String stage, Contender contender, double limit, double target) {
    System.gc();
    Contender.Run run = contender.run(size.blanket(), size.seed(), limit);
    Optional<Sequences> found =
        run.found().stream()
            .map(Contender.Found::sequences)
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

  /** What follows a solve, each stage once. */
  private void afterwards(Size size, Sequences sequences) throws IOException {
    Stopwatch checking = new Stopwatch();
    boolean valid = Check.faults(size.blanket(), sequences).isEmpty();
    stage(size, valid ? "check" : "check-failed", checking.seconds());
    Stopwatch scoring = new Stopwatch();
    Score score = Scorer.score(size.blanket(), sequences, Optional.empty());
    stage(size, "score", scoring.seconds());
    Arrangement arrangement =
        new Arrangement(
            size.blanket(), sequences, Optional.empty(), score, Optional.empty(), Optional.empty());
    Path file = folder.resolve("arrangement.json");
    Stopwatch writing = new Stopwatch();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      ArrangementWriter.write(out, arrangement);
    }
    stage(size, "write", writing.seconds());
    Stopwatch reading = new Stopwatch();
    boolean same = ArrangementReader.read(file).sequences().equals(sequences);
    stage(size, same ? "read-back" : "read-back-failed", reading.seconds());
    Files.delete(file);
  }

  private void stage(Size size, String stage, double seconds) {
    write(size, stage, List.of("", Output.seconds(seconds), "", "", ""));
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
    cells.add(Long.toString(size.seed()));
    cells.add(stage);
    cells.addAll(end);
    results.row(cells);
    System.out.printf(Locale.ROOT, "%s%n", String.join(" ", cells));
  }
}
