package lozengy.model.score;

import java.util.Map;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;

/**
 * How good an arrangement is.
 *
 * @param total weighted mean of the parts asked for but {@link Part#KEEP}, 0 to 100; 100 where none
 *     is asked for. It says the same of an arrangement whatever it was solved from
 * @param objective the same with {@link Part#KEEP} among the parts: what planning again maximises.
 *     The total where there is no earlier arrangement
 * @param parts every part's figure, 0 to 100; {@link Part#KEEP} only where there is an earlier
 *     arrangement, those {@link Part#onlyIfAsked()} only where they weigh
 */
public record Score(double total, double objective, Map<Part, Double> parts) {

  /**
   * Copies the parts.
   *
   * @param total weighted mean of the parts asked for but keep, 0 to 100
   * @param objective the same with keep among them, 0 to 100
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
   * @param prefer their weights; a part that weighs 0 is left out
   * @return the score
   */
  public static Score of(Map<Part, Double> parts, Preferences prefer) {
    double sum = 0;
    double weights = 0;
    for (Part part : Part.OF_TOTAL) {
      if (parts.containsKey(part)) {
        sum += prefer.weight(part) * parts.get(part);
        weights += prefer.weight(part);
      }
    }
    double total = weights == 0 ? 100 : Math.min(100, sum / weights);
    Double keep = parts.get(Part.KEEP);
    return new Score(total, keep == null ? total : objective(total, keep, prefer), parts);
  }

  /**
   * {@return what planning again maximises: the mean of a total and keep, each by what it weighs}
   *
   * @param total the total, 0 to 100
   * @param keep the part keep, 0 to 100
   * @param prefer the weights
   */
  public static double objective(double total, double keep, Preferences prefer) {
    double weights = prefer.weightOfTotal();
    double all = weights + prefer.weight(Part.KEEP);
    return all == 0 ? total : (weights * total + prefer.weight(Part.KEEP) * keep) / all;
  }
}
