package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.WholeFiles;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.progress.Mark;
import lozengy.model.progress.MarkedArrangement;
import lozengy.report.Json;
import lozengy.report.substitute.SubstituteData;
import lozengy.report.substitute.SubstituteText;
import lozengy.report.tables.SubstituteTable;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.substitute.Listed;
import lozengy.solver.substitute.Substituting;
import lozengy.solver.substitute.Substitution;
import lozengy.solver.substitute.Substitution.Trial;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds shades to stand in for those that are gone. */
@Command(
    description = {
      "Finds shades to stand in for one that is gone: the nearest of the same tone (CIEDE2000) among"
          + " those at hand and those of a list, first those of which there is enough by length, and"
          + " what each would do to the score.",
      "",
      "The nearest few are tried by planning: of an arrangement what is still to be worked is planned"
          + " again, close to what stands; a brief is planned afresh. Nothing is written unless one is"
          + " taken with --take; then 'solve', 'mark' and the others go on from the new arrangement.",
      "",
      "A list is a CSV table with the columns code and colour, and where there are such name, tone,"
          + " balls, left (with its unit), ball_g or ball_oz, ball_m or ball_yd, price. A shade of which"
          + " it does not say how much there is can be bought, as much as it takes."
    },
    footer = {
      "",
      "Examples:",
      "  lozengy substitute throw.arrangement.json THR",
      "  lozengy substitute throw.yaml THR SLO --from shades.csv --try 8",
      "  lozengy substitute throw.arrangement.json THR --from shades.csv --take THR=RUS"
    })
final class SubstituteCommand implements Callable<Integer> {

  private static final int USUAL_TRIES = 5;
  private static final int MOST_TRIES = 100;
  private static final double ALL = 100;

  private final Terminal terminal;

  @Mixin private FileArgument file;

