package lozengy.solver.bound;

import java.util.Arrays;
import java.util.Comparator;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Place;
import lozengy.model.score.Nearness;

/**
 * The places of one layer in sweeping order, and the pairs of them whose repeats count. The sweep
 * runs along the longer side of the blanket, so that few places lie side by side across it.
 */
final class Region {

  private final int layer;
  private final int[] across;
  private final int[] piece;
  private final int[] round;
  private final int[] kind;
  private final int[] first;
  private final int[] second;
  private final int[] weight;
  private final boolean[] apart;
  private final int allPairs;

  /**
   * Takes the places of a layer.
   *
   * @param layer the layer, 0 for the border
   */
  Region(Blanket blanket, int layer) {
    this.layer = layer;
    boolean upright = upright(blanket);
    Place[] places =
        blanket.layout().places().stream()
            .filter(place -> layer < blanket.roundCount(place.index()))
            .sorted(
                Comparator.<Place>comparingInt(place -> upright ? place.y() : place.x())
                    .thenComparingInt(place -> upright ? place.x() : place.y()))
            .toArray(Place[]::new);
    int[] position = new int[blanket.pieceCount()];
    across = new int[places.length];
    piece = new int[places.length];
    round = new int[places.length];
    kind = new int[places.length];
    for (int i = 0; i < places.length; i++) {
      position[places[i].index()] = i;
      across[i] = upright ? places[i].x() : places[i].y();
      piece[i] = places[i].index();
      kind[i] = places[i].kind().ordinal();
      round[i] = blanket.roundCount(places[i].index()) - 1 - layer;
    }
    int most = 0;
    for (Nearness nearness : Nearness.values()) {
      most += nearness.pairs(blanket.layout()).size();
    }
    int[] firsts = new int[most];
    int[] seconds = new int[most];
    int[] weights = new int[most];
    boolean[] aparts = new boolean[most];
    int count = 0;
    int all = 0;
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int pair = 0; pair < pairs.size(); pair++) {
        boolean bothHave =
            layer < blanket.roundCount(pairs.first()[pair])
                && layer < blanket.roundCount(pairs.second()[pair]);
        if (bothHave) {
          int one = position[pairs.first()[pair]];
          int other = position[pairs.second()[pair]];
          all += nearness.weight();
          firsts[count] = Math.min(one, other);
          seconds[count] = Math.max(one, other);
          weights[count] = nearness.weight();
          aparts[count] =
              layer == 0 && nearness == Nearness.SEAM && !mayMatch(blanket, pairs, pair);
          count++;
        }
      }
    }
    first = Arrays.copyOf(firsts, count);
    second = Arrays.copyOf(seconds, count);
    weight = Arrays.copyOf(weights, count);
    apart = Arrays.copyOf(aparts, count);
    allPairs = all;
  }

  private static boolean upright(Blanket blanket) {
    int width = 0;
    int height = 0;
    for (Place place : blanket.layout().places()) {
      width = Math.max(width, place.x());
      height = Math.max(height, place.y());
    }
    return height >= width;
  }

  private static boolean mayMatch(Blanket blanket, Pairs pairs, int pair) {
    return blanket.bordersMayMatch(pairs.first()[pair], pairs.second()[pair]);
  }

  int layer() {
    return layer;
  }

  int places() {
    return across.length;
  }

  /** Where a place lies across the sweep, in lattice units. */
  int across(int place) {
    return across[place];
  }

  /** How many lattice units lie across the sweep, from the first place to the last. */
  int span() {
    return Arrays.stream(across).max().orElse(0) - Arrays.stream(across).min().orElse(0) + 1;
  }

  /** The ordinal of the place's kind of piece. */
  int kind(int place) {
    return kind[place];
  }

  /** The piece at a place. */
  int piece(int place) {
    return piece[place];
  }

  /** The round of its motif that this layer is at a place. */
  int round(int place) {
    return round[place];
  }

  /** The weight of all pairs. */
  int allPairs() {
    return allPairs;
  }

  int pairs() {
    return first.length;
  }

  /** The earlier place of a pair. */
  int first(int pair) {
    return first[pair];
  }

  /** The later place of a pair. */
  int second(int pair) {
    return second[pair];
  }

  /** What a repeat of the pair weighs. */
  int weight(int pair) {
    return weight[pair];
  }

  /** Whether the rules keep the two places from showing the same yarn. */
  boolean apart(int pair) {
    return apart[pair];
  }
}
