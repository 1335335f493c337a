package lozengy.model.brief;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import lozengy.model.input.Nulls;

/**
 * How much each part of the score weighs.
 *
 * @param weights weight of each part, 0 or more; 0 leaves it out; holds all parts
 * @param words the parts whose weight was given in words, with the word; its number is the weight
 */
public record Preferences(Map<Part, Double> weights, Map<Part, Weight> words) {

  private static final Map<Part, Double> SILENT =
      Map.of(
          Part.BALANCE, 3.0,
          Part.SPREAD, 3.0,
          Part.CONTRAST, 1.0,
          Part.VARIETY, 1.0,
          Part.LEEWAY, 1.0,
          Part.KEEP, 3.0);

  /** What weighs where a brief says nothing. */
  public static final Preferences DEFAULT = new Preferences(Map.of());

  /**
   * Copies the weights; a part that is missing takes its default. Contrast as one has none where it
   * is weighed between pieces or within them.
   *
   * @param weights weight of each part, 0 or more; 0 leaves it out; holds all parts
   * @param words the parts whose weight was given in words, with the word; its number is the weight
   * @throws IllegalArgumentException if a weight is negative or not finite, or a word does not fit
   */
  public Preferences {
    Nulls.refuse("weights words", weights, words);
    Map<Part, Double> all = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      Double weight = weights.containsKey(part) ? weights.get(part) : silent(part, weights);
      if (!(weight >= 0 && Double.isFinite(weight))) {
        throw new IllegalArgumentException("the weight of " + part.word() + " must be 0 or more");
      }
      all.put(part, weight);
    }
    weights = Collections.unmodifiableMap(all);
    Map<Part, Weight> said = new EnumMap<>(Part.class);
    said.putAll(words);
    said.forEach(
        (part, word) -> {
          if (word.number() != all.get(part)) {
            throw new IllegalArgumentException(
                word.word() + " is not the weight " + all.get(part) + " of " + part.word());
          }
        });
    words = Collections.unmodifiableMap(said);
  }

  private static double silent(Part part, Map<Part, Double> said) {
    boolean apart =
        part == Part.CONTRAST
            && said.getOrDefault(Part.CONTRAST_BETWEEN, 0.0)
                    + said.getOrDefault(Part.CONTRAST_WITHIN, 0.0)
                > 0;
    return apart ? 0 : SILENT.getOrDefault(part, 0.0);
  }

  /**
   * Weights in numbers alone.
   *
   * @param weights weight of each part, 0 or more; 0 leaves it out; holds all parts
   * @throws IllegalArgumentException if a weight is negative or not finite
   */
  public Preferences(Map<Part, Double> weights) {
    this(weights, Map.of());
  }

  /**
   * {@return the weight of a part}
   *
   * @param part the part
   */
  public double weight(Part part) {
    return weights.get(part);
  }

  /**
   * {@return what a point of a part is worth of the total, 0 to 1}
   *
   * @param part a part of the total
   */
  public double share(Part part) {
    return weight(part) > 0 ? weight(part) / weightOfTotal() : 0;
  }

  /** {@return what the parts weigh together that make up the total} */
  public double weightOfTotal() {
    return Part.OF_TOTAL.stream().mapToDouble(this::weight).sum();
  }
}
