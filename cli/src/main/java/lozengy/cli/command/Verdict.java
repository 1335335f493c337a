package lozengy.cli.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Contradiction;
import lozengy.model.arrangement.Contradictions;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.model.wording.FaultWords;
import lozengy.report.ColourVisionWords;
import lozengy.report.Figures;
import lozengy.report.Json;

/**
 * What a check of an arrangement found.
 *
 * @param score its score, worked out from scratch; empty if a round is open
 * @param stated what the file states that holds where there is no fault, in words
 * @param faults what is wrong, rules first; empty if it is as it should be
 * @param warnings what is no fault, but good to know
 * @param byDesign where a rule gives way by the look that is asked for, in words
 */
record Verdict(
    Optional<Score> score,
    List<Found> faults,
    List<String> warnings,
    String stated,
    Optional<String> byDesign) {

  private static final int JSON_DECIMALS = 6;

  /**
   * One fault.
   *
   * @param rule the rule that is broken, or what the file states wrongly
   * @param code what sort of fault it is, a stable word
   * @param pieces names of the pieces concerned
   * @param rounds the rounds concerned, from 1 at the centre
   * @param yarns codes of the yarns concerned
   * @param words what is wrong
   */
  record Found(
      String rule,
      String code,
      List<String> pieces,
      List<Integer> rounds,
      List<String> yarns,
      String words) {
    static Found of(Blanket blanket, Fault fault) {
      return new Found(
          fault.rule().word(),
          fault.code(),
          fault.pieces().stream().map(piece -> blanket.place(piece).name()).toList(),
          fault.rounds().stream().map(round -> round + 1).toList(),
          fault.yarns().stream().map(yarn -> blanket.yarn(yarn).code()).toList(),
          new FaultWords(blanket).of(fault));
    }

    static Found of(Contradiction each) {
      return new Found(
          each.code().word(),
          each.code().word(),
          each.pieces(),
          List.of(),
          each.yarns(),
          each.words());
    }

    String line() {
      return rule + ": " + words;
    }

    Map<String, Object> json() {
      return Json.object(
          "rule", rule, "code", code, "pieces", pieces, "rounds", rounds, "yarns", yarns, "words",
          words);
    }
  }

  /** Checks an arrangement. */
  static Verdict of(StatedArrangement stated) {
    Blanket blanket = stated.blanket();
    Optional<Score> score =
        stated.sequences().complete()
            ? Optional.of(Scorer.score(blanket, stated.sequences(), stated.earlier()))
            : Optional.empty();
    List<Found> faults = new ArrayList<>();
    Check.faults(blanket, stated.sequences()).forEach(each -> faults.add(Found.of(blanket, each)));
    Contradictions.of(stated).forEach(each -> faults.add(Found.of(each)));
    return new Verdict(
        score,
        List.copyOf(faults),
        warnings(stated, score),
        held(stated),
        blanket.look().givenBordersWords());
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
    warnings.addAll(ColourVisionWords.of(stated.blanket(), stated.sequences()));
    return List.copyOf(warnings);
  }

  /** The verdict in one line. */
  String words() {
    String figure =
        score.map(each -> String.format(Locale.ROOT, " Score %.2f.", each.total())).orElse("");
    if (faults.isEmpty()) {
      return "Valid. Every rule holds; "
          + stated
          + figure
          + byDesign.map(words -> " " + words + ".").orElse("");
    }
    return Figures.count(faults.size(), "fault") + "." + figure;
  }

  /** The verdict for programs. */
  Map<String, Object> json() {
    List<Map<String, Object>> found = faults.stream().map(Found::json).toList();
    Optional<BigDecimal> total =
        score.map(
            each -> BigDecimal.valueOf(each.total()).setScale(JSON_DECIMALS, RoundingMode.HALF_UP));
    return Json.object(
        "valid", faults.isEmpty(), "total", total, "faults", found, "warnings", warnings);
  }
}
