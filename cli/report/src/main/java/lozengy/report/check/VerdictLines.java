package lozengy.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.arrangement.Verdict;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.Score;
import lozengy.report.BlanketWords;
import lozengy.report.ColourVisionWords;
import lozengy.report.Decimals;
import lozengy.report.Figures;
import lozengy.report.Json;
import lozengy.report.wording.DoubtWords;

/**
 * What a check of an arrangement found, as it is told.
 *
 * @param verdict what was found
 * @param faults what is wrong, rules first; empty if it is as it should be
 * @param warnings what is no fault, but good to know
 * @param doubts values of the brief that are worth a question, for programs; among the warnings too
 * @param stated what the file states that holds where there is no fault, in words
 * @param byDesign where a rule gives way by the look that is asked for, in words
 */
public record VerdictLines(
    Verdict verdict,
    List<FaultLine> faults,
    List<String> warnings,
    List<Map<String, Object>> doubts,
    String stated,
    Optional<String> byDesign) {

  /** The words for what was found in a file. */
  public static VerdictLines of(StatedArrangement stated, Verdict verdict) {
    Blanket blanket = stated.blanket();
    List<FaultLine> faults = new ArrayList<>();
    verdict.faults().forEach(each -> faults.add(FaultLine.of(blanket, each)));
    verdict.contradictions().forEach(each -> faults.add(FaultLine.of(each)));
    return new VerdictLines(
        verdict,
        List.copyOf(faults),
        warnings(stated, verdict.score()),
        DoubtWords.data(blanket),
        held(stated),
        BlanketWords.givenBorders(blanket));
  }

  private static String held(StatedArrangement stated) {
    boolean totals = !stated.yarns().isEmpty();
    if (stated.score().isPresent()) {
      return totals ? "score and yarn totals are as stated." : "the score is as stated.";
    }
    return totals ? "yarn totals are as stated." : "the file states no score or totals.";
  }

  private static List<String> warnings(StatedArrangement stated, Optional<Score> score) {
    List<String> warnings = new ArrayList<>();
    if (stated.formerTotal().isPresent() && score.isPresent()) {
      warnings.add(
          String.format(
              Locale.ROOT,
              "The file states a score of %.2f by the formulas of an earlier version; by those of"
                  + " this one it is %.2f. Its bound, if it has one, no longer holds. 'lozengy mark' writes"
                  + " the score anew, 'lozengy solve' both.",
              stated.formerTotal().get(),
              score.get().total()));
    }
    warnings.addAll(DoubtWords.of(stated.blanket()));
    warnings.addAll(ColourVisionWords.of(stated.blanket(), stated.sequences()));
    return List.copyOf(warnings);
  }

  /** The verdict in one line. */
  public String words() {
    String figure =
        verdict
            .score()
            .map(each -> String.format(Locale.ROOT, " Score %.2f.", each.total()))
            .orElse("");
    if (verdict.valid()) {
      return "Valid. Every rule holds; "
          + stated
          + figure
          + byDesign.map(words -> " " + words + ".").orElse("");
    }
    return Figures.count(faults.size(), "fault") + "." + figure;
  }

  /** The verdict for programs. */
  public Map<String, Object> json() {
    List<Map<String, Object>> found = faults.stream().map(FaultLine::json).toList();
    return Json.object(
        "valid",
        verdict.valid(),
        "total",
        verdict.score().map(each -> Decimals.toSix(each.total())),
        "faults",
        found,
        "warnings",
        warnings,
        "doubts",
        doubts);
  }
}
