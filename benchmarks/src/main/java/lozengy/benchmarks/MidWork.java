package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.benchmarks.WorksInProgress.Work;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.benchmarks.peer.Contender;
import lozengy.benchmarks.peer.CpSatContender;
import lozengy.benchmarks.peer.Stopwatch;
import lozengy.benchmarks.record.Results;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changed;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.progress.LeastUpset;
import lozengy.model.progress.Upset;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.problem.ProblemCompiler;
import lozengy.solver.search.Repair;
import lozengy.solver.upset.LeastChanges;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Works in progress planned again, beside CP-SAT on the same objective, which is given a repaired
 * plan to begin with; a blanket in the middle of the work with a shade gone, planned again, afresh,
 * and with its made pieces on a pile; and a pile with nothing left to be worked.
 */
@Command(
    name = "midwork",
    mixinStandardHelpOptions = true,
    description = "Plans again in the middle of the work, and lays out a pile.")
public final class MidWork implements Callable<Integer> {

  private static final List<String> COLUMNS =
      List.of(
          "what",
          "solver",
          "pieces",
          "on_pile",
          "seed",
          "limit_s",
          "seconds",
          "outcome",
          "valid",
          "worked_altered",
          "rounds_free",
          "rounds_changed",
          "rounds_least",
          "least_exact",
          "score",
          "objective",
          "moves",
          "moves_per_s");

  /** Enough to do without one of the yarns. */
  private static final double SLACK_PERCENT = 20;

  private static final long MOVES_OF_FIRST_PLAN = 2_000_000;

  @Option(names = "--seeds", split = ",", description = "Seeds: ${DEFAULT-VALUE}.")
  private List<Long> seeds = List.of(1L, 2L, 3L, 4L, 5L);

  @Option(names = "--limit", description = "Seconds of each solve: ${DEFAULT-VALUE}.")
  private double limit = 1.5;

  @Option(
      names = "--peer-limit",
      description = "Seconds that CP-SAT has for each work, 0 for none: ${DEFAULT-VALUE}.")
  private double peerLimit = 60;

  @Option(
      names = "--only",
      description = "Only works whose names contain this: ${DEFAULT-VALUE}.",
      defaultValue = "")
  private String only;

  @Option(names = "--joined", description = "Pieces that are joined: ${DEFAULT-VALUE}.")
  private int joined = 40;

  @Option(names = "--made", description = "Pieces that are made: ${DEFAULT-VALUE}.")
  private int made = 60;

  @Option(names = "--pile", description = "A brief that is a pile: ${DEFAULT-VALUE}.")
  private Path pile = Path.of("examples", "winter-class.yaml");

  @Mixin private Output output;

  private Results.Writer results;

  @Override
  public Integer call() throws IOException {
    try (Results.Writer writer = output.open(COLUMNS)) {
      results = writer;
      Blanket whole = Blanket.of(BriefReader.read(pile));
      for (long seed : seeds) {
        for (Work work : WorksInProgress.all(seed)) {
          if (work.name().contains(only)) {
            beside(work, seed);
          }
        }
        if (!only.isEmpty()) {
          continue;
        }
        midWork(seed);
        solve("pile", whole, Optional.empty(), whole.open(), seed);
      }
    }
    return 0;
  }

  private static BriefSpec spec() {
    BriefSpec of = BriefSet.named("reference");
    return new BriefSpec(
        "mid-work",
        of.layout(),
        of.rounds(),
        of.yarns(),
        SLACK_PERCENT,
        of.stock(),
        of.known(),
        of.rules(),
        of.finished());
  }

  private void midWork(long seed) {
    Blanket blanket = PlantedBrief.of(spec()).blanket();
    SolveOptions first =
        SolveOptions.defaults().withSeed(seed).withMoves(MOVES_OF_FIRST_PLAN).withThreads(2);
    Arrangement plan =
        ((SolveResult.Found) Solver.solve(blanket, Optional.empty(), first)).arrangement();
    Brief marked = WorksInProgress.begun(plan, joined, made, seed);
    CurrentPlan current = new CurrentPlan(marked, Optional.of(plan.sequences()));
    String gone = blanket.yarn(blanket.yarnCount() - 1).code();
    Change without = new Change.Without("without", gone);
    Changed again = Changes.apply(current, List.of(without));
    Sequences before = plan.sequences();
    solve("again", again.blanket(), again.earlier(), before, seed);
    solve("afresh", again.blanket(), Optional.empty(), before, seed);
    Changed moved =
        Changes.apply(current, List.of(without, new Change.Move("move", List.of("all"))));
    solve("again-made-may-move", moved.blanket(), moved.earlier(), before, seed);
  }

