package lozengy.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.WalkerHarness;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Moves a second of one brief, plain and with a look: a symmetry, a fade, zones. Beside it stands
 * what a move has to touch: the rounds that may change and the pairs that each of them has. All are
 * measured in turns, on one thread, each walker at one temperature.
 */
@Command(
    name = "looks",
    mixinStandardHelpOptions = true,
    description = "Moves a second of a brief, plain and with a symmetry, a fade, zones.")
final class LookRuns implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of(
          "look",
          "brief",
          "temperature",
          "seed",
          "rounds",
          "free_rounds",
          "pairs_per_round",
          "moves",
          "seconds",
          "moves_per_s");

  /** Enough yarn to do without half of the shades in a half of the blanket. */
  private static final double SLACK_PERCENT = 100;

  private static final int CHUNK = 1 << 15;
  private static final long SETTLING_MOVES_PER_ROUND = 200;

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L, 4L, 5L);

  @Option(names = "--seconds", description = "Seconds of each run: ${DEFAULT-VALUE}.")
  private double seconds = 1;

  @Option(
      names = "--temperatures",
      split = ",",
      description = "In steps of the lightest repeat: ${DEFAULT-VALUE}.")
  private List<Double> temperatures = List.of(1.0, 0.1);

  @Mixin private Output output;

  private Results.Writer results;

  @Override
  public Integer call() {
    BriefSpec of = BriefSet.named("reference");
    BriefSpec spec =
        new BriefSpec(
            of.name(),
            of.layout(),
            of.rounds(),
            of.yarns(),
            SLACK_PERCENT,
            of.stock(),
            of.known(),
            of.rules(),
            of.finished());
    Brief brief = PlantedBrief.of(spec).blanket().brief();
    Map<String, Problem> problems = new LinkedHashMap<>();
    looks(brief)
        .forEach(
            (name, look) ->
                problems.put(
                    name,
                    ProblemCompiler.compile(Blanket.of(brief.withLook(look)), Optional.empty())));
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      // the first round compiles the program and counts for none
      temperatures.forEach(each -> problems.values().forEach(problem -> walk(problem, each, 0)));
      for (long seed : seeds) {
        for (double temperature : temperatures) {
          problems.forEach((name, problem) -> run(name, problem, temperature, seed));
        }
      }
    }
    return 0;
  }

  private static Map<String, Look> looks(Brief brief) {
    int darks = BriefSet.named("reference").yarns().dark();
    List<String> some = new ArrayList<>();
    for (int yarn = 0; yarn < brief.yarns().size(); yarn++) {
      boolean even = (yarn < darks ? yarn : yarn - darks) % 2 == 0;
      if (even) {
        some.add(brief.yarns().get(yarn).code());
      }
    }
    Map<String, Look> looks = new LinkedHashMap<>();
    looks.put("plain", Look.NONE);
    looks.put("mirror", Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT));
    looks.put("both mirrors", Look.NONE.withSymmetry(Symmetry.BOTH));
    looks.put(
        "fade",
        Look.NONE.withFade(
            new Fade(Fade.Towards.RIGHT, Fade.Order.DARK_TO_LIGHT, List.of(), Where.BORDERS)));
    looks.put(
        "zones",
        Look.NONE.withZones(
            List.of(new Look.Zone(new Where(List.of("row1..row8"), List.of()), some))));
    return looks;
  }

  private record Walked(long moves, double seconds) {}

  private Walked walk(Problem problem, double temperature, long seed) {
    WalkerHarness walker = new WalkerHarness(problem, seed);
    long settling = SETTLING_MOVES_PER_ROUND * problem.slots().count();
    walker.hold(temperature, settling);
    walker.walk(settling);
    walker.hold(temperature, Long.MAX_VALUE);
    Stopwatch watch = new Stopwatch();
    long moves = 0;
    while (watch.seconds() < seconds) {
      walker.walk(CHUNK);
      moves += CHUNK;
    }
    return new Walked(moves, watch.seconds());
  }

  private void run(String look, Problem problem, double temperature, long seed) {
    Walked walked = walk(problem, temperature, seed);
    List<String> cells =
        List.of(
            look,
            "reference",
            Double.toString(temperature),
            Long.toString(seed),
            Integer.toString(problem.slots().count()),
            Integer.toString(problem.slots().free().length),
            String.format(Locale.ROOT, "%.2f", pairsPerRound(problem)),
            Long.toString(walked.moves()),
            Output.seconds(walked.seconds()),
            Long.toString(Math.round(walked.moves() / walked.seconds())));
    results.row(cells);
    System.out.println(String.join(" ", cells));
  }

  /** Pairs with rounds of other pieces that a change of a free round has to look at, on average. */
  private static double pairsPerRound(Problem problem) {
    int[] light = problem.costs().pairs().lightStart();
    int[] seams = problem.costs().pairs().seamStart();
    long pairs = 0;
    for (int slot : problem.slots().free()) {
      pairs += light[slot + 1] - light[slot] + seams[slot + 1] - seams[slot];
    }
    return (double) pairs / problem.slots().free().length;
  }
}