  @Parameters(
      index = "1..*",
      paramLabel = "YARN",
      description = "What is gone; if not said, what is marked so.")
  private List<String> gone = List.of();

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "Further shades, as CSV; - is standard input.")
  private String from;

  @Option(
      names = "--try",
      paramLabel = "N",
      description = "Try that many of the nearest for each that is gone; 5 if not said.")
  private Integer tries;

  @Option(
      names = "--take",
      paramLabel = "YARN=YARN",
      description =
          "Take a shade in another's place, such as THR=RUS, or several, THR=RUS,REE, and write the"
              + " arrangement. Repeatable.")
  private List<String> takes = List.of();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts; 1 if not said.")
  private Long seed;

  @Option(
      names = "--moves",
      paramLabel = "N",
      description = "Try that many moves for each shade; by the blanket's size if not said.")
  private Long moves;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Use that many threads; all cores if not said.")
  private Integer threads;

  @Option(names = "--csv", description = "Print the shades as CSV, a row for each.")
  private boolean csv;

  @Mixin private OutputOptions output;
  @Mixin private WalkersOption walkers;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  SubstituteCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    SolveOptions options =
        SolveRequest.of(seed, moves, walkers.wanted(), null, threads)
            .options(terminal.stopSignal().listen(), progress -> {});
    Source source = file.source();
    Map<String, List<String>> taken = taken();
    expectCall(source);
    WholeFiles written = output.files();
    if (!source.isStandardInput()) {
      written.lookAt(source.path());
    }
    Document document = Inputs.readWithoutStock(source, terminal);
    Brief brief = Inputs.blanket(document).brief();
    if (brief.rules().keepBackPercent() >= ALL) {
      throw Refusal.of(
          source.label(),
          MistakeCode.OUT_OF_RANGE.about(100, null, null, "%"),
          "keep-back is 100 %: no yarn may be used at all",
          "Keep back less");
    }
    List<String> codes = gone(brief, taken.keySet());
    ShadeFile.Shades shades = shades(brief);
    CurrentPlan current =
        new CurrentPlan(brief, complete(document, source).map(Arrangement::sequences));
    if (taken.isEmpty()) {
      int count = tries == null ? USUAL_TRIES : tries;
      Substitution found = Substituting.find(current, codes, shades.shades(), count, options);
      tell(found, shades.known(), Optional.empty());
      return (found.any() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }
    expectTaken(brief, taken, shades.shades());
    SolveTargets targets =
        SolveTargets.of(output, source, document instanceof ArrangementDocument, written);
    AlternativeFiles files = AlternativeFiles.of(targets, null, null);
    files.expect();
    Substitution found = Substituting.take(current, taken, shades.shades(), options);
    Trial trial = found.shades().get(0).tried().get(0).trial();
    if (!(trial.result() instanceof SolveResult.Found answer)) {
      return new SolveReport(terminal, targets, json.wanted())
          .tellNotFound(trial.blanket(), trial.result())
          .code();
    }
    Arrangement arrangement =
        complete(document, source)
            .map(before -> withDiary(before, trial, answer.arrangement()))
            .orElse(answer.arrangement());
    files.write(terminal, Optional.empty(), arrangement);
    if (!targets.isStandardOutput()) {
      tell(found, shades.known(), Optional.of(targets));
    }
    return ExitCode.DONE.code();
  }

  /** What is to be taken, by what is gone. */
  private Map<String, List<String>> taken() {
    List<Mistake> mistakes = new ArrayList<>();
    Map<String, List<String>> taken = new LinkedHashMap<>();
    for (String take : takes) {
      Assigned.read("--take", take, "Name both shades, such as THR=RUS", mistakes)
          .ifPresent(
              read -> {
                List<String> codes = PieceLists.selectors(read.right());
                if (taken.put(read.left(), codes) != null) {
                  mistakes.add(
                      Mistake.ofWish(
                          read.place(),
                          MistakeCode.NAMED_TWICE.about(read.left()),
                          read.left() + " is taken the place of twice",
                          "Say it once, with commas between several: THR=RUS,REE"));
                }
              });
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    return taken;
  }

  private void expectCall(Source source) {
    List<Mistake> mistakes = new ArrayList<>();
    if (from != null && source.isStandardInput() && new Source(from).isStandardInput()) {
      mistakes.add(
          Mistake.ofWish(
              "--from",
              MistakeCode.CONTRADICTS.about("-", "FILE"),
              "Standard input cannot be both the file and the list",
              "Name a file for one"));
    }
    if (csv && json.wanted()) {
      mistakes.add(
          Mistake.ofWish(
              "--csv",
              MistakeCode.CONTRADICTS.about("--csv", "--json"),
              "It stands beside --json",
              "Leave one of them out"));
    }
    if (tries != null && (tries < 1 || tries > MOST_TRIES)) {
      mistakes.add(
          Mistake.ofWish(
              "--try",
              MistakeCode.OUT_OF_RANGE.about(tries, 1, MOST_TRIES),
              tries.toString(),
              "Give a whole number from 1 to " + MOST_TRIES));
    }
    if (takes.isEmpty() && (output.names().isPresent() || output.overwrite())) {
      mistakes.add(
          Mistake.ofWish(
              "-o",
              MistakeCode.OPTION_MISSING.about("--take"),
              "Nothing is written unless a shade is taken",
              "Add --take THR=RUS, or leave it out"));
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
  }

  /** The shades that are gone, each once. */
  private List<String> gone(Brief brief, Set<String> taken) {
    Set<String> codes = new LinkedHashSet<>();
    gone.forEach(list -> codes.addAll(PieceLists.selectors(list)));
    codes.addAll(taken);
    if (codes.isEmpty()) {
      brief.yarns().stream().filter(Yarn::gone).map(Yarn::code).forEach(codes::add);
    }
    if (codes.isEmpty()) {
      throw Refusal.of(
          "",
          MistakeCode.OPTION_MISSING.about("YARN"),
          "Nothing is gone",
          "Name the shade that is, such as THR");
    }
    expectKnown("", codes, brief.yarns().stream().map(Yarn::code).toList());
    if (!taken.isEmpty() && !taken.containsAll(codes)) {
      codes.removeAll(taken);
      throw Refusal.of(
          "--take",
          MistakeCode.OPTION_MISSING.about("--take"),
          "It names nothing to take the place of " + String.join(", ", codes),
          "Add --take " + codes.iterator().next() + "=…, or leave it out");
    }
    return List.copyOf(codes);
  }

  private static void expectKnown(String place, Iterable<String> codes, List<String> known) {
    List<Mistake> mistakes = new ArrayList<>();
    for (String code : codes) {
      BriefMistakes.unknownCode(code, BriefPath.of(place.isEmpty() ? code : place), known)
          .ifPresent(mistakes::add);
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
  }

  private static void expectTaken(
      Brief brief, Map<String, List<String>> taken, List<Listed> listed) {
    List<String> known = new ArrayList<>();
    brief.yarns().stream()
        .filter(yarn -> !taken.containsKey(yarn.code()) && !yarn.gone())
        .forEach(yarn -> known.add(yarn.code()));
    listed.forEach(each -> known.add(each.yarn().code()));
    taken.forEach((code, codes) -> expectKnown("--take " + code, codes, known));
  }

  private ShadeFile.Shades shades(Brief brief) {
    if (from == null) {
      return new ShadeFile.Shades(List.of(), List.of());
    }
    Source list = new Source(from);
    return ShadeFile.read(list.label(), list.read(terminal).text(), brief);
  }

  /** The plan that stands, every round of it filled. */
  private static Optional<Arrangement> complete(Document document, Source source) {
    return document instanceof ArrangementDocument answer
        ? Optional.of(Inputs.complete(source, answer.arrangement()))
        : Optional.empty();
  }

  /** The diary goes on: the new shades came, the old ones are gone, and it was planned again. */
  private static Arrangement withDiary(Arrangement before, Trial trial, Arrangement planned) {
    List<Mark.OfYarn> marks = new ArrayList<>();
    for (Yarn yarn : planned.blanket().brief().yarns()) {
      if (before.blanket().yarnIndex(yarn.code()) < 0) {
        marks.add(new Mark.Added("--take " + yarn.code(), yarn));
      }
    }
    trial.instead().stream()
        .filter(each -> !before.blanket().yarn(before.blanket().yarnIndex(each.gone())).gone())
        .forEach(each -> marks.add(new Mark.Gone("--take " + each.gone(), each.gone())));
    LocalDate today = LocalDate.now();
    // days never go back, though a clock may have been ahead
    LocalDate day = before.diary().lastDay().filter(today::isBefore).orElse(today);
    Mark mark = Mark.NONE.withYarns(marks).withOn(Optional.of(new Mark.Day("today's date", day)));
    Arrangement marked = marks.isEmpty() ? before : MarkedArrangement.of(before, mark);
    return planned.withDiary(marked.diary().plannedAgain(planned.blanket(), planned.sequences()));
  }

  private void tell(Substitution found, List<String> known, Optional<SolveTargets> written) {
    if (json.wanted()) {
      Map<String, Object> data = SubstituteData.of(found);
      written
          .flatMap(SolveTargets::arrangement)
          .ifPresent(p -> data.put("arrangement", p.toString()));
      written.flatMap(SolveTargets::chart).ifPresent(p -> data.put("chart", p.toString()));
      terminal.out().println(Json.result("substitute-result", data));
      return;
    }
    if (csv) {
      terminal.write(SubstituteTable.csv(found).getBytes(StandardCharsets.UTF_8));
      return;
    }
    SubstituteText.lines(found, terminal.screen().columns()).forEach(terminal.out()::println);
    if (!known.isEmpty()) {
      terminal
          .out()
          .println(
              "Of "
                  + String.join(", ", known)
                  + " in the list the brief says already how much there is; that holds.");
    }
    written
        .flatMap(SolveTargets::arrangement)
        .ifPresent(path -> terminal.out().println("Wrote " + path));
    written.flatMap(SolveTargets::chart).ifPresent(p -> terminal.out().println("Wrote " + p));
  }
}
