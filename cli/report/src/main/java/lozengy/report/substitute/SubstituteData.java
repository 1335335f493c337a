package lozengy.report.substitute;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.rounded;
import static lozengy.report.Decimals.toSix;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.yarn.Purchase;
import lozengy.model.yarn.Substitute;
import lozengy.report.Json;
import lozengy.report.ReasonData;
import lozengy.solver.SolveResult;
import lozengy.solver.substitute.Substitution;
import lozengy.solver.substitute.Substitution.Shade;
import lozengy.solver.substitute.Substitution.Trial;

/** What may stand in for shades that are gone, as {@code --json} prints it; lengths in m. */
public final class SubstituteData {

  private final Substitution found;
  private final Blanket blanket;

  private SubstituteData(Substitution found) {
    this.found = found;
    this.blanket = found.blanket();
  }

  /** What was found. */
  public static Map<String, Object> of(Substitution found) {
    return new SubstituteData(found).data();
  }

  private Map<String, Object> data() {
    return Json.object(
        "title",
        blanket.brief().title(),
        "outcome",
        found.any() ? "found" : "none",
        "planned_again",
        found.again(),
        "plenty",
        found.plenty(),
        "score_before",
        found.before().map(score -> toSix(score.total())),
        "gone",
        found.shades().stream().map(this::shade).toList(),
        "without",
        found.without().map(this::trial));
  }

  private Map<String, Object> shade(Shade shade) {
    List<Map<String, Object>> shades = new ArrayList<>();
    shade
        .tried()
        .forEach(
            each -> {
              Map<String, Object> row = substitute(each.substitute());
              row.put("trial", trial(each.trial()));
              shades.add(row);
            });
    shade.untried().forEach(each -> shades.add(substitute(each)));
    return Json.object(
        "code",
        blanket.yarn(shade.yarn()).code(),
        "tone",
        blanket.yarns().tone(shade.yarn()).word(),
        "need_m",
        metres(shade.needMillimetres()),
        "shades",
        shades,
        "mixture",
        shade
            .mixture()
            .map(
                each ->
                    Json.object(
                        "codes",
                        each.parts().stream().map(p -> blanket.yarn(p.yarn()).code()).toList(),
                        "trial",
                        trial(each.trial()))));
  }

  private Map<String, Object> substitute(Substitute each) {
    Optional<Purchase> lacks = each.lacks(blanket);
    return Json.object(
        "code",
        blanket.yarn(each.yarn()).code(),
        "name",
        blanket.yarn(each.yarn()).name(),
        "colour",
        blanket.yarn(each.yarn()).colour().hex(),
        "difference",
        rounded(each.difference(), 4),
        "need_m",
        metres(each.needMillimetres()),
        "to_buy",
        each.toBuy(),
        "to_be_had_m",
        each.toBuy() || found.plenty()
            ? Optional.empty()
            : Optional.of(metres(each.spareMillimetres())),
        "balls",
        each.ballsToTake().isPresent()
            ? Optional.of(each.ballsToTake().getAsLong())
            : Optional.empty(),
        "enough",
        each.enough(),
        "short_m",
        lacks.map(more -> metres(more.missingMillimetres())),
        "short_balls",
        lacks.flatMap(
            more ->
                more.balls().isPresent()
                    ? Optional.of(more.balls().getAsLong())
                    : Optional.empty()));
  }

  private Map<String, Object> trial(Trial trial) {
    Optional<BigDecimal> change =
        found
            .before()
            .flatMap(before -> trial.score().map(now -> toSix(now.total() - before.total())));
    return Json.object(
        "outcome",
        outcome(trial),
        "score",
        trial.score().map(score -> toSix(score.total())),
        "change",
        change,
        "pieces",
        trial.upset().map(upset -> upset.pieces().size()),
        "pieces_besides",
        trial.upset().map(upset -> trial.beyondPieces()),
        "causes",
        trial.result() instanceof SolveResult.Impossible impossible
            ? Optional.of(ReasonData.of(trial.blanket(), impossible))
            : Optional.empty());
  }

  /** How a trial ended, in a word. */
  public static String outcome(Trial trial) {
    return trial.result() instanceof SolveResult.Found
        ? "found"
        : trial.result() instanceof SolveResult.Impossible ? "impossible" : "unfinished";
  }
}
