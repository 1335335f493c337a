package lozengy.cli.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.WholeFiles;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changed;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.progress.LeastUpset;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.report.ReplanComparison;
import lozengy.report.solve.ChoiceText;
import lozengy.report.solve.SolveText;
import lozengy.solver.ProgressListener;
import lozengy.solver.SolveResult;
import lozengy.solver.Solving;
import lozengy.solver.alternatives.AlternativeSearch;
import lozengy.solver.alternatives.Alternatives;
import lozengy.solver.upset.LeastChanges;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a blanket. */
@Command(
    description = {
      "Plans a blanket: decides which yarn every round of every piece takes.",
      "",
      "From a brief, throw.yaml, it writes throw.arrangement.json and the chart throw.svg beside it"
          + " and prints a summary.",
      "",
      "From an arrangement it plans again: pieces made or joined and locks hold, and the rest stays"
          + " close to what it was.",
      "The result goes to throw-2.arrangement.json, or the next number that is free. What has"
          + " changed is told piece by piece.",
      "",
      "The same brief, seed and moves give the same bytes on every machine. Ctrl-C ends the search"
          + " and keeps the best arrangement so far.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy solve throw.yaml",
      "  lozengy solve throw.yaml --seconds 60 -o better.arrangement.json",
      "  lozengy solve throw.yaml --seed 7 --moves 2000000 --overwrite",
      "  lozengy solve throw.yaml --count 5 --within 1",
      "  lozengy solve - -o - < throw.yaml > throw.arrangement.json",
      "  lozengy solve throw.arrangement.json --lock r3c2 --ban triangles=PEA",
      "  lozengy solve throw.arrangement.json --without REE --compare-afresh",
      "  lozengy solve throw.arrangement.json --down 10",
      "  lozengy solve throw.arrangement.json --brief changed.yaml",
      "  lozengy solve throw.arrangement.json --move all",
      "  lozengy solve throw.yaml --pile finished.csv"
    })
final class SolveCommand implements Callable<Integer> {

  private final Terminal terminal;
  private final Solving solving;

  @Mixin private FileArgument file;
  @Mixin private OutputOptions output;
  @Mixin private ChangeOptions change;

  @Option(
      names = "--compare-afresh",
      description =
          "Solve once more without regard to the earlier plan, and tell how many rounds that would"
              + " have changed.")
  private boolean compareAfresh;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts; 1 if not said.")
  private Long seed;

  @Option(
      names = "--moves",
      paramLabel = "N",
      description =
          "Try that many moves at most; by the blanket's size if neither this nor --seconds is"
              + " said.")
  private Long moves;

  @Option(names = "--seconds", paramLabel = "N", description = "Search that long at most.")
  private Double seconds;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Use that many threads; all cores if not said.")
  private Integer threads;

  @Option(
      names = "--count",
      paramLabel = "N",
      description =
          "Find that many arrangements that really differ, each in a file of its own; 1 if not"
              + " said. Each takes as long as one.")
  private Integer count;

  @Option(
      names = "--within",
      paramLabel = "POINTS",
      description =
          "With --count: how far below the best of them each total may be; 1 point if not said.")
  private Double within;

  @Mixin private WalkersOption walkers;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  SolveCommand(Terminal terminal, Solving solving) {
    this.terminal = terminal;
    this.solving = solving;
  }

