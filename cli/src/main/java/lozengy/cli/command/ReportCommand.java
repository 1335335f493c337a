package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import lozengy.cli.ExitCode;
import lozengy.cli.Terminal;
import lozengy.cli.file.FileNames;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.report.Chart;
import lozengy.cli.report.ChartOptions;
import lozengy.cli.report.Summary;
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
      "Without --as it prints the summary. A chart goes beside the arrangement if no file is named.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy report throw.arrangement.json",
      "  lozengy report throw.arrangement.json --as svg --names -o throw-names.svg"
    })
final class ReportCommand implements Callable<Integer> {

  private static final String SVG_ENDING = ".svg";

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "An arrangement; - is standard input.")
  private String file;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description = "The form: svg, the chart as a vector drawing.")
  private ReportForm form;

  @Option(names = "--names", description = "Write every piece's name on the chart.")
  private boolean names;

  @Option(names = "--codes", description = "Write every round's yarn on the chart.")
  private boolean codes;

  @Mixin private OutputOptions output;
  @Mixin private HelpOption help;

  ReportCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Source source = new Source(file);
    Target target = output.targetOr(() -> usualTarget(source));
    target.expect();
    Arrangement arrangement = Inputs.readComplete(source, terminal);
    String report =
        form == ReportForm.SVG
            ? Chart.svg(arrangement, new ChartOptions(names, codes, OptionalInt.empty()))
            : Summary.text(arrangement, Optional.empty());
    target.write(terminal, report.getBytes(StandardCharsets.UTF_8));
    target.file().ifPresent(written -> terminal.out().println("Wrote " + written));
    return ExitCode.DONE.code();
  }

  private Target usualTarget(Source source) {
    return form == null || source.isStandardInput()
        ? Target.standardOutput()
        : new Target(Optional.of(FileNames.beside(source.path(), SVG_ENDING)), output.overwrite());
  }
}
