package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.cli.Colours;
import lozengy.cli.ExitCode;
import lozengy.cli.Terminal;
import lozengy.cli.file.FileNames;
import lozengy.cli.file.FolderTarget;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.report.Summary;
import lozengy.cli.report.TerminalPicture;
import lozengy.cli.report.print.Paper;
import lozengy.cli.report.tables.Tables;
import lozengy.model.arrangement.Arrangement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows an arrangement: sums it up, or draws it. */
@Command(
    name = "report",
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
      "  lozengy report throw.arrangement.json --as tables"
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
        "pdf, a booklet to print: chart, yarns to buy, make list, strips, piece cards;",
        "html, a page for a browser that needs nothing beside it;",
        "graphml, pieces, seams and touches with their colours as a graph;",
        "tables, CSV files of pieces, rounds, seams, yarns, make list and strips with a Data"
            + " Package descriptor, in a folder; to standard output, a ZIP archive of them."
      })
  private ReportForm form;

  @Option(names = "--names", description = "Write every piece's name on the chart.")
  private boolean names;

  @Option(names = "--codes", description = "Write every round's yarn on the chart.")
  private boolean codes;

  @Option(
      names = "--width",
      paramLabel = "WIDTH",
      description = "How wide the chart is: 1600px, 40cm, 12in; for png 2000px if not said.")
  private PictureWidth width;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description = "The booklet's paper: a4 or letter.")
  private Paper paper;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The date on the booklet's pages, such as 2026-01-31; none if not said.")
  private LocalDate date;

  @Mixin private OutputOptions output;
  @Mixin private HelpOption help;

  ReportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Source source = new Source(file);
    if (form == ReportForm.TABLES) {
      writeTables(source);
    } else {
      write(source);
    }
    return ExitCode.DONE.code();
  }

  private void write(Source source) {
    Target target = output.targetOr(() -> usualTarget(source));
    target.expect();
    target.write(
        terminal, report(source, Inputs.readComplete(source, terminal), target.file().isEmpty()));
    target.file().ifPresent(this::tellWritten);
  }

  private byte[] report(Source source, Arrangement arrangement, boolean toTerminal) {
    if (form == null) {
      Colours colours = toTerminal ? terminal.colours() : Colours.NONE;
      String text =
          TerminalPicture.text(arrangement, colours) + Summary.text(arrangement, Optional.empty());
      return text.getBytes(StandardCharsets.UTF_8);
    }
    return new ReportRequest(
            form,
            names,
            codes,
            Optional.ofNullable(width),
            paper == null ? Paper.A4 : paper,
            Optional.ofNullable(date),
            file(source))
        .make(arrangement);
  }

  /** The file as the same terminal names it. */
  private static String file(Source source) {
    return source.isStandardInput() ? "FILE" : source.argument();
  }

  private Target usualTarget(Source source) {
    return form == null || source.isStandardInput()
        ? Target.standardOutput()
        : new Target(Optional.of(beside(source)), output.overwrite());
  }

  private void writeTables(Source source) {
    FolderTarget target =
        output.folderOr(() -> new FolderTarget(usualFolder(source), output.overwrite()));
    target.expect();
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
    terminal.out().println("Wrote " + written);
  }
}
