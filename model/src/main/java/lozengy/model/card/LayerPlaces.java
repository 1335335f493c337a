package lozengy.model.card;

import java.util.Arrays;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Pairs;
import lozengy.model.score.JoinCounts;
import lozengy.model.score.Nearness;

/**
 * The pieces that have a layer, numbered from 0, with their yarns in it and the pairs they form.
 */
final class LayerPlaces {

  private static final int NONE = -1;

  private final Blanket blanket;
  private final int[] numbers;
  private final int[] yarns;

  LayerPlaces(Blanket blanket, Sequences sequences, int layer) {
    this.blanket = blanket;
    this.numbers = new int[blanket.pieceCount()];
    int[] shown = new int[numbers.length];
    int count = 0;
    for (int piece = 0; piece < numbers.length; piece++) {
      int round = blanket.roundCount(piece) - 1 - layer;
      numbers[piece] = round < 0 ? NONE : count;
      if (round >= 0) {
        shown[count++] = sequences.yarn(piece, round);
      }
    }
    this.yarns = Arrays.copyOf(shown, count);
  }

  int count() {
    return yarns.length;
  }

  /** How many show each yarn. */
  int[] counts() {
    int[] counts = new int[blanket.yarnCount()];
    for (int yarn : yarns) {
      counts[yarn]++;
    }
    return counts;
  }

  /** The pairs of a nearness that both have the layer, by their numbers. */
  Pairs pairs(Nearness nearness) {
    Pairs all = nearness.pairs(blanket.layout());
    int[] first = new int[all.size()];
    int[] second = new int[all.size()];
    int count = 0;
    for (int pair = 0; pair < all.size(); pair++) {
      int one = numbers[all.first()[pair]];
      int other = numbers[all.second()[pair]];
      if (one != NONE && other != NONE) {
        first[count] = one;
        second[count++] = other;
      }
    }
    return new Pairs(Arrays.copyOf(first, count), Arrays.copyOf(second, count));
  }

  /** Same-yarn joins of some kinds of nearness: each counts 1, or by its weight in the score. */
  Statistic joins(boolean weighted, Nearness... kinds) {
    JoinCounts joins = new JoinCounts(yarns.length);
    double same = 0;
    for (Nearness nearness : kinds) {
      Pairs pairs = pairs(nearness);
      double weight = weighted ? nearness.weight() : 1;
      for (int pair = 0; pair < pairs.size(); pair++) {
        joins.join(pairs.first()[pair], pairs.second()[pair], weight);
        same += yarns[pairs.first()[pair]] == yarns[pairs.second()[pair]] ? weight : 0;
      }
    }
    int[] counts = counts();
    return new Statistic(same, joins.expected(counts), joins.variance(counts));
  }

  /** Moran's I of lightness over the seams. */
  Statistic lightness() {
    double[] values = new double[yarns.length];
    for (int place = 0; place < values.length; place++) {
      values[place] = blanket.yarns().lab(yarns[place]).lightness();
    }
    Pairs seams = pairs(Nearness.SEAM);
    return MoranI.of(values, seams.first(), seams.second());
  }
}
