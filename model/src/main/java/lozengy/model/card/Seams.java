package lozengy.model.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Deficiency;
import lozengy.model.layout.Pairs;
import lozengy.model.score.ColourVisionSeams;

/** Seams whose borders are close in colour. */
public final class Seams {

  private Seams() {}

  /**
   * {@return the seam whose borders are closest; of equal ones the first} Empty where there is no
   * seam. Sequences are complete. O(seams).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   */
  public static Optional<ClosestSeam> closest(Blanket blanket, Sequences sequences) {
    int[] all = new int[blanket.layout().seams().size()];
    for (int seam = 0; seam < all.length; seam++) {
      all[seam] = seam;
    }
    return closest(blanket, sequences, all, blanket.yarns()::difference);
  }

  /**
   * Where people who lack one kind of cone can hardly tell borders apart: the deficiencies that
   * this concerns. O(seams + yarns squared).
   *
   * @param blanket the blanket
   * @param sequences the yarns of its pieces' rounds
   * @return the deficiencies with the seams that they concern; none where all borders can be told
   *     apart
   */
  public static List<AlikeSeams> alike(Blanket blanket, Sequences sequences) {
    List<AlikeSeams> alike = new ArrayList<>();
    for (Map.Entry<Deficiency, int[]> each :
        ColourVisionSeams.alike(blanket, sequences).entrySet()) {
      Deficiency deficiency = each.getKey();
      closest(
              blanket,
              sequences,
              each.getValue(),
              (a, b) -> blanket.yarns().seen().between(deficiency, a, b))
          .ifPresent(seam -> alike.add(new AlikeSeams(deficiency, each.getValue().length, seam)));
    }
    return alike;
  }

  private static Optional<ClosestSeam> closest(
      Blanket blanket,
      Sequences sequences,
      int[] seams,
      ToDoubleBiFunction<Integer, Integer> difference) {
    Pairs pairs = blanket.layout().seams();
    ClosestSeam closest = null;
    for (int seam : seams) {
      int first = pairs.first()[seam];
      int second = pairs.second()[seam];
      double apart = difference.applyAsDouble(sequences.border(first), sequences.border(second));
      if (closest == null || apart < closest.difference()) {
        closest = new ClosestSeam(first, second, apart);
      }
    }
    return Optional.ofNullable(closest);
  }
}