  private void beside(Work work, long seed) {
    Sequences before = work.before();
    Sequences ours = solve(work.name(), work.blanket(), Optional.of(before), before, seed);
    if (peerLimit <= 0 || ours == null) {
      return;
    }
    Sequences start =
        Repair.of(ProblemCompiler.compile(work.blanket(), Optional.of(before)), seed).orElse(ours);
    Contender.Run run = new CpSatContender(2).again(work.blanket(), before, start, seed, peerLimit);
    List<String> cells = named(work.name(), "cp-sat", work.blanket(), seed, peerLimit);
    cells.add(Output.seconds(run.seconds()));
    cells.add(run.proof().word());
    if (run.found().isEmpty()) {
      cells.addAll(Collections.nCopies(COLUMNS.size() - cells.size(), ""));
    } else {
      tell(cells, work.blanket(), before, run.found().get(run.found().size() - 1).sequences());
      cells.addAll(List.of("", ""));
    }
    write(cells);
  }

  /** Solves, and gives what was found; null where nothing was. */
  private Sequences solve(
      String what, Blanket blanket, Optional<Sequences> earlier, Sequences before, long seed) {
    SolveOptions options = SolveOptions.defaults().withSeed(seed).withSeconds(limit).withThreads(2);
    Stopwatch watch = new Stopwatch();
    SolveResult result = Solver.solve(blanket, earlier, options);
    double seconds = watch.seconds();
    List<String> cells = named(what, "lozengy", blanket, seed, limit);
    cells.add(Output.seconds(seconds));
    cells.add(result.getClass().getSimpleName());
    Sequences now = null;
    if (result instanceof SolveResult.Found found) {
      now = found.arrangement().sequences();
      long moves = found.arrangement().solved().orElseThrow().moves();
      tell(cells, blanket, before, now);
      cells.add(Long.toString(moves));
      cells.add(Long.toString(Math.round(moves / seconds)));
    } else {
      cells.addAll(Collections.nCopies(COLUMNS.size() - cells.size(), ""));
    }
    write(cells);
    return now;
  }

  private static List<String> named(
      String what, String solver, Blanket blanket, long seed, double seconds) {
    return new ArrayList<>(
        List.of(
            what,
            solver,
            Integer.toString(blanket.pieceCount()),
            Integer.toString(blanket.pile().count()),
            Long.toString(seed),
            Double.toString(seconds)));
  }

  private static void tell(List<String> cells, Blanket blanket, Sequences before, Sequences now) {
    Upset upset = Upset.of(blanket, before, now);
    LeastUpset least = LeastChanges.of(blanket, before, now, () -> false);
    boolean planned = before.complete();
    Score score = Scorer.score(blanket, now, planned ? Optional.of(before) : Optional.empty());
    cells.add(Check.faults(blanket, now).isEmpty() ? "yes" : "no");
    cells.add(Integer.toString(altered(blanket, before, now)));
    cells.add(Integer.toString(upset.freeRounds()));
    cells.add(Integer.toString(upset.changedRounds()));
    cells.add(Integer.toString(least.rounds()));
    cells.add(least.exact() ? "yes" : "no");
    cells.add(Output.points(score.total()));
    cells.add(Output.points(score.objective()));
  }

  private void write(List<String> cells) {
    results.row(cells);
    System.out.println(String.join(" ", cells));
  }

  /** Worked pieces that are not as they were: at their places, or missing from the pile. */
  private static int altered(Blanket blanket, Sequences before, Sequences now) {
    int altered = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      boolean fixed = blanket.state(piece) != PieceState.PLANNED;
      altered += fixed && !Arrays.equals(before.of(piece), now.of(piece)) ? 1 : 0;
    }
    PilePlacement laid = PilePlacement.of(blanket, now);
    for (int stack = 0; stack < blanket.pile().stacks().size(); stack++) {
      altered += laid.missing(stack);
    }
    return altered;
  }
}