  @Override
  public Integer call() {
    SolveRequest request = SolveRequest.of(seed, moves, walkers.wanted(), seconds, threads);
    Source source = file.source();
    change.expectOwnInput(source);
    WholeFiles written = output.files();
    if (!source.isStandardInput()) {
      written.lookAt(source.path());
    }
    Document document = Inputs.read(source, terminal);
    Changed task = changed(document);
    Optional<Sequences> earlier = task.earlier();
    SolveTargets targets = SolveTargets.of(output, source, earlier.isPresent(), written);
    AlternativeFiles files = AlternativeFiles.of(targets, count, within);
    files.expect();
    SolveReport report = new SolveReport(terminal, targets, json.wanted());
    BooleanSupplier stop = terminal.stopSignal().listen();
    SolveResult result =
        solve(request, terminal.secondsSinceStart(), task.blanket(), earlier, stop);
    // What comes later stops no search.
    boolean stopped = stop.getAsBoolean();
    if (result instanceof SolveResult.Found found) {
      Optional<Alternatives> alternatives =
          alternatives(found.arrangement(), earlier, request, files, stop)
              .map(each -> withDiary(document, each));
      Arrangement arrangement =
          alternatives
              .map(each -> each.found().get(0))
              .orElse(withDiary(document, found.arrangement()));
      if (!json.wanted() || !targets.isStandardOutput()) {
        files.write(terminal, alternatives, arrangement);
      }
      Optional<ReplanComparison> again =
          task.before().map(before -> again(document, arrangement, before, request, stop));
      SolveText.Found told =
          new SolveText.Found(
              arrangement,
              again,
              alternatives.map(each -> new ChoiceText(each, files.count(), files.withinPoints())),
              alternatives.isPresent() || stopped ? Optional.empty() : found.unsettled(),
              files.written(alternatives.map(each -> each.found().size()).orElse(1)));
      report.tellFound(told, source, change.arguments(), stopped);
      return ExitCode.DONE.code();
    }
    return report.tellNotFound(task.blanket(), result).code();
  }

  private static Alternatives withDiary(Document document, Alternatives alternatives) {
    return new Alternatives(
        alternatives.found().stream().map(each -> withDiary(document, each)).toList(),
        alternatives.distances());
  }

  /** What was planned again goes on with the diary of the plan before. */
  private static Arrangement withDiary(Document document, Arrangement planned) {
    return document instanceof ArrangementDocument before
        ? planned.withDiary(
            before.arrangement().diary().plannedAgain(planned.blanket(), planned.sequences()))
        : planned;
  }

  /** What is to be solved: the document with the changes that the options ask for. */
  private Changed changed(Document document) {
    Blanket blanket = Inputs.blanket(document);
    Optional<Sequences> earlier =
        document instanceof ArrangementDocument answer
            ? Optional.of(answer.arrangement().sequences())
            : Optional.empty();
    List<Change> changes = change.changes(document, terminal);
    return changes.isEmpty()
        ? new Changed(blanket, earlier, earlier, Map.of())
        : Changes.apply(new CurrentPlan(blanket.brief(), earlier), changes);
  }

  private ReplanComparison again(
      Document document,
      Arrangement arrangement,
      Sequences before,
      SolveRequest request,
      BooleanSupplier stop) {
    StatedArrangement stated = ((ArrangementDocument) document).arrangement();
    Optional<Score> score =
        stated.sequences().complete()
            ? Optional.of(Scorer.score(stated.blanket(), stated.sequences(), Optional.empty()))
            : Optional.empty();
    Optional<Arrangement> afresh =
        compareAfresh
                && solve(request, 0, arrangement.blanket(), Optional.empty(), stop)
                    instanceof SolveResult.Found found
            ? Optional.of(found.arrangement())
            : Optional.empty();
    LeastUpset least =
        LeastChanges.of(arrangement.blanket(), before, arrangement.sequences(), stop);
    return ReplanComparison.of(arrangement, before, least, score, afresh);
  }

  private Optional<Alternatives> alternatives(
      Arrangement first,
      Optional<Sequences> earlier,
      SolveRequest request,
      AlternativeFiles files,
      BooleanSupplier stop) {
    if (files.count() == 1) {
      return Optional.empty();
    }
    ProgressLine line =
        terminal.showProgress()
            ? new ProgressLine(terminal, request.limits(first.blanket()))
            : null;
    ProgressListener listener = line == null ? progress -> {} : line;
    try {
      return Optional.of(
          AlternativeSearch.find(
              first,
              earlier,
              request.options(stop, listener),
              files.count(),
              files.withinPoints()));
    } finally {
      if (line != null) {
        line.clear();
      }
    }
  }

  private SolveResult solve(
      SolveRequest request,
      double spent,
      Blanket blanket,
      Optional<Sequences> earlier,
      BooleanSupplier stop) {
    if (!terminal.showProgress()) {
      ProgressListener nobody = progress -> {};
      return solving.solve(
          blanket, earlier, request.options(spent, blanket.pieceCount(), stop, nobody));
    }
    ProgressLine line = new ProgressLine(terminal, request.limits(blanket));
    try {
      return solving.solve(
          blanket, earlier, request.options(spent, blanket.pieceCount(), stop, line));
    } finally {
      line.clear();
    }
  }
}
