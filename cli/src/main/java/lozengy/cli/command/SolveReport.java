package lozengy.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.cli.file.Source;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.model.blanket.Blanket;
import lozengy.report.Json;
import lozengy.report.solve.SolveText;
import lozengy.solver.SolveResult;

/**
 * Tells how a solve has ended.
 *
 * @param targets where the results went
 * @param json whether it is for programs
 */
record SolveReport(Terminal terminal, SolveTargets targets, boolean json) {

  /**
   * Tells what was found.
   *
   * @param options options that changed what was asked for
   * @param stopped whether the user ended the search
   */
  void tellFound(SolveText.Found found, Source source, List<String> options, boolean stopped) {
    if (json) {
      tell(found.data());
      return;
    }
    Optional<String> input =
        source.isStandardInput() ? Optional.empty() : Optional.of(source.argument());
    words().print(found.text(input, options, stopped));
  }

  /** Tells why nothing was found. */
  ExitCode tellNotFound(Blanket blanket, SolveResult result) {
    if (json) {
      tell(SolveText.notFoundData(blanket, result));
    } else {
      words().print(SolveText.notFound(blanket, result));
    }
    return result instanceof SolveResult.Impossible ? ExitCode.IMPOSSIBLE : ExitCode.UNFINISHED;
  }

  private void tell(Map<String, Object> data) {
    terminal.out().println(Json.result("solve-result", data));
  }

  /** Where words go: not between the bytes of an arrangement on standard output. */
  private PrintWriter words() {
    return targets.isStandardOutput() ? terminal.err() : terminal.out();
  }
}
