package lozengy.model.card;

import java.util.EnumMap;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.Nearness;
import lozengy.model.score.Targets;

/**
 * The statistics of one layer. Chance shuffles the yarns of the layer over the pieces that have it,
 * each order as likely as any other.
 *
 * @param layer the layer, 0 for the border
 * @param pieces pieces that have it
 * @param joins pairs that show the same yarn, counted, by how near the pieces lie
 * @param repeats all of these pairs by their weights in the score
 * @param lightness Moran's I of the yarns' L* over the seams
 * @param counts pieces that show each yarn
 * @param targets pieces that should
 */
public record LayerCard(
    int layer,
    int pieces,
    Map<Nearness, Statistic> joins,
    Statistic repeats,
    Statistic lightness,
    int[] counts,
    int[] targets) {

  static LayerCard of(Blanket blanket, Sequences sequences, Targets targets, int layer) {
    LayerPlaces places = new LayerPlaces(blanket, sequences, layer);
    Map<Nearness, Statistic> joins = new EnumMap<>(Nearness.class);
    for (Nearness nearness : Nearness.values()) {
      joins.put(nearness, places.joins(false, nearness));
    }
    return new LayerCard(
        layer,
        places.count(),
        joins,
        places.joins(true, Nearness.values()),
        places.lightness(),
        places.counts(),
        targets.counts()[layer]);
  }
}
