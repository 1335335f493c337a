package lozengy.model.score;

import java.util.Map;

/**
 * How good an arrangement is.
 *
 * @param total weighted mean of the parts asked for, 0 to 100; 100 where none is asked for
 * @param parts every part's figure, 0 to 100; {@link Part#KEEP} only where there is an earlier
 *     arrangement
 */
public record Score(double total, Map<Part, Double> parts) {

  /** Copies the parts. */
  public Score {
    parts = Map.copyOf(parts);
  }
}
