package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.cli.file.FileNames;
import lozengy.cli.file.FolderTarget;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.input.MistakeCode;
import lozengy.model.making.WorkOrder;
import lozengy.report.Json;
import lozengy.report.Screen;
import lozengy.report.Summary;
import lozengy.report.card.CardData;
import lozengy.report.card.FullCard;
import lozengy.report.chart.ChartOptions;
import lozengy.report.chart.TerminalPicture;
import lozengy.report.page.Page;
import lozengy.report.print.Paper;
import lozengy.report.tables.Tables;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows an arrangement: sums it up, or draws it. */
@Command(
    description = {
      "Shows an arrangement: sums it up, or draws its chart.",
      "",
      "Without --as it prints the summary, on a terminal with colours below a small picture;"
          + " NO_COLOR=1 leaves that out. What --as makes goes beside the arrangement if no file is"
          + " named: throw.svg, or for the tables a folder throw-tables.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy report throw.arrangement.json",
      "  lozengy report throw.arrangement.json --as svg --names -o throw-names.svg",
      "  lozengy report throw.arrangement.json --as html",
      "  lozengy report throw.arrangement.json --as pdf --paper letter --date 2026-01-31",
      "  lozengy report throw.arrangement.json --as tables",
      "  lozengy report throw.arrangement.json --as card --json"
    })
