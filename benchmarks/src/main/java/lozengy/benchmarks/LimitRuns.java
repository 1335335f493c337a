package lozengy.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.ChocoContender;
import lozengy.benchmarks.peer.Contender;
import lozengy.benchmarks.peer.CpSatContender;
import lozengy.benchmarks.peer.Peer;
import lozengy.benchmarks.record.Results;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Whether anything is left to gain close to what the search ends with: a peer goes on from it, and
 * what it gains is told with how far from there it lies. Rounds that changed without their layer
 * showing any yarn more or less often are exchanges; the others changed counts.
 */
@Command(
    name = "limit",
    mixinStandardHelpOptions = true,
    description = "Lets a peer go on from our arrangement, and tells what it gains and by what.")
final class LimitRuns implements Callable<Integer> {

  private static final List<Part> PARTS =
      List.of(Part.BALANCE, Part.SPREAD, Part.CONTRAST, Part.LEEWAY);

  private static final List<String> COLUMNS =
      List.of(
          "brief",
          "pieces",
          "of_seed",
          "moves",
          "peer",
          "peer_limit_s",
          "peer_s",
          "proof",
          "from",
          "to",
          "gain",
          "pieces_changed",
          "rounds_changed",
          "counts_changed",
          "balance_gain",
          "spread_gain",
          "contrast_gain",
          "leeway_gain");

  @Option(names = "--briefs", split = ",", description = "Names of briefs.")
  private List<String> briefs = BriefSet.all().stream().map(BriefSpec::name).toList();

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L);

  @Option(
      names = "--moves",
      description = "Moves of our solve, as many as 10 s take: ${DEFAULT-VALUE}.")
  private long moves = 150_000_000;

  @Option(names = "--peer", description = "cp-sat or choco: ${DEFAULT-VALUE}.")
  private String peer = "cp-sat";

  @Option(names = "--peer-limit", description = "Seconds of the peer: ${DEFAULT-VALUE}.")
  private double peerLimit = 60;

  @Option(names = "--threads", description = "Threads of both: the cores.")
  private int threads = Runtime.getRuntime().availableProcessors();

  @Mixin private Output output;

  private Results.Writer results;

  @Override
  public Integer call() {
    List<List<String>> done =
        output.rowsBefore().stream()
            .map(row -> List.of(row.get("brief"), row.get("of_seed"), row.get("peer")))
            .toList();
    Peer improver =
        switch (peer) {
          case "cp-sat" -> new CpSatContender(threads);
          case "choco" -> new ChocoContender(threads);
          default -> throw new IllegalArgumentException("there is no peer " + peer);
        };
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      for (String name : briefs) {
        PlantedBrief made = PlantedBrief.of(BriefSet.named(name));
        for (long seed : seeds) {
          if (!done.contains(List.of(name, Long.toString(seed), peer))) {
            run(made, improver, seed);
          }
        }
      }
    }
    return 0;
  }

  private void run(PlantedBrief made, Peer improver, long seed) {
    Blanket blanket = made.blanket();
    SolveOptions options =
        SolveOptions.defaults().withSeed(seed).withMoves(moves).withThreads(threads);
    if (!(Solver.solve(blanket, Optional.empty(), options) instanceof SolveResult.Found found)) {
      throw new IllegalStateException("nothing was found for " + made.spec().name());
    }
    Arrangement ours = found.arrangement();
    Contender.Run run = improver.from(blanket, ours.sequences(), seed, peerLimit);
    Sequences best = ours.sequences();
    Score score = ours.score();
    for (Contender.Incumbent each : run.found()) {
      Score other = Scorer.score(blanket, each.sequences(), Optional.empty());
      boolean valid = Check.faults(blanket, each.sequences()).isEmpty();
      if (valid && other.total() > score.total()) {
        best = each.sequences();
        score = other;
      }
    }
    List<String> cells =
        new ArrayList<>(
            List.of(
                made.spec().name(),
                Integer.toString(blanket.pieceCount()),
                Long.toString(seed),
                Long.toString(moves),
                improver.name(),
                Double.toString(peerLimit),
                Output.seconds(run.seconds()),
                run.proof().word(),
                Output.points(ours.score().total()),
                Output.points(score.total()),
                Output.points(score.total() - ours.score().total())));
    cells.addAll(changes(blanket, ours.sequences(), best));
    for (Part part : PARTS) {
      cells.add(Output.points(score.parts().get(part) - ours.score().parts().get(part)));
    }
    results.row(cells);
    System.out.printf(
        Locale.ROOT,
        "%-16s seed %d: %s, and %s more in %.0f s of %s%n",
        made.spec().name(),
        seed,
        cells.get(8),
        cells.get(10),
        run.seconds(),
        improver.name());
  }

  /** Pieces and rounds that changed, and by how many the counts of yarns in layers did. */
  private static List<String> changes(Blanket blanket, Sequences before, Sequences after) {
    int pieces = 0;
    int rounds = 0;
    int[][] counts = new int[blanket.layerCount()][blanket.yarnCount()];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int own = 0;
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int layer = blanket.roundCount(piece) - 1 - round;
        counts[layer][before.yarn(piece, round)]--;
        counts[layer][after.yarn(piece, round)]++;
        own += before.yarn(piece, round) == after.yarn(piece, round) ? 0 : 1;
      }
      rounds += own;
      pieces += own > 0 ? 1 : 0;
    }
    int changed = 0;
    for (int[] layer : counts) {
      for (int difference : layer) {
        changed += Math.max(0, difference);
      }
    }
    return List.of(Integer.toString(pieces), Integer.toString(rounds), Integer.toString(changed));
  }
}
