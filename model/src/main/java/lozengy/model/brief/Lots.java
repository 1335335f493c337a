package lozengy.model.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which yarns are dye lots of one shade: those that a brief's {@code lot-of} ties together, over
 * others too. Yarns are indices of the brief. Immutable.
 */
public final class Lots {

  private final int[] shades;

  private Lots(int[] shades) {
    this.shades = shades;
  }

  /**
   * Finds the shades; a code that no yarn has ties nothing. O(yarns squared).
   *
   * @param yarns yarns of a brief
   * @return which are lots of one shade
   */
  public static Lots of(List<Yarn> yarns) {
    Map<String, Integer> index = new LinkedHashMap<>();
    int[] shades = new int[yarns.size()];
    for (int yarn = 0; yarn < shades.length; yarn++) {
      shades[yarn] = yarn;
      index.putIfAbsent(yarns.get(yarn).code(), yarn);
    }
    for (int yarn = 0; yarn < shades.length; yarn++) {
      Integer other = yarns.get(yarn).lotOf().map(index::get).orElse(null);
      if (other != null) {
        unite(shades, shades[yarn], shades[other]);
      }
    }
    return new Lots(shades);
  }

  private static void unite(int[] shades, int first, int second) {
    for (int yarn = 0; yarn < shades.length; yarn++) {
      if (shades[yarn] == first || shades[yarn] == second) {
        shades[yarn] = Math.min(first, second);
      }
    }
  }

  /**
   * {@return whether two yarns are different lots of one shade}
   *
   * @param yarn the one yarn's index, from 0
   * @param other the other yarn's index, from 0
   */
  public boolean differ(int yarn, int other) {
    return yarn != other && shades[yarn] == shades[other];
  }

  /** {@return the lots of each shade that has more than one, ascending} */
  public List<List<Integer>> shades() {
    Map<Integer, List<Integer>> lots = new LinkedHashMap<>();
    for (int yarn = 0; yarn < shades.length; yarn++) {
      lots.computeIfAbsent(shades[yarn], shade -> new ArrayList<>()).add(yarn);
    }
    return lots.values().stream().filter(yarns -> yarns.size() > 1).map(List::copyOf).toList();
  }
}
