package lozengy.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.cli.file.Source;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.report.Json;
import lozengy.report.MoreToFind;
import lozengy.report.ReasonData;
import lozengy.report.ReplanComparison;
import lozengy.report.ReplanData;
import lozengy.report.ReplanText;
import lozengy.report.Summary;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveResult;
import lozengy.solver.SolveResult.Unsettled;

/** Tells how a solve has ended. */
final class SolveReport {

  private final Terminal terminal;
  private final SolveTargets targets;
  private final boolean json;

  /**
   * Makes a report.
   *
   * @param targets where the results went
   * @param json whether it is for programs
   */
  SolveReport(Terminal terminal, SolveTargets targets, boolean json) {
    this.terminal = terminal;
    this.targets = targets;
    this.json = json;
  }

  /**
   * Tells what was found.
   *
   * @param again what has changed, where it was solved from an arrangement
   * @param alternatives the others to choose from, where several were wanted
   * @param unsettled why more moves may find better
   * @param options options that changed what was asked for
   * @param stopped whether the user ended the search
   */
  void tellFound(
      Arrangement arrangement,
      Optional<ReplanComparison> again,
      Optional<AlternativesReport> alternatives,
      Optional<Unsettled> unsettled,
      Source source,
      List<String> options,
      boolean stopped) {
    PrintWriter words = words();
    if (json && !targets.isStandardOutput()) {
      terminal
          .out()
          .println(
              Json.result(
                  "solve-result", foundObject(arrangement, again, alternatives, unsettled)));
      return;
    }
    Optional<String> input =
        source.isStandardInput() ? Optional.empty() : Optional.of(source.argument());
    words.print(Summary.text(arrangement, input, options));
    unsettled.ifPresent(
        each -> words.print(MoreToFind.text(each, seed(arrangement), input, options)));
    again.ifPresent(each -> words.print(ReplanText.of(each)));
    alternatives.ifPresent(each -> each.lines().forEach(words::println));
    if (stopped) {
      words.println("Stopped early; this is the best so far.");
    }
    targets.arrangement().ifPresent(path -> words.println("Wrote " + path));
    targets.chart().ifPresent(path -> words.println("Wrote " + path));
    alternatives.ifPresent(
        each -> {
          for (int i = 1; i < each.found().found().size(); i++) {
            words.println("Wrote " + each.files().file(i) + " and its chart");
          }
          each.files()
              .leftFromBefore(each.found().found().size())
              .forEach(
                  file -> words.println("Left from an earlier run, not one of these: " + file));
        });
  }

  private static long seed(Arrangement arrangement) {
    return arrangement.solved().orElseThrow().seed();
  }

  private Map<String, Object> foundObject(
      Arrangement arrangement,
      Optional<ReplanComparison> again,
      Optional<AlternativesReport> alternatives,
      Optional<Unsettled> unsettled) {
    return Json.object(
        "outcome", "found",
        "arrangement", targets.arrangement().map(Object::toString),
        "chart", targets.chart().map(Object::toString),
        "changes", again.map(ReplanData::of),
        "alternatives", alternatives.map(AlternativesReport::data),
        "more_to_find", unsettled.map(each -> MoreToFind.data(each, seed(arrangement))),
        "summary", Summary.data(arrangement));
  }

  /** Tells why nothing was found. */
  ExitCode tellNotFound(Blanket blanket, SolveResult result) {
    Wording wording = new Wording(blanket);
    if (result instanceof SolveResult.Impossible impossible) {
      tell(
          "impossible",
          "No arrangement fits this brief. Proved:",
          wording.of(impossible),
          Optional.of(ReasonData.of(blanket, impossible)));
      return ExitCode.IMPOSSIBLE;
    }
    tell(
        "unfinished",
        "No arrangement was found within the limit given, and nothing is proved. More --moves or"
            + " --seconds may find one. In the way stood:",
        wording.of((SolveResult.Unfinished) result),
        Optional.empty());
    return ExitCode.UNFINISHED;
  }

  private void tell(String outcome, String head, List<String> why, Optional<?> causes) {
    if (json) {
      terminal
          .out()
          .println(
              Json.result(
                  "solve-result",
                  Json.object("outcome", outcome, "reasons", why, "causes", causes)));
      return;
    }
    PrintWriter words = words();
    words.println(head);
    why.forEach(each -> words.println("  " + each));
  }

  /** Where words go: not between the bytes of an arrangement on standard output. */
  private PrintWriter words() {
    return targets.isStandardOutput() ? terminal.err() : terminal.out();
  }
}
