package lozengy.report.check;

import java.util.List;
import java.util.Map;
import lozengy.model.arrangement.Contradiction;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.Fault;
import lozengy.model.wording.FaultWords;
import lozengy.report.Json;

/**
 * What is wrong with an arrangement, as it is told.
 *
 * @param rule the rule that is broken, or what the file states wrongly
 * @param code what sort of fault it is, a stable word
 * @param pieces names of the pieces concerned
 * @param rounds the rounds concerned, from 1 at the centre
 * @param yarns codes of the yarns concerned
 * @param words what is wrong
 */
public record FaultLine(
    String rule,
    String code,
    List<String> pieces,
    List<Integer> rounds,
    List<String> yarns,
    String words) {
  /** A rule that is broken. */
  public static FaultLine of(Blanket blanket, Fault fault) {
    return new FaultLine(
        fault.rule().word(),
        fault.code(),
        fault.pieces().stream().map(piece -> blanket.place(piece).name()).toList(),
        fault.rounds().stream().map(round -> round + 1).toList(),
        fault.yarns().stream().map(yarn -> blanket.yarn(yarn).code()).toList(),
        new FaultWords(blanket).of(fault));
  }

  /** Something that the file states otherwise than it is. */
  public static FaultLine of(Contradiction each) {
    return new FaultLine(
        each.code().word(),
        each.code().word(),
        each.pieces(),
        List.of(),
        each.yarns(),
        each.stated()
            .map(
                said ->
                    "The file states "
                        + said
                        + " for "
                        + each.what()
                        + ", but it is "
                        + each.right())
            .orElse("The file states nothing for " + each.what() + "; it is " + each.right()));
  }

  /** For a terminal. */
  public String line() {
    return rule + ": " + words;
  }

  /** For programs. */
  public Map<String, Object> json() {
    return Json.object(
        "rule", rule, "code", code, "pieces", pieces, "rounds", rounds, "yarns", yarns, "words",
        words);
  }
}
