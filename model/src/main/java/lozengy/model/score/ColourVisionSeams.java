package lozengy.model.score;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Deficiency;
import lozengy.model.colour.SeenDifferences;
import lozengy.model.layout.Pairs;

/** Seams whose borders a person who lacks one kind of cone can hardly tell apart. */
public final class ColourVisionSeams {

  private ColourVisionSeams() {}

  /**
   * {@return how well two borders can be told apart by people with any of the deficiencies: 0 not
   * at all, 1 with ease}
   *
   * @param blanket the blanket
   * @param yarn the yarn's index, from 0
   * @param other the other yarn's index, from 0
   */
  public static double toldApart(Blanket blanket, int yarn, int other) {
    return Math.min(1, blanket.yarns().seen().least(yarn, other) / Scorer.TOLD_APART);
  }

  /**
   * {@return for each deficiency the seams, as indices of {@link
   * lozengy.model.layout.Layout#seams()}, whose borders are less than {@link Scorer#TOLD_APART}
   * apart as seen with it} Seams with an open border and seams with one yarn on both sides are left
   * out. O(seams + yarns squared).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   */
  public static Map<Deficiency, int[]> alike(Blanket blanket, Sequences sequences) {
    Pairs seams = blanket.layout().seams();
    SeenDifferences seen = blanket.yarns().seen();
    Map<Deficiency, int[]> alike = new EnumMap<>(Deficiency.class);
    for (Deficiency deficiency : Deficiency.values()) {
      int[] found = new int[seams.size()];
      int count = 0;
      for (int seam = 0; seam < seams.size(); seam++) {
        int yarn = sequences.border(seams.first()[seam]);
        int other = sequences.border(seams.second()[seam]);
        if (yarn != Sequences.OPEN
            && other != Sequences.OPEN
            && yarn != other
            && seen.between(deficiency, yarn, other) < Scorer.TOLD_APART) {
          found[count++] = seam;
        }
      }
      alike.put(deficiency, Arrays.copyOf(found, count));
    }
    return alike;
  }
}
