package lozengy.report.solve;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile;
import lozengy.report.Json;
import lozengy.report.MoreToFind;
import lozengy.report.ReasonData;
import lozengy.report.ReplanComparison;
import lozengy.report.ReplanData;
import lozengy.report.ReplanText;
import lozengy.report.Summary;
import lozengy.report.check.FaultLine;
import lozengy.report.wording.DoubtWords;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveResult;
import lozengy.solver.SolveResult.Unsettled;

/** How a solve has ended, as it is told: for a person, and for programs. */
public final class SolveText {

  private SolveText() {}

  /**
   * What was found.
   *
   * @param arrangement the arrangement, the first where several were wanted
   * @param again what has changed, where it was solved from an arrangement
   * @param choice the others to choose from, where several were wanted
   * @param unsettled why more moves may find better
   * @param files where it went
   */
  public record Found(
      Arrangement arrangement,
      Optional<ReplanComparison> again,
      Optional<ChoiceText> choice,
      Optional<Unsettled> unsettled,
      Files files) {

    /**
     * For a person.
     *
     * @param input the file that was solved, as it was named; empty for standard input
     * @param options options that changed what was asked for
     * @param stopped whether the user ended the search
     */
    public String text(Optional<String> input, List<String> options, boolean stopped) {
      StringBuilder text = new StringBuilder(Summary.text(arrangement, input, options));
      unsettled.ifPresent(each -> text.append(MoreToFind.text(each, arrangement, input, options)));
      again.ifPresent(each -> text.append(ReplanText.of(each)));
      choice.ifPresent(each -> each.lines().forEach(line -> line(text, line)));
      if (stopped) {
        line(text, "Stopped early; this is the best so far.");
      }
      files.arrangement().ifPresent(path -> line(text, "Wrote " + path));
      files.chart().ifPresent(path -> line(text, "Wrote " + path));
      files.others().forEach(path -> line(text, "Wrote " + path + " and its chart"));
      files
          .leftFromBefore()
          .forEach(path -> line(text, "Left from an earlier run, not one of these: " + path));
      return text.toString();
    }

    /** For programs. */
    public Map<String, Object> data() {
      return Json.object(
          "outcome", "found",
          "arrangement", files.arrangement().map(Path::toString),
          "content", content(),
          "chart", files.chart().map(Path::toString),
          "changes", again.map(ReplanData::of),
          "alternatives", choice.map(each -> each.data(files.all())),
          "more_to_find", unsettled.map(each -> MoreToFind.data(each, arrangement)),
          "doubts", DoubtWords.data(arrangement.blanket()),
          "summary", Summary.data(arrangement));
    }

    /** The arrangement itself, where it has no file. */
    private Optional<Json.Raw> content() {
      return files.arrangement().isEmpty()
          ? Optional.of(new Json.Raw(ArrangementWriter.text(arrangement).strip()))
          : Optional.empty();
    }
  }

  /**
   * Where what was found went.
   *
   * @param arrangement the file of the first; empty for standard output
   * @param chart the file of its chart, if it has one
   * @param others files of the other arrangements
   * @param leftFromBefore files of arrangements from an earlier run that none of these replaced
   */
  public record Files(
      Optional<Path> arrangement,
      Optional<Path> chart,
      List<Path> others,
      List<Path> leftFromBefore) {

    private List<Path> all() {
      return Stream.concat(arrangement.stream(), others.stream()).toList();
    }
  }

  /** Why nothing was found, for a person. */
  public static String notFound(Blanket blanket, SolveResult result) {
    StringBuilder text = new StringBuilder();
    line(
        text,
        result instanceof SolveResult.Impossible
            ? "No arrangement fits this brief" + whateverStaysOut(result) + ". Proved:"
            : "No arrangement was found within the limit given, and nothing is proved. More --moves"
                + " or --seconds may find one."
                + (reasons(blanket, result).isEmpty() ? "" : " In the way stood:"));
    reasons(blanket, result).forEach(each -> line(text, "  " + each));
    return text.toString();
  }

  /** Faults of the nearest attempt that are told at most. */
  private static final int MOST_FAULTS = 100;

  /** Sorts of pieces left out that are told one by one. */
  private static final int MOST_SORTS = 6;

  /** That other choices of what stays out of the pile do not help either, with the one told of. */
  private static String whateverStaysOut(SolveResult result) {
    return result instanceof SolveResult.Impossible impossible && impossible.choice().isPresent()
        ? ", whatever stays out of the pile. " + choice(impossible.choice().get())
        : "";
  }

  private static String choice(Blanket choice) {
    int out = choice.pile().out().stream().mapToInt(Pile.Stack::count).sum();
    List<String> sorts =
        choice.pile().out().stream()
            .map(
                stack ->
                    stack.count()
                        + " in "
                        + String.join(
                            ", ",
                            Arrays.stream(stack.yarns())
                                .mapToObj(yarn -> choice.yarn(yarn).code())
                                .toList()))
            .toList();
    String most =
        sorts.size() > MOST_SORTS
            ? String.join("; ", sorts.subList(0, MOST_SORTS)) + " and others"
            : String.join("; ", sorts);
    return "The proof is told for " + out + " left out, " + most;
  }

  /** Why nothing was found, for programs. */
  public static Map<String, Object> notFoundData(Blanket blanket, SolveResult result) {
    return Json.object(
        "outcome",
        result instanceof SolveResult.Impossible ? "impossible" : "unfinished",
        "reasons",
        reasons(blanket, result),
        "causes",
        result instanceof SolveResult.Impossible impossible
            ? Optional.of(ReasonData.of(blanket, impossible))
            : Optional.empty(),
        "faults",
        result instanceof SolveResult.Unfinished unfinished
            ? Optional.of(
                unfinished.inTheWay().stream()
                    .limit(MOST_FAULTS)
                    .map(each -> FaultLine.of(blanket, each).json())
                    .toList())
            : Optional.empty(),
        "doubts",
        DoubtWords.data(blanket));
  }

  private static List<String> reasons(Blanket blanket, SolveResult result) {
    return result instanceof SolveResult.Impossible impossible
        ? new Wording(impossible.choice().orElse(blanket)).of(impossible)
        : new Wording(blanket).of((SolveResult.Unfinished) result);
  }

  private static void line(StringBuilder text, String line) {
    text.append(line).append('\n');
  }
}
