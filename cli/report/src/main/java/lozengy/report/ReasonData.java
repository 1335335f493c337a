package lozengy.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveResult;
import lozengy.solver.explain.argument.Reason;

/** Why nothing fits, as programs read it: a stable code and its data. */
public final class ReasonData {

  private ReasonData() {}

  /** A reason: its code, and the pieces, rounds, yarns and amounts that it is about. */
  public static Map<String, Object> of(Blanket blanket, Reason reason) {
    Map<String, Object> metres = new TreeMap<>();
    reason.lengths().forEach((name, length) -> metres.put(name, BigDecimal.valueOf(length, 3)));
    Map<String, Object> counts = new TreeMap<>(reason.counts());
    return Json.object(
        "code", reason.code(),
        "pieces", reason.pieces().stream().map(piece -> blanket.place(piece).name()).toList(),
        "rounds", reason.rounds().stream().map(round -> round + 1).toList(),
        "yarns", reason.yarns().stream().map(yarn -> blanket.yarn(yarn).code()).toList(),
        "metres", metres,
        "counts", counts);
  }

  /** Why nothing fits, each with its words: reasons, or the lines that cannot hold together. */
  public static List<Map<String, Object>> of(Blanket asked, SolveResult.Impossible impossible) {
    Blanket blanket = impossible.choice().orElse(asked);
    Wording wording = new Wording(blanket);
    List<Map<String, Object>> all = new ArrayList<>();
    impossible
        .refutations()
        .forEach(
            refutation -> {
              Map<String, Object> data = of(blanket, refutation.reason());
              data.put("words", wording.of(refutation));
              data.put("more", refutation.merged() + refutation.left());
              all.add(data);
            });
    impossible
        .conflict()
        .ifPresent(
            conflict ->
                all.add(
                    Json.object(
                        "code", "lines-in-conflict",
                        "minimal", conflict.minimal(),
                        "lines", conflict.lines().stream().map(line -> of(wording, line)).toList(),
                        "words", String.join("\n", wording.of(conflict)))));
    return all;
  }

  private static Map<String, Object> of(Wording wording, BriefLine line) {
    return Json.object(
        "rule", line.rule().word(),
        "code", line.subject().code(),
        "path", line.path().toString(),
        "line", Optional.empty(),
        "words", wording.of(line.subject()));
  }
}
