package lozengy.report;

import static lozengy.report.Decimals.metres;
import static lozengy.report.Decimals.toSix;
import static lozengy.report.Decimals.toThree;

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
    data.put("width_cm", toThree(measures.widthCm()));
    data.put("height_cm", toThree(measures.heightCm()));
    data.put("width_in", toThree(Units.inchesOfCm(measures.widthCm())));
    data.put("height_in", toThree(Units.inchesOfCm(measures.heightCm())));
    data.put("area_cm2", toThree(measures.areaCm2()));
    data.put("seams_m", toThree(measures.seamLengthCm() / 100));
    data.put("outline_m", toThree(measures.outlineLengthCm() / 100));
    blanket.edgeFit().ifPresent(fit -> data.put("edge_fit", edgeFit(fit)));
  }

  private static Map<String, Object> edgeFit(EdgeFit fit) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("measured_cm", toThree(fit.measuredCm()));
    data.put("span_cm", toThree(fit.spanCm()));
    data.put("triangle_percent", toThree(fit.trianglePercent()));
    data.put("outline_percent", toThree(fit.outlinePercent()));
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
        parts.put(part.word(), toSix(figure));
        weights.put(part.word(), toThree(blanket.brief().prefer().weight(part)));
      }
    }
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("total", toSix(arrangement.score().total()));
    data.put("parts", parts);
    data.put("weights", weights);
    Double keep = arrangement.score().parts().get(Part.KEEP);
    if (keep != null) {
      data.put("keep", toSix(keep));
      data.put("keep_weight", toThree(blanket.brief().prefer().weight(Part.KEEP)));
      data.put("objective", toSix(arrangement.score().objective()));
    }
    arrangement
        .bound()
        .ifPresent(
            bound -> {
              data.put("bound", toSix(bound.total()));
              data.put("bound_proof", bound.proof());
              bound.objective().ifPresent(most -> data.put("objective_bound", toSix(most)));
            });
    return data;
  }

  private Map<String, Object> weakSpot(WeakSpot spot) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("points", toSix(spot.points()));
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
    value.ifPresent(known -> data.put(name, toThree(known)));
  }

  private static Map<String, Object> solved(Arrangement.Solved solved) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("seed", solved.seed());
    data.put("moves", solved.moves());
    if (solved.walkers() != Arrangement.Solved.USUAL_WALKERS) {
      data.put("walkers", solved.walkers());
    }
    solved.seconds().ifPresent(seconds -> data.put("seconds", toThree(seconds)));
    data.put("version", solved.version());
    data.put("proof", solved.proof());
    solved
        .choice()
        .ifPresent(
            choice ->
                data.put(
                    "choice",
                    Json.object(
                        "count", choice.count(), "within_points", toThree(choice.withinPoints()))));
    return data;
  }
}
