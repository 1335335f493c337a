package lozengy.report.card;

import static lozengy.report.Decimals.toSix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.card.AlikeSeams;
import lozengy.model.card.Chance;
import lozengy.model.card.ClosestSeam;
import lozengy.model.card.LayerCard;
import lozengy.model.card.ScoreCard;
import lozengy.model.card.Statistic;
import lozengy.model.score.Nearness;
import lozengy.model.score.WeakSpot;
import lozengy.report.Json;

/** Gathers a score card for programs; its JSON Schema is {@code card-1.schema.json}. */
public final class CardData {

  /** The value of the field {@code format}. */
  public static final String FORMAT = "lozengy-card/1";

  private CardData() {}

  /** The card as maps, lists, strings and numbers. */
  public static Map<String, Object> of(FullCard full) {
    ScoreCard card = full.card();
    Blanket blanket = full.arrangement().blanket();
    return Json.object(
        "format", FORMAT,
        "title", blanket.brief().title(),
        "total", toSix(card.score().total()),
        "total_shuffled", chance(card.chanceTotal()),
        "bound", full.arrangement().bound().map(bound -> toSix(bound.total())),
        "bound_proof", full.arrangement().bound().map(Bound::proof),
        "parts", parts(full),
        "keep", full.keepAtMost().map(most -> keep(full, most)),
        "weak_spots", card.weakSpots().stream().map(spot -> spot(blanket, spot)).toList(),
        "closest_seam", card.closest().map(seam -> seam(full, seam)),
        "hard_to_tell_apart", card.alike().stream().map(each -> alike(full, each)).toList(),
        "repeats", statistic(card.repeats()),
        "layers", card.layers().stream().map(layer -> layer(blanket, layer)).toList());
  }

  private static Map<String, Object> parts(FullCard full) {
    Map<String, Object> parts = new LinkedHashMap<>();
    for (Part part : Part.OF_TOTAL) {
      Double figure = full.card().score().parts().get(part);
      if (figure != null) {
        parts.put(
            part.word(),
            Json.object(
                "figure", toSix(figure),
                "shuffled", chance(full.card().chance().get(part)),
                "at_most", toSix(full.best().get(part).total()),
                "at_most_proof", full.best().get(part).proof(),
                "at_most_others_kept", toSix(full.kept().get(part)),
                "weight", toSix(full.weight(part)),
                "costs_points", toSix(full.cost(part))));
      }
    }
    return parts;
  }

  private static Map<String, Object> keep(FullCard full, double most) {
    return Json.object(
        "figure", toSix(full.card().score().parts().get(Part.KEEP)),
        "shuffled", chance(full.card().chance().get(Part.KEEP)),
        "at_most", toSix(most),
        "weight", toSix(full.weight(Part.KEEP)),
        "objective", toSix(full.card().score().objective()));
  }

  private static Map<String, Object> chance(Chance chance) {
    return Json.object(
        "mean", toSix(chance.mean()),
        "exact", chance.exact(),
        "standard_error", toSix(chance.standardError()),
        "shuffles", chance.shuffles());
  }

  private static Map<String, Object> spot(Blanket blanket, WeakSpot spot) {
    return Json.object(
        "points", toSix(spot.points()),
        "words", spot.words(),
        "pieces", spot.pieces().stream().map(piece -> blanket.place(piece).name()).toList());
  }

  private static Map<String, Object> seam(FullCard full, ClosestSeam seam) {
    Blanket blanket = full.arrangement().blanket();
    List<Object> pieces = new ArrayList<>();
    List<Object> yarns = new ArrayList<>();
    for (int piece : new int[] {seam.first(), seam.second()}) {
      pieces.add(blanket.place(piece).name());
      yarns.add(blanket.yarn(full.arrangement().sequences().border(piece)).code());
    }
    return Json.object("pieces", pieces, "yarns", yarns, "difference", toSix(seam.difference()));
  }

  private static Map<String, Object> alike(FullCard full, AlikeSeams alike) {
    return Json.object(
        "deficiency", alike.deficiency().word(),
        "seams", alike.seams(),
        "closest", seam(full, alike.closest()));
  }

  private static Map<String, Object> statistic(Statistic statistic) {
    return Json.object(
        "observed", toSix(statistic.observed()),
        "expected", toSix(statistic.expected()),
        "variance", toSix(statistic.variance()),
        "z", statistic.varies() ? Optional.of(toSix(statistic.z())) : Optional.empty());
  }

  private static Map<String, Object> layer(Blanket blanket, LayerCard layer) {
    Map<String, Object> joins = new LinkedHashMap<>();
    for (Nearness nearness : Nearness.values()) {
      joins.put(nearness.name().toLowerCase(Locale.ROOT), statistic(layer.joins().get(nearness)));
    }
    List<Object> yarns = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      yarns.add(
          Json.object(
              "code", blanket.yarn(yarn).code(),
              "count", layer.counts()[yarn],
              "target", layer.targets()[yarn]));
    }
    return Json.object(
        "layer", layer.layer(),
        "pieces", layer.pieces(),
        "joins", joins,
        "repeats", statistic(layer.repeats()),
        "lightness",
            Optional.of(layer.lightness()).filter(Statistic::varies).map(CardData::statistic),
        "yarns", yarns);
  }
}
