package lozengy.model.brief;

import java.util.Set;
import lozengy.model.colour.Tone;

/**
 * One ring of a motif.
 *
 * @param tones tones it may take, not empty; all three where the brief states none
 * @param amount yarn that it takes, in an amount or in stitches
 */
public record Round(Set<Tone> tones, RoundYarn amount) {

  /**
   * Copies the tones.
   *
   * @param tones tones it may take, not empty; all three where the brief states none
   * @param amount yarn that it takes, in an amount or in stitches
   * @throws IllegalArgumentException if no tone is allowed
   */
  public Round {
    tones = Set.copyOf(tones);
    if (tones.isEmpty()) {
      throw new IllegalArgumentException("a round must allow at least one tone");
    }
  }
}
