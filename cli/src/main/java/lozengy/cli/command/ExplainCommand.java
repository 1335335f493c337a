package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Documents;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.input.BriefPath;
import lozengy.model.input.MistakeCode;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changed;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.report.Json;
import lozengy.report.explain.ExplainJson;
import lozengy.report.explain.ExplainText;
import lozengy.report.explain.FileLines;
import lozengy.solver.explain.Explanation;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.miss.NearestMiss;
import lozengy.solver.surplus.Surplus;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says why nothing fits, and what would help. */
@Command(
    description = {
      "Says why no arrangement fits, and what would make one fit.",
      "",
      "Names the lines of the brief that cannot hold together, the changes that would help, each of"
          + " them tried out and those that upset least first, and how near one can come without.",
      "With the options of solve that change what is asked for, it explains what solve would be"
          + " asked with them.",
      "",
      "Exit code 3 if it is proved that nothing fits, 0 if an arrangement fits, 4 if neither was"
          + " settled.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy explain throw.yaml",
      "  lozengy explain throw.yaml -o as-far-as-it-goes.arrangement.json",
      "  lozengy explain throw.arrangement.json --without REE"
    })
final class ExplainCommand implements Callable<Integer> {

  private static final double NANOS = 1e9;

  private final Terminal terminal;

  @Mixin private FileArgument file;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description =
          "Write an arrangement: one that fits, or else the one that leaves the fewest rounds open;"
              + " - is standard output.")
  private String output;

  @Option(names = "--overwrite", description = "Replace a file that is there already.")
  private boolean overwrite;

  @Mixin private ChangeOptions change;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts; 1 if not said.")
  private long seed = 1;

  @Option(
      names = "--seconds",
      paramLabel = "N",
      description =
          "Look no longer than that; what is known by then is told. Without it the answer is the"
              + " same on every machine.")
  private Double seconds;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  ExplainCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (seconds != null && !(seconds > 0 && Double.isFinite(seconds))) {
      throw Refusal.of(
          "--seconds",
          MistakeCode.OUT_OF_RANGE.about(seconds, null, null, null, 0),
          seconds.toString(),
          "Give a number above 0");
    }
    Optional<Target> target =
        Optional.ofNullable(output).map(argument -> Target.of(argument, overwrite));
    if (json.wanted() && target.filter(each -> each.file().isEmpty()).isPresent()) {
      throw Refusal.of(
          "--json",
          MistakeCode.CONTRADICTS.about("--json", "-o"),
          "Standard output cannot take both the arrangement and JSON that tells of it",
          "Name a file with -o, or leave --json out");
    }
    Source source = file.source();
    change.expectOwnInput(source);
    target.ifPresent(Target::expect);
    Documents.Unjudged read = Inputs.readUnjudged(source, terminal);
    Changed task = asked(read.document());
    Blanket blanket = task.blanket();
    expectLaid(source, blanket);
    Explanation explanation = Explanation.of(blanket, ExplainOptions.of(seed, stop()));
    boolean arrangement = read.document() instanceof ArrangementDocument;
    FileLines lines =
        new FileLines(
            change.briefRoot().orElse(read.root()),
            arrangement && change.briefRoot().isEmpty() ? BriefPath.of("brief") : BriefPath.ROOT,
            !arrangement && change.arguments().isEmpty(),
            task.wishes());
    boolean wrote = write(target, blanket, explanation);
    int notes = Inputs.blanket(read.document()).brief().pieces().size();
    tell(blanket, explanation, lines, source, notes, wrote ? target : Optional.empty());
    return code(explanation).code();
  }

  /** A reason would speak of one choice of what stays out, and not of the brief. */
  private static void expectLaid(Source source, Blanket blanket) {
    if (Surplus.openIn(blanket)) {
      throw Refusal.of(
          source.label(),
          MistakeCode.CONTRADICTS.about("pile", "layout"),
          "More finished pieces are on the pile than there are places for them",
          "Let solve choose which stay out, and explain its arrangement; or say with \"out\" in the"
              + " pile how many of each do");
    }
  }

  private BooleanSupplier stop() {
    BooleanSupplier stop = terminal.stopSignal().listen();
    if (seconds == null) {
      return stop;
    }
    long end = System.nanoTime() + (long) (Math.min(seconds, 1e8) * NANOS);
    return () -> stop.getAsBoolean() || System.nanoTime() - end >= 0;
  }

  private Changed asked(Documents.Document document) {
    Blanket blanket = Inputs.blanket(document);
    List<Change> changes = change.changes(document, terminal);
    Optional<Sequences> earlier =
        document instanceof ArrangementDocument answer
            ? Optional.of(answer.arrangement().sequences())
            : Optional.empty();
    return changes.isEmpty()
        ? new Changed(blanket, earlier, earlier, Map.of())
        : Changes.applyUnjudged(new CurrentPlan(blanket.brief(), earlier), changes);
  }

  /** Writes what was found, if it is wanted and there is any. */
  private boolean write(Optional<Target> target, Blanket blanket, Explanation explanation) {
    Optional<Sequences> found =
        explanation instanceof Explanation.Fits fits
            ? Optional.of(fits.witness())
            : explanation.nearest().map(NearestMiss::sequences);
    if (target.isEmpty() || found.isEmpty()) {
      return false;
    }
    String text = text(blanket, found.get());
    target.get().write(terminal, text.getBytes(StandardCharsets.UTF_8));
    return true;
  }

  /** Only what has no open round has a score. */
  private static String text(Blanket blanket, Sequences sequences) {
    if (!sequences.complete()) {
      return ArrangementWriter.text(blanket, sequences);
    }
    Score score = Scorer.score(blanket, sequences, Optional.empty());
    return ArrangementWriter.text(
        new Arrangement(
            blanket, sequences, Optional.empty(), score, Optional.empty(), Optional.empty()));
  }

  private void tell(
      Blanket blanket,
      Explanation explanation,
      FileLines lines,
      Source source,
      int notes,
      Optional<Target> written) {
    boolean bytesOut = written.isPresent() && written.get().file().isEmpty();
    if (json.wanted()) {
      terminal
          .out()
          .println(
              Json.text(
                  ExplainJson.of(blanket, explanation, lines, written.flatMap(Target::file))));
      return;
    }
    ExplainText text = new ExplainText(blanket, lines, source.label(), change.arguments(), notes);
    List<String> words = text.lines(explanation, written.flatMap(Target::file));
    words.forEach((bytesOut ? terminal.err() : terminal.out())::println);
  }

  private static ExitCode code(Explanation explanation) {
    if (explanation instanceof Explanation.Fits) {
      return ExitCode.DONE;
    }
    return explanation instanceof Explanation.Impossible
        ? ExitCode.IMPOSSIBLE
        : ExitCode.UNFINISHED;
  }
}
