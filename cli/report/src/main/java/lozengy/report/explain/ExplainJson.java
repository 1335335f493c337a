package lozengy.report.explain;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.report.Json;
import lozengy.report.ReasonData;
import lozengy.report.wording.DoubtWords;
import lozengy.report.wording.Wording;
import lozengy.solver.explain.Explanation;
import lozengy.solver.explain.miss.NearestMiss;
import lozengy.solver.explain.remedy.Cause;
import lozengy.solver.explain.remedy.Remedy;

/** An explanation for programs, by the schema {@code explanation-1.schema.json}. */
public final class ExplainJson {

  /** The value of the field {@code format}. */
  public static final String FORMAT = "lozengy-explanation/1";

  private final Blanket blanket;
  private final Wording wording;
  private final FileLines places;

  private ExplainJson(Blanket blanket, FileLines places) {
    this.blanket = blanket;
    this.wording = new Wording(blanket);
    this.places = places;
  }

  /**
   * The object.
   *
   * @param written where an arrangement went
   */
  public static Map<String, Object> of(
      Blanket blanket, Explanation explanation, FileLines places, Optional<Path> written) {
    return new ExplainJson(blanket, places).object(explanation, written);
  }

  private Map<String, Object> object(Explanation explanation, Optional<Path> written) {
    Optional<Explanation.Impossible> impossible =
        explanation instanceof Explanation.Impossible each ? Optional.of(each) : Optional.empty();
    return Json.object(
        "format",
        FORMAT,
        "title",
        blanket.brief().title(),
        "outcome",
        outcome(explanation),
        "causes",
        impossible.map(each -> each.causes().stream().map(this::cause).toList()),
        "beside",
        impossible.map(each -> each.beside().stream().map(this::cause).toList()),
        "remedies",
        impossible.map(each -> each.remedies().stream().map(this::remedy).toList()),
        "remedies_complete",
        impossible.map(Explanation.Impossible::remediesComplete),
        "nearest_miss",
        explanation.nearest().map(this::nearest),
        "doubts",
        DoubtWords.data(blanket),
        "arrangement",
        written.map(Path::toString));
  }

  private static String outcome(Explanation explanation) {
    if (explanation instanceof Explanation.Fits) {
      return "fits";
    }
    return explanation instanceof Explanation.Impossible ? "impossible" : "unsettled";
  }

  private Map<String, Object> cause(Cause cause) {
    return Json.object(
        "words", cause.reason().map(wording::of),
        "more", cause.more(),
        "minimal", cause.conflict().minimal(),
        "lines", cause.conflict().lines().stream().map(this::line).toList(),
        "reason", cause.reason().map(reason -> ReasonData.of(blanket, reason)));
  }

  private Map<String, Object> line(BriefLine line) {
    return Json.object(
        "rule", line.rule().word(),
        "code", line.subject().code(),
        "path", places.path(line.path()),
        "line", places.line(line.path()),
        "words", wording.of(line.subject()));
  }

  private Map<String, Object> remedy(Remedy remedy) {
    return Json.object(
        "upset", remedy.upset(),
        "proof", wording.proved(remedy),
        "steps", remedy.steps().stream().map(this::step).toList(),
        "instead", instead(remedy.proof().instead()));
  }

  private Optional<List<Map<String, Object>>> instead(List<Remedy.Instead> all) {
    return all.isEmpty() ? Optional.empty() : Optional.of(all.stream().map(this::instead).toList());
  }

  private Map<String, Object> instead(Remedy.Instead instead) {
    return Json.object(
        "code", blanket.yarn(instead.yarn()).code(),
        "codes", instead.yarns().stream().map(yarn -> blanket.yarn(yarn).code()).toList(),
        "mixed", instead.mixed());
  }

  private Map<String, Object> step(Remedy.Step step) {
    return Json.object(
        "words", wording.of(step.change()),
        "code", step.change().code(),
        "path", places.path(step.path()),
        "line", places.line(step.path()),
        "value", wording.value(step),
        "options",
            places.wish(step.path()).isPresent() ? List.of() : wording.options(step.change()));
  }

  private Map<String, Object> nearest(NearestMiss miss) {
    List<Map<String, Object>> open =
        OpenRounds.of(blanket, miss.sequences()).stream()
            .flatMap(
                each ->
                    each.pieces().stream()
                        .map(
                            piece ->
                                Json.object(
                                    "at",
                                    blanket.place(piece).name(),
                                    "rounds",
                                    each.rounds().stream().map(round -> round + 1).toList())))
            .toList();
    return Json.object(
        "minimised", "open rounds",
        "fewest_proved", miss.fewest(),
        "rounds", miss.rounds(),
        "pieces", miss.pieces(),
        "metres", BigDecimal.valueOf(miss.millimetres(), 3),
        "open", open);
  }
}
