package lozengy.benchmarks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.ChocoContender;
import lozengy.benchmarks.peer.Contender;
import lozengy.benchmarks.peer.CpSatContender;
import lozengy.benchmarks.peer.LozengyContender;
import lozengy.benchmarks.record.Results;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.model.wording.FaultWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Runs whole solves and writes the score over time. Whatever is found, by whom ever, is judged by
 * the model's check and score, after the run has ended.
 *
 * <p>Lozengy plans for the time that it is given, so it runs once for each limit. The peers run
 * once for the longest limit, and each improvement is written with its time.
 */
@Command(
    name = "whole",
    mixinStandardHelpOptions = true,
    description = "Whole solves, Lozengy against general-purpose solvers.")
public final class WholeSolve implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of(
          "brief",
          "pieces",
          "border_yarns",
          "slack_percent",
          "solver",
          "seed",
          "limit_s",
          "event",
          "seconds",
          "valid",
          "score",
          "balance",
          "spread",
          "contrast",
          "variety",
          "leeway",
          "bound",
          "proof");

  /** What tells a run from all others. */
  private static final List<String> RUN = List.of("brief", "solver", "seed", "limit_s");

  /** The parts that all briefs of the set ask for, in the order of their columns. */
  private static final List<Part> PARTS =
      List.of(Part.BALANCE, Part.SPREAD, Part.CONTRAST, Part.VARIETY, Part.LEEWAY);

  private static final double WARM_UP_LIMIT = 2;

  @Option(names = "--briefs", split = ",", description = "Names of briefs; by default the set.")
  private List<String> briefs = BriefSet.all().stream().map(BriefSpec::name).toList();

  @Option(
      names = "--solvers",
      split = ",",
      description = "Of ${DEFAULT-VALUE}; lozengy-first stops at its first valid arrangement.",
      defaultValue = "lozengy-first,lozengy,cp-sat,choco")
  private List<String> solvers;

  @Option(names = "--seeds", split = ",", description = "Lozengy's seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L, 4L, 5L);

  @Option(names = "--peer-seeds", split = ",", description = "Peers' seeds: ${DEFAULT-VALUE}.")
  private List<Long> peerSeeds = List.of(1L);

  @Option(
      names = "--limits",
      split = ",",
      description = "Lozengy's limits in seconds: ${DEFAULT-VALUE}.")
  private List<Double> limits = List.of(0.3, 1.0, 10.0);

  @Option(names = "--peer-limit", description = "The peers' limit in seconds: ${DEFAULT-VALUE}.")
  private double peerLimit = 60;

  @Option(
      names = "--first-limit",
      description = "Limit of lozengy-first in seconds: ${DEFAULT-VALUE}.")
  private double firstLimit = 30;

  @Option(names = "--threads", description = "Threads for each solver: ${DEFAULT-VALUE}.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Option(names = "--workers", description = "Workers of CP-SAT, if not as many as threads.")
  private Integer workers;

  @Mixin private Output output;

  private Results.Writer results;
  private final Set<List<String>> done = new HashSet<>();

  @Override
  public Integer call() {
    List<BriefSpec> specs = briefs.stream().map(BriefSet::named).toList();
    List<Contender> contenders = solvers.stream().map(this::contender).toList();
    warmUp(contenders);
    output.rowsBefore().stream()
        .filter(row -> row.get("event").equals("end"))
        .forEach(row -> done.add(RUN.stream().map(row::get).toList()));
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      System.out.println(estimate(contenders));
      for (BriefSpec spec : specs) {
        PlantedBrief made = PlantedBrief.of(spec);
        contenders.forEach(contender -> runs(made, contender));
      }
    }
    return 0;
  }

  private Contender contender(String name) {
    return switch (name) {
      case "lozengy" -> new LozengyContender(threads, false);
      case "lozengy-first" -> new LozengyContender(threads, true);
      case "cp-sat" -> new CpSatContender(workers == null ? threads : workers);
      case "choco" -> new ChocoContender(threads);
      default -> throw new IllegalArgumentException("there is no solver " + name);
    };
  }

  /** Loads and compiles everything once, so that no solver's first brief pays for it. */
  private static void warmUp(List<Contender> contenders) {
    PlantedBrief small = PlantedBrief.of(BriefSet.named("cushion"));
    contenders.forEach(contender -> contender.run(small.blanket(), 0, WARM_UP_LIMIT));
  }

  private List<Double> limits(Contender contender) {
    return switch (contender.name()) {
      case "lozengy" -> limits;
      case "lozengy-first" -> List.of(firstLimit);
      default -> List.of(peerLimit);
    };
  }

  private List<Long> seeds(Contender contender) {
    return contender instanceof LozengyContender ? seeds : peerSeeds;
  }

  /** How long what is left takes at most, by the limits; what ends by itself is not counted. */
  private String estimate(List<Contender> contenders) {
    List<String> parts = new ArrayList<>();
    double all = 0;
    for (Contender contender : contenders) {
      if (contender.name().equals("lozengy-first")) {
        parts.add("lozengy-first ends by itself");
        continue;
      }
      double left = 0;
      for (String brief : briefs) {
        for (double limit : limits(contender)) {
          for (long seed : seeds(contender)) {
            left += done.contains(key(brief, contender, seed, limit)) ? 0 : limit;
          }
        }
      }
      parts.add(String.format(Locale.ROOT, "%s %.1f", contender.name(), left / 60));
      all += left;
    }
    return String.format(
        Locale.ROOT, "by the limits %.1f minutes: %s", all / 60, String.join(", ", parts));
  }

  private static List<String> key(String brief, Contender contender, long seed, double limit) {
    return List.of(brief, contender.name(), Long.toString(seed), Double.toString(limit));
  }

  private void runs(PlantedBrief made, Contender contender) {
    for (double limit : limits(contender)) {
      for (long seed : seeds(contender)) {
        run(made, contender, seed, limit);
      }
    }
  }

  private void run(PlantedBrief made, Contender contender, long seed, double limit) {
    if (done.contains(key(made.spec().name(), contender, seed, limit))) {
      return;
    }
    System.gc();
    Contender.Run run = contender.run(made.blanket(), seed, limit);
    List<String> start =
        List.of(
            made.spec().name(),
            Integer.toString(made.blanket().pieceCount()),
            Integer.toString(made.spec().borderYarns()),
            Double.toString(made.spec().slackPercent()),
            contender.name(),
            Long.toString(seed),
            Double.toString(limit));
    List<String> nothing = List.of("", "", "", "", "", "", "", "", "");
    row(start, "stated", run.statedSeconds(), nothing);
    Optional<Judged> best = Optional.empty();
    for (Contender.Incumbent found : run.found()) {
      Judged judged = Judged.of(made, found);
      row(start, "found", found.seconds(), judged.cells(OptionalDouble.empty(), ""));
      if (judged.valid()
          && best.stream().allMatch(b -> b.score().total() < judged.score().total())) {
        best = Optional.of(judged);
      }
    }
    List<String> end = new ArrayList<>(nothing);
    end.set(7, Output.points(run.bound()));
    end.set(8, run.proof().word());
    row(
        start,
        "end",
        run.seconds(),
        best.map(judged -> judged.cells(run.bound(), run.proof().word())).orElse(end));
    System.out.printf(
        Locale.ROOT,
        "%-16s %-14s seed %d, %6.1f s: %s%n",
        made.spec().name(),
        contender.name(),
        seed,
        run.seconds(),
        best.map(judged -> Output.points(judged.score().total())).orElse("nothing valid"));
  }

  private void row(List<String> start, String event, double seconds, List<String> end) {
    List<String> cells = new ArrayList<>(start);
    cells.add(event);
    cells.add(Output.seconds(seconds));
    cells.addAll(end);
    results.row(cells);
  }

  /** What check and score say of sequences. */
  private record Judged(boolean valid, Score score) {

    static Judged of(PlantedBrief made, Contender.Incumbent found) {
      List<Fault> faults = Check.faults(made.blanket(), found.sequences());
      FaultWords words = new FaultWords(made.blanket());
      faults.forEach(fault -> System.out.println("  fault: " + words.of(fault)));
      return new Judged(
          faults.isEmpty(), Scorer.score(made.blanket(), found.sequences(), Optional.empty()));
    }

    List<String> cells(OptionalDouble bound, String proof) {
      List<String> cells = new ArrayList<>();
      cells.add(valid ? "yes" : "no");
      cells.add(Output.points(score.total()));
      for (Part part : PARTS) {
        cells.add(Output.points(score.parts().get(part)));
      }
      cells.add(Output.points(bound));
      cells.add(proof);
      return cells;
    }
  }
}
