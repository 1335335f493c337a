package lozengy.report;

import static lozengy.report.Decimals.toSix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.progress.Upset;
import lozengy.model.score.Score;

/** Gathers for programs what planning again has come to. */
public final class ReplanData {

  private ReplanData() {}

  /** Maps from names to values, lists, strings, integers and decimals. */
  public static Map<String, Object> of(ReplanComparison again) {
    Blanket blanket = again.arrangement().blanket();
    Upset upset = again.upset();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("rounds_free", upset.freeRounds());
    data.put("rounds_changed", upset.changedRounds());
    data.put(
        "rounds_that_must_change",
        Json.object("at_least", again.least().rounds(), "exact", again.least().exact()));
    data.put("rounds_held", upset.heldRounds());
    data.put("rounds_new", upset.newRounds());
    List<Object> pieces = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, again.arrangement().sequences());
    for (Upset.Piece piece : upset.pieces()) {
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("at", blanket.place(piece.piece()).name());
      line.put("from", codes(blanket, piece.before()));
      line.put("to", codes(blanket, piece.after()));
      line.put("from_pile", laid.holds(piece.piece()));
      pieces.add(line);
    }
    data.put("pieces", pieces);
    again.scoreBefore().ifPresent(before -> data.put("score", score(again, before)));
    again
        .afresh()
        .ifPresent(
            afresh -> {
              Map<String, Object> other = new LinkedHashMap<>();
              other.put("rounds_changed", afresh.upset().changedRounds());
              other.put("total_without_keep", toSix(afresh.total()));
              other.put("total_without_keep_here", toSix(again.arrangement().score().total()));
              data.put("afresh", other);
            });
    return data;
  }

  /** An open round stands as an empty text: no yarn has that for its code. */
  private static List<Object> codes(Blanket blanket, List<Integer> yarns) {
    List<Object> codes = new ArrayList<>();
    for (int yarn : yarns) {
      codes.add(yarn == Sequences.OPEN ? "" : blanket.yarn(yarn).code());
    }
    return codes;
  }

  private static Map<String, Object> score(ReplanComparison again, Score before) {
    Score now = again.arrangement().score();
    Map<String, Object> parts = new LinkedHashMap<>();
    for (Part part : Part.OF_TOTAL) {
      if (now.parts().containsKey(part)) {
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("before", toSix(before.parts().get(part)));
        line.put("now", toSix(now.parts().get(part)));
        line.put("points", toSix(again.points(part)));
        parts.put(part.word(), line);
      }
    }
    Map<String, Object> score = new LinkedHashMap<>();
    score.put("total_before", toSix(before.total()));
    score.put("total_now", toSix(now.total()));
    score.put("parts", parts);
    score.put("keep_now", toSix(now.parts().get(Part.KEEP)));
    score.put("objective_before", toSix(before.objective()));
    score.put("objective_now", toSix(now.objective()));
    return score;
  }
}
