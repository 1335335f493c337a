package lozengy.cli.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lozengy.cli.ExitCode;
import lozengy.cli.Json;
import lozengy.cli.Terminal;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.report.Chart;
import lozengy.cli.report.ChartOptions;
import lozengy.cli.report.Summary;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.solver.ProgressListener;
import lozengy.solver.SolveResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a blanket. */
@Command(
    name = "solve",
    description = {
      "Plans a blanket: decides which yarn every round of every piece takes.",
      "",
      "From a brief, throw.yaml, it writes throw.arrangement.json and the chart throw.svg beside it"
          + " and prints a summary.",
      "",
      "From an arrangement it plans again: pieces made or joined and locks hold, and the rest stays"
          + " close to what it was.",
      "The result goes to throw-2.arrangement.json, or the next number that is free.",
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
      "  lozengy solve - -o - < throw.yaml > throw.arrangement.json"
    })
final class SolveCommand implements Callable<Integer> {

  private final Terminal terminal;
  private final Solving solving;

  @Mixin private FileArgument file;
  @Mixin private OutputOptions output;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts; 1 if not said.")
  private Long seed;

  @Option(names = "--moves", paramLabel = "N", description = "Try that many moves at most.")
  private Long moves;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description = "Search that long at most; 1.5 if neither this nor --moves is said.")
  private Double seconds;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Use that many threads; all cores if not said.")
  private Integer threads;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  SolveCommand(Terminal terminal, Solving solving) {
    this.terminal = terminal;
    this.solving = solving;
  }

  @Override
  public Integer call() {
    SolveRequest request = SolveRequest.of(seed, moves, seconds, threads);
    Source source = file.source();
    Document document = Inputs.read(source, terminal);
    Optional<Sequences> earlier =
        document instanceof ArrangementDocument answer
            ? Optional.of(answer.arrangement().sequences())
            : Optional.empty();
    SolveTargets targets = SolveTargets.of(output, source, earlier.isPresent());
    targets.expect();
    BooleanSupplier stop = terminal.stopSignal().listen();
    SolveResult result = solve(request, Inputs.blanket(document), earlier, stop);
    if (result instanceof SolveResult.Found found) {
      Arrangement arrangement = found.arrangement();
      targets.write(
          terminal,
          ArrangementWriter.text(arrangement).getBytes(StandardCharsets.UTF_8),
          () -> Chart.svg(arrangement, ChartOptions.PLAIN));
      tellFound(arrangement, source, targets, stop.getAsBoolean());
      return ExitCode.DONE.code();
    }
    return tellNotFound(result, targets).code();
  }

  private SolveResult solve(
      SolveRequest request, Blanket blanket, Optional<Sequences> earlier, BooleanSupplier stop) {
    if (!terminal.showProgress()) {
      ProgressListener nobody = progress -> {};
      return solving.solve(blanket, earlier, request.options(stop, nobody));
    }
    ProgressLine line = new ProgressLine(terminal.err());
    try {
      return solving.solve(blanket, earlier, request.options(stop, line));
    } finally {
      line.clear();
    }
  }

  private void tellFound(
      Arrangement arrangement, Source source, SolveTargets targets, boolean stopped) {
    PrintWriter words = words(targets);
    if (json.wanted() && !targets.isStandardOutput()) {
      terminal.out().println(Json.text(foundObject(arrangement, targets)));
      return;
    }
    words.print(
        Summary.text(
            arrangement,
            source.isStandardInput() ? Optional.empty() : Optional.of(source.argument())));
    if (stopped) {
      words.println("Stopped early; this is the best so far.");
    }
    targets.arrangement().ifPresent(path -> words.println("Wrote " + path));
    targets.chart().ifPresent(path -> words.println("Wrote " + path));
  }

  private static Object foundObject(Arrangement arrangement, SolveTargets targets) {
    return Json.object(
        "outcome", "found",
        "arrangement", targets.arrangement().map(Object::toString),
        "chart", targets.chart().map(Object::toString),
        "summary", Summary.data(arrangement));
  }

  private ExitCode tellNotFound(SolveResult result, SolveTargets targets) {
    if (result instanceof SolveResult.Impossible impossible) {
      tell("impossible", "No arrangement fits this brief. Proved:", impossible.reasons(), targets);
      return ExitCode.IMPOSSIBLE;
    }
    tell(
        "unfinished",
        "No arrangement was found in the time given, and nothing is proved. In the way stood:",
        ((SolveResult.Unfinished) result).nearest(),
        targets);
    return ExitCode.UNFINISHED;
  }

  private void tell(String outcome, String head, List<String> why, SolveTargets targets) {
    if (json.wanted()) {
      terminal.out().println(Json.text(Json.object("outcome", outcome, "reasons", why)));
      return;
    }
    PrintWriter words = words(targets);
    words.println(head);
    why.forEach(each -> words.println("  " + each));
  }

  /** Where words go: not between the bytes of an arrangement on standard output. */
  private PrintWriter words(SolveTargets targets) {
    return targets.isStandardOutput() ? terminal.err() : terminal.out();
  }
}
