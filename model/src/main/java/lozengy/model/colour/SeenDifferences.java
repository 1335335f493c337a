package lozengy.model.colour;

import java.util.List;

/**
 * CIEDE2000 differences between colours as seen with each {@link Deficiency}. Built in O(colours
 * squared) time and memory; immutable.
 */
public final class SeenDifferences {

  private final double[][][] differences;

  /**
   * The differences of all pairs of colours, by their indices in the list.
   *
   * @param colours the colours
   */
  public SeenDifferences(List<Srgb> colours) {
    int count = colours.size();
    differences = new double[Deficiency.values().length][count][count];
    for (Deficiency deficiency : Deficiency.values()) {
      List<Lab> seen = colours.stream().map(deficiency::seen).toList();
      double[][] table = differences[deficiency.ordinal()];
      for (int a = 0; a < count; a++) {
        for (int b = 0; b < a; b++) {
          table[a][b] = ColourDifference.ciede2000(seen.get(a), seen.get(b));
          table[b][a] = table[a][b];
        }
      }
    }
  }

  /**
   * {@return the difference of two colours as seen with a deficiency}
   *
   * @param deficiency the deficiency
   * @param first the one colour's index, from 0
   * @param second the other colour's index, from 0
   */
  public double between(Deficiency deficiency, int first, int second) {
    return differences[deficiency.ordinal()][first][second];
  }

  /**
   * {@return the deficiency with which two colours are closest; of equal ones the first}
   *
   * @param first the one colour's index, from 0
   * @param second the other colour's index, from 0
   */
  public Deficiency worst(int first, int second) {
    Deficiency worst = Deficiency.RED;
    for (Deficiency deficiency : Deficiency.values()) {
      if (between(deficiency, first, second) < between(worst, first, second)) {
        worst = deficiency;
      }
    }
    return worst;
  }

  /**
   * {@return the smallest difference of two colours over all deficiencies}
   *
   * @param first the one colour's index, from 0
   * @param second the other colour's index, from 0
   */
  public double least(int first, int second) {
    return between(worst(first, second), first, second);
  }
}
