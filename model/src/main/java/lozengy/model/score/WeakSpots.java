package lozengy.model.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Finds where an arrangement loses the most. */
public final class WeakSpots {

  /** A loss, with what it costs the total and whether it is its part's worst. */
  private record Spot(double points, boolean worst, Loss loss) {}

  private static final Comparator<Spot> COSTLIEST =
      Comparator.comparingDouble(Spot::points).reversed();

  private WeakSpots() {}

  /**
   * {@return the worst spots, the costliest first; the worst of each part of the score is chosen
   * before a second of any} A part's loss is divided among the places that cause it, so that all
   * spots together cost what the total lacks of 100, but for what two pieces cost that a symmetry
   * makes each other's images: that was asked for, and is no spot. Equal ones come in the order of
   * layers and pieces.
   *
   * @param blanket the blanket
   * @param sequences complete sequences
   * @param most how many at most, 0 or more
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static List<WeakSpot> of(Blanket blanket, Sequences sequences, int most) {
    List<Spot> spots = new ArrayList<>();
    for (ScorePart part : Scorer.parts(blanket, sequences)) {
      double share = blanket.brief().prefer().share(part.part());
      if (share > 0) {
        List<Loss> losses =
            part.losses().stream().filter(loss -> !askedFor(blanket, loss)).toList();
        addSpots(spots, losses, share);
      }
    }
    return spots.stream()
        .sorted(Comparator.comparing((Spot spot) -> !spot.worst()).thenComparing(COSTLIEST))
        .limit(most)
        .sorted(COSTLIEST)
        .map(spot -> new WeakSpot(spot.points(), spot.loss().words().get(), spot.loss().pieces()))
        .toList();
  }

  /** Whether a loss lies between pieces that a symmetry makes each other's images. */
  private static boolean askedFor(Blanket blanket, Loss loss) {
    List<Integer> pieces = loss.pieces();
    return pieces.size() == 2
        && !pieces.get(0).equals(pieces.get(1))
        && blanket.orbits().lead(pieces.get(0)) == blanket.orbits().lead(pieces.get(1));
  }

  private static void addSpots(List<Spot> spots, List<Loss> losses, double share) {
    Loss worst = losses.stream().max(Comparator.comparingDouble(Loss::points)).orElse(null);
    for (Loss loss : losses) {
      spots.add(new Spot(loss.points() * share, loss == worst, loss));
    }
  }
}
