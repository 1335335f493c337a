package lozengy.cli.command;

import java.util.concurrent.Callable;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkSteps;
import lozengy.report.Json;
import lozengy.report.NextText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what to work next. */
@Command(
    description = {
      "Says what to work next: the first step that is not done, and how to mark it.",
      "",
      "By ball the steps are those of the make list: one yarn, all that is ready for it. By strip"
          + " each piece is finished and each strip joined once it is whole. By round all centres"
          + " come first. The page and the booklet go by the same order.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy next throw.arrangement.json",
      "  lozengy next throw.arrangement.json --by strip"
    })
final class NextCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "An arrangement; - is standard input.")
  private String file;

  @Option(
      names = "--by",
      paramLabel = "ORDER",
      defaultValue = "ball",
      description = "The order of the work: ball (the usual), strip or round.")
  private WorkOrder order;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  NextCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Source source = new Source(file);
    Arrangement arrangement = Inputs.readComplete(source, terminal);
    WorkSteps steps = WorkSteps.of(arrangement, order);
    NextText text = new NextText(arrangement, steps);
    if (json.wanted()) {
      terminal.out().println(Json.result("next-result", text.data()));
    } else {
      text.lines(file).forEach(terminal.out()::println);
    }
    return ExitCode.DONE.code();
  }
}
