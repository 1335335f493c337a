package lozengy.benchmarks;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import lozengy.benchmarks.peer.CpSatPack;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.model.blanket.Blanket;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.PackOptions;
import lozengy.solver.pack.Packer;
import lozengy.solver.pack.Packing;
import lozengy.solver.pack.Packing.Packed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * The packs of briefs, beside what CP-SAT finds for the same choice of balls without the score; and
 * a pack of one ball less, which CP-SAT is to refute.
 */
@Command(
    name = "packs",
    mixinStandardHelpOptions = true,
    description = "Packs of briefs, beside CP-SAT on the same choice of balls.")
final class PackRuns implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of(
          "brief",
          "balls",
          "proved_least",
          "floor",
          "score",
          "wanted",
          "seconds",
          "cp_sat_balls",
          "cp_sat_bound",
          "cp_sat_proof",
          "cp_sat_seconds",
          "one_less_proof",
          "one_less_seconds");

  @Parameters(description = "Briefs; by default three of the examples.")
  private List<Path> briefs =
      List.of(
          Path.of("examples", "saltmarsh-throw.yaml"),
          Path.of("examples", "cushion.yaml"),
          Path.of("examples", "stash-blanket.yaml"));

  @Option(names = "--moves", description = "Moves of each plan of ours: ${DEFAULT-VALUE}.")
  private long moves = 200_000;

  @Option(names = "--seconds", description = "Limit of CP-SAT: ${DEFAULT-VALUE}.")
  private double seconds = 60;

  @Option(names = "--workers", description = "Threads of both: ${DEFAULT-VALUE}.")
  private int workers = 2;

  @Mixin private Output output;

  @Override
  public Integer call() {
    try (Results.Writer results = output.open(COLUMNS)) {
      for (Path brief : briefs) {
        results.row(row(brief));
      }
    }
    return 0;
  }

  private List<String> row(Path brief) {
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.read(brief)));
    PackOptions options =
        new PackOptions(
            PackGoal.BALLS,
            OptionalDouble.empty(),
            PackOptions.USUAL_MARGIN,
            PackOptions.USUAL_BEND,
            Optional.empty(),
            1,
            OptionalLong.of(moves),
            workers,
            () -> false,
            attempt -> {});
    Stopwatch watch = new Stopwatch();
    Packing packing = Packer.find(blanket, options);
    double packed = watch.seconds();
    if (!(packing instanceof Packed found)) {
      throw new IllegalStateException("no pack of " + brief + " was found: " + packing);
    }
    CpSatPack.Answer peer =
        CpSatPack.fewest(
            blanket,
            PackOptions.USUAL_BEND,
            OptionalLong.empty(),
            Optional.empty(),
            workers,
            seconds);
    CpSatPack.Answer less =
        CpSatPack.fewest(
            blanket,
            PackOptions.USUAL_BEND,
            OptionalLong.of(found.balls() - 1L),
            Optional.empty(),
            workers,
            seconds);
    return Arrays.asList(
        brief.getFileName().toString(),
        Integer.toString(found.balls()),
        Boolean.toString(found.proof().least()),
        Long.toString(found.proof().floor()),
        number(found.score()),
        number(found.wanted()),
        number(packed),
        peer.balls().isPresent() ? Long.toString(peer.balls().getAsLong()) : "",
        Long.toString(peer.bound()),
        peer.proof().name().toLowerCase(Locale.ROOT),
        number(peer.seconds()),
        less.proof().name().toLowerCase(Locale.ROOT),
        number(less.seconds()));
  }

  private static String number(double number) {
    return String.format(Locale.ROOT, "%.2f", number);
  }
}