final class ReportCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "An arrangement; - is standard input.")
  private String file;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description = {
        "The form:",
        "svg, the chart as a vector drawing;",
        "png, the chart as a picture of dots;",
        "pdf, a booklet to print: chart, strips, yarns to buy, steps, piece cards;",
        "sheets, the chart over several sheets of paper that overlap, its letters large enough to"
            + " read, as PDF;",
        "html, a page for a browser that needs nothing beside it;",
        "graphml, pieces, seams and touches with their colours as a graph;",
        "tables, CSV files of pieces, rounds, seams, yarns, make list and strips with a Data"
            + " Package descriptor, in a folder; to standard output, a ZIP archive of them;",
        "card, the score card: every part beside what chance would make of it and what can be had"
            + " at best, on standard output if no file is named."
      })
  private ReportForm form;

  @Option(names = "--names", description = "Write every piece's name on the chart.")
  private boolean names;

  @Option(
      names = "--signs",
      paramLabel = "SIGNS",
      defaultValue = "letters",
      description =
          "What the chart shows on every round: letters (the usual; the legend says which yarn's),"
              + " codes or none.")
  private ChartOptions.Signs signs;

  @Option(names = "--codes", description = "The same as --signs codes.")
  private boolean codes;

  @Option(names = "--weak", description = "Mark the places that cost most on the chart.")
  private boolean weak;

  @Option(
      names = "--flat",
      description = "Draw the chart as a flat diagram, without stitches and edging.")
  private boolean flat;

  @Option(
      names = "--bare",
      description =
          "Draw the blanket alone, for a catalogue: no title, legend, letters, scale or frame.")
  private boolean bare;

  @Option(
      names = "--width",
      paramLabel = "WIDTH",
      description = "How wide the chart is: 1600px, 40cm, 12in; for png 2000px if not said.")
  private PictureWidth width;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "The paper of the booklet and of sheets: a4 or letter; a4 if not said.")
  private Paper paper;

  @Option(
      names = "--by",
      paramLabel = "ORDER",
      defaultValue = "ball",
      description =
          "By what the booklet's steps go: ball, strip or round, as next has them; ball if not"
              + " said.")
  private WorkOrder order;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The date on the booklet's pages, such as 2026-01-31; none if not said.")
  private LocalDate date;

  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  ReportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Source source = new Source(file);
    expectOneOutput(source);
    if (form == ReportForm.TABLES) {
      writeTables(source);
    } else {
      write(source);
    }
    return ExitCode.DONE.code();
  }

  /** What is no JSON cannot share standard output with the JSON that tells of it. */
  private void expectOneOutput(Source source) {
    boolean toStandardOutput = output.names().map("-"::equals).orElse(source.isStandardInput());
    if (json.wanted() && form != null && form != ReportForm.CARD && toStandardOutput) {
      throw Refusal.of(
          "--json",
          MistakeCode.CONTRADICTS.about("--json", "-o"),
          "Standard output cannot take both the " + form.word() + " and JSON that tells of it",
          "Name a file with -o, or leave --json out");
    }
    if (toStandardOutput && form != null && form.binary() && terminal.screen().watched()) {
      throw Refusal.of(
          "-o",
          MistakeCode.CONTRADICTS.about(form.word(), "-o"),
          "The " + form.word() + " would be bytes on a terminal",
          "Name a file with -o, or send standard output to one");
    }
  }

  private void write(Source source) {
    Target target = output.targetOr(() -> usualTarget(source));
    target.expect();
    target.write(terminal, report(source, Inputs.readComplete(source, terminal), target.file()));
    target.file().ifPresent(this::tellWritten);
  }

  private byte[] report(Source source, Arrangement arrangement, Optional<Path> target) {
    if (json.wanted() && form == ReportForm.CARD) {
      return utf8(Json.text(CardData.of(FullCard.of(arrangement))) + "\n");
    }
    if (form == null) {
      if (json.wanted()) {
        return utf8(
            Json.result("report-result", Json.object("summary", Summary.data(arrangement))) + "\n");
      }
      Screen screen = target.isEmpty() ? terminal.screen() : Screen.PLAIN;
      String text = TerminalPicture.text(arrangement, screen) + Summary.text(arrangement, screen);
      return utf8(text);
    }
    return new ReportRequest(
            form,
            names,
            codes ? ChartOptions.Signs.CODES : signs,
            weak,
            flat ? ChartOptions.Look.FLAT : ChartOptions.Look.WORKED,
            bare,
            Optional.ofNullable(width),
            paper == null ? Paper.A4 : paper,
            order,
            Optional.ofNullable(date),
            home(source, target))
        .make(arrangement);
  }

  /** The file as the same terminal names it, and as seen from the page. */
  private static Page.Home home(Source source, Optional<Path> target) {
    if (source.isStandardInput()) {
      return new Page.Home("FILE", Optional.empty());
    }
    Optional<String> beside =
        target
            .map(page -> page.toAbsolutePath().getParent())
            .map(folder -> seenFrom(folder, source.path().toAbsolutePath()));
    return new Page.Home(source.argument(), beside);
  }

  /** Where a file lies, with the same sign between folders on every machine; null if far off. */
  private static String seenFrom(Path folder, Path file) {
    if (!Objects.equals(folder.getRoot(), file.getRoot())) {
      return null;
    }
    List<String> names = new ArrayList<>();
    folder.relativize(file).normalize().forEach(name -> names.add(name.toString()));
    return String.join("/", names);
  }

  private Target usualTarget(Source source) {
    return form == null || form == ReportForm.CARD || source.isStandardInput()
        ? Target.standardOutput()
        : new Target(Optional.of(beside(source)), output.overwrite());
  }

  private void writeTables(Source source) {
    FolderTarget target =
        output.folderOr(() -> new FolderTarget(usualFolder(source), output.files()));
    target.expect(Tables.NAMES);
    target.write(terminal, Tables.files(Inputs.readComplete(source, terminal)));
    target.folder().ifPresent(this::tellWritten);
  }

  private Optional<Path> usualFolder(Source source) {
    return source.isStandardInput() ? Optional.empty() : Optional.of(beside(source));
  }

  private Path beside(Source source) {
    return FileNames.beside(source.path(), form.ending());
  }

  private void tellWritten(Path written) {
    terminal
        .out()
        .println(
            json.wanted()
                ? Json.result("report-result", Json.object("written", written.toString()))
                : "Wrote " + written);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
