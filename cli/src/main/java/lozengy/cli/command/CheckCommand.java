package lozengy.cli.command;

import java.util.concurrent.Callable;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.arrangement.Verdict;
import lozengy.report.Json;
import lozengy.report.PlainText;
import lozengy.report.check.VerdictLines;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Holds an arrangement against its brief, from scratch. */
@Command(
    description = {
      "Holds an arrangement against its brief, from scratch.",
      "",
      "Checks every rule, works out the score and the yarn totals again, and compares them with"
          + " those that the file states. Prints each fault in words; exit code 5 if there is one."
          + " A stated bound is held against the score, but not proved again.",
    },
    footer = {"", "Example:", "  lozengy check throw.arrangement.json"})
final class CheckCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "An arrangement; - is standard input.")
  private String file;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  CheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Source source = new Source(file);
    StatedArrangement stated = Inputs.readStated(source, terminal);
    VerdictLines verdict = VerdictLines.of(stated, Verdict.of(stated));
    if (json.wanted()) {
      terminal.out().println(Json.result("check-result", verdict.json()));
    } else {
      terminal.out().println(PlainText.oneLine(source.label() + ": " + verdict.words()));
      verdict
          .faults()
          .forEach(each -> terminal.out().println("  " + PlainText.oneLine(each.line())));
      verdict
          .warnings()
          .forEach(each -> terminal.out().println("  warning: " + PlainText.oneLine(each)));
    }
    return (verdict.faults().isEmpty() ? ExitCode.DONE : ExitCode.FAULTS_FOUND).code();
  }
}
