package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Covers a region by bands of one width, so that every pair lies in at least one. A pair's weight
 * is shared evenly by the bands that hold it; a place's count by the weight that its pairs have in
 * each.
 */
final class BandCover {

  private final Region region;
  private final int width;
  private final boolean merged;
  private final int low;
  private final int[] starts;
  private final int[][] holders;

  /**
   * Plans a cover.
   *
   * @param width lattice units from a band's first line to the last, both counted; more than the
   *     widest pair of the region spans
   * @param step lattice units from band to band, at most; less than the width by at least what the
   *     widest pair spans, unless one band holds all
   * @param merged whether bands that are just alike are given once, with the number of copies
   */
  BandCover(Region region, int width, int step, boolean merged) {
    this.region = region;
    this.width = width;
    this.merged = merged;
    int least = Integer.MAX_VALUE;
    int most = Integer.MIN_VALUE;
    for (int place = 0; place < region.places(); place++) {
      least = Math.min(least, region.across(place));
      most = Math.max(most, region.across(place));
    }
    low = least;
    int last = Math.max(least, most - width + 1);
    int gaps = (last - least + step - 1) / step;
    starts = new int[gaps + 1];
    for (int i = 0; i <= gaps; i++) {
      int even = gaps == 0 ? 0 : (int) Math.round((double) (last - least) * i / gaps);
      starts[i] = least + (merged ? Math.min(i * step, last - least) : even);
    }
    holders = new int[most - least + 1][width];
    for (int start : starts) {
      for (int line = start; line < start + width && line <= most; line++) {
        for (int span = 0; line + span < start + width; span++) {
          holders[line - least][span]++;
        }
      }
    }
  }

  /** How many bands hold both of two lines across. */
  private int holders(int across, int other) {
    return holders[Math.min(across, other) - low][Math.abs(across - other)];
  }

  /** The bands. */
  List<Band> bands() {
    double[] total = new double[region.places()];
    for (int pair = 0; pair < region.pairs(); pair++) {
      total[region.first(pair)] += region.weight(pair);
      total[region.second(pair)] += region.weight(pair);
    }
    Map<List<Object>, Band> found = new LinkedHashMap<>();
    for (int start : starts) {
      Band band = band(start, total);
      List<Object> likeness = merged ? likeness(band) : List.of(start);
      Band same = found.get(likeness);
      found.put(likeness, copied(band, same == null ? 1 : same.copies() + 1));
    }
    return new ArrayList<>(found.values());
  }

  private static Band copied(Band band, int copies) {
    return new Band(
        band.places(),
        copies,
        band.place(),
        band.kind(),
        band.pair(),
        band.first(),
        band.second(),
        band.weight(),
        band.apart(),
        band.share());
  }

  private static List<Object> likeness(Band band) {
    return List.of(
        java.nio.IntBuffer.wrap(band.kind()),
        java.nio.IntBuffer.wrap(band.first()),
        java.nio.IntBuffer.wrap(band.second()),
        java.nio.DoubleBuffer.wrap(band.weight()),
        java.nio.DoubleBuffer.wrap(band.share()),
        Arrays.toString(band.apart()));
  }

  private Band band(int start, double[] total) {
    int[] position = new int[region.places()];
    int[] inside = new int[region.places()];
    int[] kind = new int[region.places()];
    double[] share = new double[region.places()];
    int places = 0;
    for (int place = 0; place < region.places(); place++) {
      boolean in = region.across(place) >= start && region.across(place) < start + width;
      position[place] = in ? places : -1;
      if (in) {
        inside[places] = place;
        kind[places++] = region.kind(place);
      }
    }
    int count = 0;
    int[] pairs = new int[region.pairs()];
    int[] first = new int[region.pairs()];
    int[] second = new int[region.pairs()];
    double[] weight = new double[region.pairs()];
    boolean[] apart = new boolean[region.pairs()];
    for (int pair = 0; pair < region.pairs(); pair++) {
      int one = region.first(pair);
      int other = region.second(pair);
      if (position[one] >= 0 && position[other] >= 0) {
        pairs[count] = pair;
        first[count] = position[one];
        second[count] = position[other];
        weight[count] =
            (double) region.weight(pair) / holders(region.across(one), region.across(other));
        apart[count] = region.apart(pair);
        share[first[count]] += weight[count] / total[one];
        share[second[count]] += weight[count] / total[other];
        count++;
      }
    }
    for (int place = 0; place < region.places(); place++) {
      if (position[place] >= 0 && total[place] == 0) {
        share[position[place]] = 1.0 / holders(region.across(place), region.across(place));
      }
    }
    return new Band(
        places,
        1,
        Arrays.copyOf(inside, places),
        Arrays.copyOf(kind, places),
        Arrays.copyOf(pairs, count),
        Arrays.copyOf(first, count),
        Arrays.copyOf(second, count),
        Arrays.copyOf(weight, count),
        Arrays.copyOf(apart, count),
        Arrays.copyOf(share, places));
  }
}
