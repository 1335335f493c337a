package lozengy.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.EdgeFit;
import lozengy.model.layout.Measures;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.score.WeakSpot;
import lozengy.model.unit.Units;

/** Gathers a summary for programs. */
final class SummaryData {

  private static final int SCORE_DECIMALS = 6;
  private static final int OTHER_DECIMALS = 3;

  private final Arrangement arrangement;
  private final Blanket blanket;
  private final List<WeakSpot> weakSpots;

  SummaryData(Arrangement arrangement, List<WeakSpot> weakSpots) {
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.weakSpots = weakSpots;
  }

  Map<String, Object> write() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("title", blanket.brief().title());
    data.put("setting", blanket.layout().size().setting().word());
    data.put("across", blanket.layout().size().across());
    data.put("down", blanket.layout().size().down());
    measures(data);
    data.put("pieces", pieces());
    data.put("states", states());
    data.put("part_worked", BlanketWords.begun(blanket));
    PaceWords.data(arrangement).ifPresent(work -> data.put("work", work));
    data.put("pile", PileLine.of(arrangement).stream().map(PileLine::data).toList());
    data.put("score", score());
    data.put("weak_spots", weakSpots.stream().map(this::weakSpot).toList());
    data.put(
        "counted",
        blanket.brief().yarns().stream()
            .filter(yarn -> yarn.counted().isPresent())
            .map(Yarn::code)
            .toList());
    data.put("yarns", YarnLine.of(arrangement).stream().map(SummaryData::yarn).toList());
    arrangement.solved().ifPresent(solved -> data.put("solved", solved(solved)));
    data.put("cautions", Cautions.of(arrangement));
    return data;
  }

  private void measures(Map<String, Object> data) {
    Measures measures = blanket.measures();
    data.put("width_cm", number(measures.widthCm()));
    data.put("height_cm", number(measures.heightCm()));
    data.put("width_in", number(Units.inchesOfCm(measures.widthCm())));
    data.put("height_in", number(Units.inchesOfCm(measures.heightCm())));
    data.put("area_cm2", number(measures.areaCm2()));
    data.put("seams_m", number(measures.seamLengthCm() / 100));
    data.put("outline_m", number(measures.outlineLengthCm() / 100));
    blanket.edgeFit().ifPresent(fit -> data.put("edge_fit", edgeFit(fit)));
  }

  private static Map<String, Object> edgeFit(EdgeFit fit) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("measured_cm", number(fit.measuredCm()));
    data.put("span_cm", number(fit.spanCm()));
    data.put("triangle_percent", number(fit.trianglePercent()));
    data.put("outline_percent", number(fit.outlinePercent()));
    data.put("words", BlanketWords.edge(fit));
    return data;
  }

  private Map<String, Object> pieces() {
    Map<String, Object> counts = new LinkedHashMap<>();
    for (PieceKind kind : PieceKind.values()) {
      long count = blanket.layout().places().stream().filter(place -> place.kind() == kind).count();
      counts.put(kind.word(), count);
    }
    return counts;
  }

  private Map<String, Object> states() {
    Map<String, Object> counts = new LinkedHashMap<>();
    for (PieceState state : PieceState.values()) {
      counts.put(state.word(), BlanketWords.inState(arrangement, state));
    }
    return counts;
  }

  private Map<String, Object> score() {
    Map<String, Object> parts = new LinkedHashMap<>();
    Map<String, Object> weights = new LinkedHashMap<>();
    for (Part part : Part.OF_TOTAL) {
      Double figure = arrangement.score().parts().get(part);
      if (figure != null) {
        parts.put(part.word(), score(figure));
        weights.put(part.word(), number(blanket.brief().prefer().weight(part)));
      }
    }
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("total", score(arrangement.score().total()));
    data.put("parts", parts);
    data.put("weights", weights);
    Double keep = arrangement.score().parts().get(Part.KEEP);
    if (keep != null) {
      data.put("keep", score(keep));
      data.put("keep_weight", number(blanket.brief().prefer().weight(Part.KEEP)));
      data.put("objective", score(arrangement.score().objective()));
    }
    arrangement
        .bound()
        .ifPresent(
            bound -> {
              data.put("bound", score(bound.total()));
              data.put("bound_proof", bound.proof());
              bound.objective().ifPresent(most -> data.put("objective_bound", score(most)));
            });
    return data;
  }

  private Map<String, Object> weakSpot(WeakSpot spot) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("points", score(spot.points()));
    data.put("words", spot.words());
    data.put("pieces", spot.pieces().stream().map(blanket::place).map(Place::name).toList());
    return data;
  }

  private static Map<String, Object> yarn(YarnLine line) {
    long left = line.leftMillimetres();
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("code", line.yarn().code());
    data.put("name", line.yarn().name());
    data.put("tone", line.tone().word());
    if (line.yarn().gone()) {
      data.put("gone", true);
    }
    data.put("available_m", metres(line.availableMillimetres()));
    data.put("used_m", metres(line.usedMillimetres()));
    data.put("worked_m", metres(line.work().workedMillimetres()));
    data.put("to_work_m", metres(line.work().toWorkMillimetres()));
    data.put("at_hand_m", metres(line.work().atHandMillimetres()));
    data.put("left_m", metres(left));
    put(data, "used_balls", line.balls(line.usedMillimetres()));
    put(data, "used_g", line.grams(line.usedMillimetres()));
    put(data, "left_balls", line.balls(left));
    put(data, "left_g", line.grams(left));
    return data;
  }

  private static void put(Map<String, Object> data, String name, OptionalDouble value) {
    value.ifPresent(known -> data.put(name, number(known)));
  }

  private static Map<String, Object> solved(Arrangement.Solved solved) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("seed", solved.seed());
    data.put("moves", solved.moves());
    if (solved.walkers() != Arrangement.Solved.USUAL_WALKERS) {
      data.put("walkers", solved.walkers());
    }
    solved.seconds().ifPresent(seconds -> data.put("seconds", number(seconds)));
    data.put("version", solved.version());
    data.put("proof", solved.proof());
    solved
        .choice()
        .ifPresent(
            choice ->
                data.put(
                    "choice",
                    Json.object(
                        "count", choice.count(), "within_points", number(choice.withinPoints()))));
    return data;
  }

  /** Exact: millimetres are whole. */
  private static BigDecimal metres(long millimetres) {
    return BigDecimal.valueOf(millimetres, 3);
  }

  private static BigDecimal score(double value) {
    return BigDecimal.valueOf(value).setScale(SCORE_DECIMALS, RoundingMode.HALF_UP);
  }

  private static BigDecimal number(double value) {
    return BigDecimal.valueOf(value).setScale(OTHER_DECIMALS, RoundingMode.HALF_UP);
  }
}
