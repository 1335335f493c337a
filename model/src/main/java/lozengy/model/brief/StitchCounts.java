package lozengy.model.brief;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import lozengy.model.input.Nulls;
import lozengy.model.stitch.Stitch;

/**
 * The stitches of a round. What yarn they take depends on the hand: {@link RoundLengths} tells.
 *
 * @param counts how many of each, above 0; at least one
 */
public record StitchCounts(Map<Stitch, Integer> counts) implements RoundYarn {

  /**
   * Copies the counts.
   *
   * @param counts how many of each, above 0; at least one
   * @throws IllegalArgumentException if there is none, or one is not above 0
   */
  public StitchCounts {
    Nulls.refuse("counts", counts);
    if (counts.isEmpty() || counts.values().stream().anyMatch(count -> count <= 0)) {
      throw new IllegalArgumentException("a round must have stitches: " + counts);
    }
    counts = Collections.unmodifiableMap(new EnumMap<>(counts));
  }

  /** {@return how many in all} */
  public int total() {
    return counts.values().stream().mapToInt(Integer::intValue).sum();
  }
}
