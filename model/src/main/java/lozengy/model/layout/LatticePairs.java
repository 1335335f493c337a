package lozengy.model.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the pairs of places by the offsets between their lattice points: O(places) time and memory.
 */
final class LatticePairs {

  /** Offsets (x, y) to a later place in reading order; on point in half diagonals. */
  private static final int[][] ON_POINT_SEAMS = {{-1, 1}, {1, 1}};

  private static final int[][] ON_POINT_TOUCHES = {{2, 0}, {0, 2}};
  private static final int[][] ON_POINT_NEAR = {{-2, 2}, {2, 2}, {-3, 1}, {3, 1}, {-1, 3}, {1, 3}};

  /** The same in half sides. */
  private static final int[][] STRAIGHT_SEAMS = {{2, 0}, {0, 2}};

  private static final int[][] STRAIGHT_TOUCHES = {{-2, 2}, {2, 2}};
  private static final int[][] STRAIGHT_NEAR = {{4, 0}, {0, 4}, {-4, 2}, {4, 2}, {-2, 4}, {2, 4}};

  private final boolean onPoint;
  private final List<Place> places;
  private final int width;
  private final int height;
  private final int[] indexAt;

  LatticePairs(Setting setting, List<Place> places) {
    this.onPoint = setting == Setting.ON_POINT;
    this.places = places;
    this.width = places.stream().mapToInt(Place::x).max().orElse(0) + 1;
    this.height = places.stream().mapToInt(Place::y).max().orElse(0) + 1;
    this.indexAt = new int[Math.multiplyExact(width, height)];
    Arrays.fill(indexAt, -1);
    for (Place place : places) {
      indexAt[place.y() * width + place.x()] = place.index();
    }
  }

  Pairs seams() {
    return pairs(onPoint ? ON_POINT_SEAMS : STRAIGHT_SEAMS);
  }

  Pairs touches() {
    return pairs(onPoint ? ON_POINT_TOUCHES : STRAIGHT_TOUCHES);
  }

  Pairs near() {
    return pairs(onPoint ? ON_POINT_NEAR : STRAIGHT_NEAR);
  }

  /** Offsets longer than one length and up to another, by the squares of their sides. */
  List<Offset> offsets(int beyond, int upTo) {
    int unitsToASide = onPoint ? 2 : 4;
    int reach = (int) Math.sqrt(upTo * unitsToASide);
    List<Offset> offsets = new ArrayList<>();
    for (int y = 0; y <= reach; y++) {
      for (int x = y == 0 ? 1 : -reach; x <= reach; x++) {
        boolean lattice = onPoint ? (x + y) % 2 == 0 : x % 2 == 0 && y % 2 == 0;
        int square = x * x + y * y;
        if (lattice && square > beyond * unitsToASide && square <= upTo * unitsToASide) {
          offsets.add(offset(x, y));
        }
      }
    }
    return offsets;
  }

  private Offset offset(int x, int y) {
    int[] from = new int[places.size()];
    int[] to = new int[places.size()];
    int count = 0;
    for (Place place : places) {
      int other = indexAt(place.x() + x, place.y() + y);
      if (other >= 0) {
        from[count] = place.index();
        to[count++] = other;
      }
    }
    return new Offset(x, y, Arrays.copyOf(from, count), Arrays.copyOf(to, count));
  }

  private Pairs pairs(int[][] offsets) {
    long[] found = new long[places.size() * offsets.length];
    int count = 0;
    for (Place place : places) {
      for (int[] offset : offsets) {
        int other = indexAt(place.x() + offset[0], place.y() + offset[1]);
        if (other >= 0) {
          long first = Math.min(place.index(), other);
          long second = Math.max(place.index(), other);
          found[count++] = first << 32 | second;
        }
      }
    }
    Arrays.sort(found, 0, count);
    int[] first = new int[count];
    int[] second = new int[count];
    for (int i = 0; i < count; i++) {
      first[i] = (int) (found[i] >> 32);
      second[i] = (int) found[i];
    }
    return new Pairs(first, second);
  }

  private int indexAt(int x, int y) {
    return x < 0 || y < 0 || x >= width || y >= height ? -1 : indexAt[y * width + x];
  }
}
