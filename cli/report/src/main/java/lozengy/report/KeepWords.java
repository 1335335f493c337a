package lozengy.report;

import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Part;

/** Tells of keep, which stands beside the score. */
public final class KeepWords {

  private KeepWords() {}

  /** A sentence; empty where there is no earlier plan. */
  public static Optional<String> of(Arrangement arrangement) {
    Double keep = arrangement.score().parts().get(Part.KEEP);
    double weight = arrangement.blanket().brief().prefer().weight(Part.KEEP);
    return Optional.ofNullable(keep)
        .map(
            figure ->
                "Keep "
                    + Figures.fixed(figure, 1)
                    + " of 100: so much stands as planned before. "
                    + (weight > 0
                        ? "It weighs "
                            + Figures.shortest(weight, 2)
                            + " beside the score where the rest is planned again: together "
                            + Figures.fixed(arrangement.score().objective(), 1)
                        : "It weighs nothing"));
  }
}
