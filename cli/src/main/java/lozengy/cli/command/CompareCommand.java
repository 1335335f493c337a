package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import lozengy.cli.ExitCode;
import lozengy.cli.Json;
import lozengy.cli.Terminal;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Sets arrangements side by side, part by part. */
@Command(
    name = "compare",
    description = {
      "Sets arrangements side by side, part by part.",
      "",
      "All figures are computed from scratch. Totals compare only where the briefs weigh the parts"
          + " alike.",
    },
    footer = {"", "Example:", "  lozengy compare throw.arrangement.json throw-2.arrangement.json"})
final class CompareCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "Arrangements; - is standard input.")
  private List<String> files;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  CompareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    List<Compared> compared = new ArrayList<>();
    for (String file : files) {
      Source source = new Source(file);
      compared.add(Compared.of(source.label(), Inputs.readComplete(source, terminal)));
    }
    if (json.wanted()) {
      terminal.out().println(Json.result("compare-result", Compared.json(compared)));
    } else {
      Compared.lines(compared).forEach(terminal.out()::println);
    }
    return ExitCode.DONE.code();
  }
}
