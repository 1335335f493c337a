package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.compare.Compared;
import lozengy.model.compare.Comparison;
import lozengy.model.input.MistakeCode;
import lozengy.report.Json;
import lozengy.report.chart.ChartsSideBySide;
import lozengy.report.compare.ComparisonData;
import lozengy.report.compare.ComparisonText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Sets arrangements side by side, part by part. */
@Command(
    description = {
      "Sets arrangements side by side, part by part: of one brief or of several.",
      "",
      "Tells each part of the score, which arrangement none of the others beats, rounds that"
          + " differ, and the yarn left. All figures are computed from scratch. Totals compare only"
          + " where the briefs weigh the parts alike.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy compare throw.arrangement.json throw-2.arrangement.json",
      "  lozengy compare throw*.arrangement.json --charts throws.svg"
    })
final class CompareCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "Arrangements; - is standard input.")
  private List<String> files;

  @Option(
      names = "--charts",
      paramLabel = "FILE",
      description = "Draw their charts next to each other, as SVG; - is standard output.")
  private String charts;

  @Option(names = "--overwrite", description = "Replace a file that is there already.")
  private boolean overwrite;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  CompareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (files.stream().filter(file -> new Source(file).isStandardInput()).count() > 1) {
      throw Refusal.of(
          "-",
          MistakeCode.CONTRADICTS.about("-", "-"),
          "Standard input holds one arrangement",
          "Name files for the others");
    }
    Target target = charts == null ? null : Target.of(charts, overwrite).namedBy("--charts");
    if (target != null) {
      expectRoom(target);
      target.expect();
    }
    List<Compared> all = new ArrayList<>();
    for (String file : files) {
      Source source = new Source(file);
      all.add(Compared.of(source.label(), Inputs.readComplete(source, terminal)));
    }
    if (target != null) {
      target.write(terminal, drawing(all).getBytes(StandardCharsets.UTF_8));
    }
    if (target == null || target.file().isPresent()) {
      tell(new Comparison(all));
    }
    return ExitCode.DONE.code();
  }

  private void expectRoom(Target target) {
    if (json.wanted() && target.file().isEmpty()) {
      throw Refusal.of(
          "--json",
          MistakeCode.CONTRADICTS.about("--json", "--charts"),
          "Standard output cannot take both the charts and JSON that tells of them",
          "Name a file with --charts, or leave --json out");
    }
  }

  private void tell(Comparison comparison) {
    if (json.wanted()) {
      terminal.out().println(Json.result("compare-result", ComparisonData.of(comparison)));
      return;
    }
    ComparisonText.lines(comparison).forEach(terminal.out()::println);
    if (charts != null) {
      terminal.out().println("Wrote " + charts);
    }
  }

  private static String drawing(List<Compared> all) {
    return ChartsSideBySide.svg(
        all.stream().map(Compared::arrangement).toList(),
        all.stream().map(Compared::label).toList());
  }
}
