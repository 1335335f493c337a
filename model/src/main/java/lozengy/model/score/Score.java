package lozengy.model.score;

import java.util.Map;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;

/**
 * How good an arrangement is.
 *
 * @param total weighted mean of the parts asked for, 0 to 100; 100 where none is asked for
 * @param parts every part's figure, 0 to 100; {@link Part#KEEP} only where there is an earlier
 *     arrangement, those {@link Part#onlyIfAsked()} only where they weigh
 */
public record Score(double total, Map<Part, Double> parts) {

  /**
   * Copies the parts.
   *
   * @param total weighted mean of the parts asked for, 0 to 100; 100 where none is asked for
   * @param parts every part's figure, 0 to 100; {@link Part#KEEP} only where there is an earlier
   *     arrangement, those {@link Part#onlyIfAsked()} only where they weigh
   */
  public Score {
    parts = Map.copyOf(parts);
  }

  /**
   * Weighs parts into a score.
   *
   * @param parts the parts' figures, 0 to 100
   * @param prefer their weights; a part that weighs 0 is left out of the total
   * @return the score
   */
  public static Score of(Map<Part, Double> parts, Preferences prefer) {
    double sum = 0;
    double weights = 0;
    for (Part part : Part.values()) {
      if (parts.containsKey(part)) {
        sum += prefer.weight(part) * parts.get(part);
        weights += prefer.weight(part);
      }
    }
    return new Score(weights == 0 ? 100 : Math.min(100, sum / weights), parts);
  }
}
