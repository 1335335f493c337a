package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which earlier places still matter while a band is swept: before each place, the frontier holds
 * the earlier places that have a partner at or after it, in order; a place's position in it is its
 * bit.
 */
final class Frontier {

  /** In place of a pair or a bit that is not there. */
  static final int NONE = -1;

  private final int[][] pairAt;
  private final int[][] move;
  private final int[] own;
  private final int[] apart;

  Frontier(Band band) {
    int places = band.places();
    pairAt = new int[places][];
    move = new int[places][];
    own = new int[places];
    apart = new int[places];
    int[] lastPartner = IntStream.range(0, places).toArray();
    List<List<Integer>> pairsOf = new ArrayList<>();
    for (int place = 0; place < places; place++) {
      pairsOf.add(new ArrayList<>());
    }
    for (int pair = 0; pair < band.first().length; pair++) {
      int first = band.first()[pair];
      lastPartner[first] = Math.max(lastPartner[first], band.second()[pair]);
      pairsOf.get(band.second()[pair]).add(pair);
    }
    int[] before = {};
    for (int place = 0; place < places; place++) {
      int now = place;
      pairAt[place] = new int[before.length];
      Arrays.fill(pairAt[place], NONE);
      for (int pair : pairsOf.get(place)) {
        int bit = Arrays.binarySearch(before, band.first()[pair]);
        pairAt[place][bit] = pair;
        apart[place] |= band.apart()[pair] ? 1 << bit : 0;
      }
      int[] after =
          IntStream.concat(Arrays.stream(before), IntStream.of(place))
              .filter(each -> lastPartner[each] > now)
              .toArray();
      move[place] =
          Arrays.stream(before)
              .map(each -> Math.max(NONE, Arrays.binarySearch(after, each)))
              .toArray();
      own[place] = Math.max(NONE, Arrays.binarySearch(after, place));
      before = after;
    }
  }

  /** Before a place, the pair that each bit's place makes with it, or NONE. */
  int[] pairAt(int place) {
    return pairAt[place];
  }

  /** The bit that each bit becomes after a place, or NONE where it no longer matters. */
  int[] move(int place) {
    return move[place];
  }

  /** The place's own bit after it, or NONE. */
  int own(int place) {
    return own[place];
  }

  /** Before a place, the bits of places that must not show the same yarn as it. */
  int apart(int place) {
    return apart[place];
  }

  /** By set of bits before a place, the set after it without the place itself. */
  int[] moved(int place) {
    int[] moved = new int[1 << move[place].length];
    for (int bit = 0; bit < move[place].length; bit++) {
      int to = move[place][bit] == NONE ? 0 : 1 << move[place][bit];
      for (int rest = 0; rest < 1 << bit; rest++) {
        moved[rest | 1 << bit] = moved[rest] | to;
      }
    }
    return moved;
  }

  /** The place's own bit as a set, empty where it does not matter. */
  int ownSet(int place) {
    return own[place] == NONE ? 0 : 1 << own[place];
  }

  /** Most bits at any time. */
  int width() {
    return Arrays.stream(pairAt).mapToInt(bits -> bits.length).max().orElse(0);
  }

  /**
   * Sums the weights of the pairs that a place makes with each set of bits.
   *
   * @param weight weight of each pair
   * @param sums takes the sum for each set
   */
  void sumWeights(int place, double[] weight, double[] sums) {
    int[] pairs = pairAt[place];
    sums[0] = 0;
    for (int bit = 0; bit < pairs.length; bit++) {
      double own = pairs[bit] == NONE ? 0 : weight[pairs[bit]];
      for (int rest = 0; rest < 1 << bit; rest++) {
        sums[rest | 1 << bit] = sums[rest] + own;
      }
    }
  }

  /** What makes two places' steps from the same states alike. */
  List<Object> likeness(int place) {
    return List.of(java.nio.IntBuffer.wrap(move[place]), own[place], apart[place]);
  }
}
